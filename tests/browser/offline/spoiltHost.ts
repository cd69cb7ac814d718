import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type HostOptions, serveFolder, type StaticHost } from '../../../src/cli/staticHost.ts';

/**
 * What is wrong with an answer. `failed`: status 500. `missing`: 404. `dropped`: the connection breaks off half-way.
 * `portal`: the page of a network that wants one to sign in, with status 200. `portal of that type`: the same, said to be
 * what was asked for. `cut short`: the right type, and half of the file.
 */
export type Fault = 'failed' | 'missing' | 'dropped' | 'portal' | 'portal of that type' | 'cut short';

/** Every fault. */
export const faults: readonly Fault[] = ['failed', 'missing', 'dropped', 'portal', 'portal of that type', 'cut short'];

/** What the page of the network says, by which it is known again wherever it should not be. */
export const portalPage = '<!doctype html><title>Gallery guests</title><p>Sign in to the network of the gallery.</p>';

/** A static host on a bad network. */
export class SpoiltHost {
	/**
	 * What is wrong with the next answer to the file of that name, a path below the app's; an empty one is the page itself.
	 * `isForPage`: a page asks for it, not the service worker.
	 */
	spoil: (file: string, isForPage: boolean) => Fault | undefined = () => undefined;

	/** Everything goes well again. */
	mend(): void {
		this.spoil = () => undefined;
	}

	/** Serves a folder as `serveFolder` does, where nothing is spoilt. */
	readonly serve = async (folder: string, { under = '/', port = 0 }: HostOptions = {}): Promise<StaticHost> => {
		const good = await serveFolder(folder, { under });
		const server = createServer((request, response) => void this.#answer(good, under, request, response));
		await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
		const taken = (server.address() as AddressInfo).port;
		return {
			address: `http://127.0.0.1:${taken}${under}`,
			port: taken,
			stop: async () => {
				await good.stop();
				server.closeAllConnections();
				await new Promise((resolve) => server.close(resolve));
			},
		};
	};

	async #answer(good: StaticHost, under: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
		const url = request.url ?? '/';
		const answer = await fetch(new URL(url, good.address)).catch(() => undefined); // stopped half-way
		const body = await answer?.arrayBuffer().then(
			(bytes) => Buffer.from(bytes),
			() => undefined,
		);
		if (!answer || !body) return void request.socket.destroy();
		const type = answer.headers.get('content-type') ?? '';
		const reply = (status: number, contentType: string, content: Buffer | string) =>
			response.writeHead(status, { 'content-type': contentType, 'cache-control': 'no-cache' }).end(content);
		const isForPage = request.headers['sec-fetch-dest'] !== 'empty';
		switch (this.spoil(url.split('?')[0]!.slice(under.length), isForPage)) {
			case 'failed':
				return void reply(500, 'text/plain', 'the host has failed');
			case 'missing':
				return void reply(404, 'text/plain', 'no such file');
			case 'portal':
				return void reply(200, 'text/html', portalPage);
			case 'portal of that type':
				return void reply(200, type, portalPage);
			case 'cut short':
				return void reply(200, type, body.subarray(0, body.length >> 1));
			case 'dropped':
				response.writeHead(200, { 'content-type': type, 'content-length': body.length });
				return void response.write(body.subarray(0, body.length >> 1), () => request.socket.destroy());
			case undefined:
				return void reply(answer.status, type, body);
		}
	}
}
