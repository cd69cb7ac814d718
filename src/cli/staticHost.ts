import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { type AddressInfo, type Socket } from 'node:net';
import { extname, join, normalize, resolve, sep } from 'node:path';

const contentTypes: Readonly<Record<string, string>> = {
	'.css': 'text/css; charset=utf-8',
	'.csv': 'text/csv; charset=utf-8',
	'.html': 'text/html; charset=utf-8',
	'.js': 'text/javascript; charset=utf-8',
	'.json': 'application/json; charset=utf-8',
	'.png': 'image/png',
	'.svg': 'image/svg+xml',
	'.webmanifest': 'application/manifest+json; charset=utf-8',
};

/** A running host of one folder of files. */
export interface StaticHost {
	/** The address of the folder, with a slash at its end. */
	readonly address: string;
	readonly port: number;
	/** Stops answering and drops every open connection, as a host that is switched off does. */
	stop(): Promise<void>;
}

/** What a host may be told; all of it has a default. */
export interface HostOptions {
	/** 0 takes any free port. Default 0. */
	readonly port?: number;
	/** Path under which the folder appears, with a slash at both ends. Default `/`. */
	readonly under?: string;
	/** How many further ports are tried when the port is taken. Default 0. */
	readonly otherPorts?: number;
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
		return undefined; // a `%` that stands for nothing
	}
}

async function answer(folder: string, under: string, request: IncomingMessage, response: ServerResponse) {
	const refuse = (status: number, words: string) =>
		response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(words);
	if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, 'only GET\n');
	const file = fileAsked(folder, under, request.url ?? '/');
	const found = file === undefined ? undefined : await stat(file).catch(() => undefined);
	if (file === undefined || !found?.isFile()) return refuse(404, 'no such file\n');
	response.writeHead(200, {
		'content-type': contentTypes[extname(file)] ?? 'application/octet-stream',
		'content-length': found.size,
		'cache-control': 'no-cache',
		'x-content-type-options': 'nosniff',
	});
	if (request.method === 'HEAD') return response.end();
	createReadStream(file)
		.on('error', () => response.destroy())
		.pipe(response);
	return response;
}

/**
 * Serves a folder on this machine only, as any plain static host would: files as they are, `index.html` for a folder,
 * 404 for the rest.
 * @throws the system's error if no port could be had (its code is `EADDRINUSE` where all that were tried are taken)
 */
export async function serveFolder(folder: string, options: HostOptions = {}): Promise<StaticHost> {
	const { port = 0, under = '/', otherPorts = 0 } = options;
	const root = resolve(folder);
	const server = createServer((request, response) => void answer(root, under, request, response));
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
			const isTaken = (cause as NodeJS.ErrnoException).code === 'EADDRINUSE';
			if (!isTaken || tried >= otherPorts || port + tried >= 65_535) throw cause;
		}
	}
	const taken = (server.address() as AddressInfo).port;
	return {
		address: `http://127.0.0.1:${taken}${under}`,
		port: taken,
		stop: () =>
			new Promise((resolved) => {
				server.close(() => resolved());
				for (const socket of sockets) socket.destroy();
			}),
	};
}
