import { createReadStream } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { type AddressInfo, type Socket } from 'node:net';
import { join, normalize, resolve, sep } from 'node:path';
import { contentType } from './contentTypes.ts';

/** The longest address that is answered, in characters: ours have a few dozen. */
const longestAddress = 2000;

/** A running host of one folder of files. */
export interface StaticHost {
	/** The address of the folder, with a slash at its end. */
	readonly address: string;
	readonly port: number;
	/** Stops answering and drops every open connection, as a host that is switched off does. */
	stop(): Promise<void>;
}

/** Options of a host; each has a default. */
export interface HostOptions {
	/** 0 means any free port. Default 0. */
	readonly port?: number;
	/** Path under which the folder appears, with a slash at both ends. Default `/`. */
	readonly under?: string;
	/** How many further ports are tried when the port is in use. Default 0. */
	readonly otherPorts?: number;
	/** How long a browser may use a file that it has without asking for it again, in seconds. Default 0: it asks each time. */
	readonly maxAge?: number;
}

/** What is served, and how. */
interface Served {
	/** The folder, every link in its path followed. */
	readonly folder: string;
	readonly under: string;
	readonly cacheControl: string;
}

/** The file that a request asks for; undefined if it lies outside the folder or the path is not readable. */
function fileAsked(folder: string, under: string, url: string): string | undefined {
	const [path = ''] = url.split(/[?#]/);
	if (!path.startsWith(under)) return undefined;
	try {
		const name = normalize(decodeURIComponent(path.slice(under.length)));
		const file = resolve(join(folder, path.endsWith('/') ? join(name, 'index.html') : name));
		return file.startsWith(folder + sep) && !file.includes('\0') ? file : undefined;
	} catch {
		return undefined; // a `%` that is no escape
	}
}

/** The same, with every link followed; undefined where it is no file, or a link leads out of the folder. */
async function fileThere(folder: string, asked: string): Promise<{ file: string; size: number } | undefined> {
	try {
		const file = await realpath(asked);
		if (!file.startsWith(folder + sep)) return undefined;
		const found = await stat(file);
		return found.isFile() ? { file, size: found.size } : undefined;
	} catch {
		return undefined; // there is none
	}
}

/** Whether a request is meant for this host. A page from elsewhere whose name was made to lead here is not answered. */
const isOwnName = (host: string | undefined, port: number | undefined): boolean =>
	[`127.0.0.1:${port}`, `localhost:${port}`].includes(host?.toLowerCase() ?? '');

async function answer({ folder, under, cacheControl }: Served, request: IncomingMessage, response: ServerResponse) {
	const { method, url = '/', headers, socket } = request;
	const refuse = (status: number, words: string, more: Readonly<Record<string, string>> = {}) =>
		response
			.writeHead(status, {
				'content-type': 'text/plain; charset=utf-8',
				'content-length': Buffer.byteLength(words),
				'x-content-type-options': 'nosniff',
				...more,
			})
			.end(words);
	if (!isOwnName(headers.host, socket.localPort)) return refuse(421, 'ask for 127.0.0.1 or localhost\n');
	if (method !== 'GET' && method !== 'HEAD') return refuse(405, 'only GET and HEAD\n', { allow: 'GET, HEAD' });
	if (url.length > longestAddress) return refuse(414, 'the address is too long\n');
	const asked = fileAsked(folder, under, url);
	const found = asked === undefined ? undefined : await fileThere(folder, asked);
	if (!found) return refuse(404, 'no such file\n');
	response.writeHead(200, {
		'content-type': contentType(asked!),
		'content-length': found.size,
		'cache-control': cacheControl,
		'x-content-type-options': 'nosniff',
		'cross-origin-resource-policy': 'same-origin',
	});
	if (method === 'HEAD') return response.end();
	createReadStream(found.file)
		.on('error', () => response.destroy())
		.pipe(response);
	return response;
}

/**
 * Serves a folder on this machine only, as any plain static host would: files as they are, `index.html` for a folder,
 * 404 for the rest. It answers to its own name only, and no link leads out of the folder.
 * @throws the system's error if no port could be had (its code is `EADDRINUSE` where all that were tried are in use)
 */
export async function serveFolder(folder: string, options: HostOptions = {}): Promise<StaticHost> {
	const { port = 0, under = '/', otherPorts = 0, maxAge = 0 } = options;
	const cacheControl = maxAge === 0 ? 'no-cache' : `max-age=${maxAge}`;
	const served = { folder: await realpath(folder), under, cacheControl };
	const server = createServer((request, response) => void answer(served, request, response));
	const sockets = new Set<Socket>();
	server.on('connection', (socket) => {
		sockets.add(socket);
		socket.on('close', () => sockets.delete(socket));
	});
	const listen = (on: number) =>
		new Promise<void>((resolved, rejected) => {
			server.once('error', rejected);
			server.listen(on, '127.0.0.1', () => {
				server.off('error', rejected);
				resolved();
			});
		});
	for (let tried = 0; ; tried++) {
		try {
			await listen(port === 0 ? 0 : port + tried);
			break;
		} catch (cause) {
			const isInUse = (cause as NodeJS.ErrnoException).code === 'EADDRINUSE';
			if (!isInUse || tried >= otherPorts || port + tried >= 65_535) throw cause;
		}
	}
	const bound = (server.address() as AddressInfo).port;
	return {
		address: `http://127.0.0.1:${bound}${under}`,
		port: bound,
		stop: () =>
			new Promise((resolved) => {
				server.close(() => resolved());
				for (const socket of sockets) socket.destroy();
			}),
	};
}
