import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder, type StaticHost } from '../../../src/cli/staticHost.ts';

let parent: string;
let host: StaticHost;

beforeAll(async () => {
	parent = await mkdtemp(join(tmpdir(), 'evenhang-host-'));
	await mkdir(join(parent, 'site/part'), { recursive: true });
	await writeFile(join(parent, 'site/index.html'), 'front');
	await writeFile(join(parent, 'site/part/index.html'), 'part');
	await writeFile(join(parent, 'site/two words.css'), 'p{}');
	await writeFile(join(parent, 'secret.txt'), 'secret');
	host = await serveFolder(join(parent, 'site'), { under: '/app/' });
});

afterAll(async () => {
	await host.stop();
	await rm(parent, { recursive: true });
});

/** Status line and body for a path sent exactly as written, which `fetch` would tidy. */
const ask = (path: string, method = 'GET') =>
	new Promise<string>((resolve, reject) => {
		let got = '';
		const socket = connect(host.port, '127.0.0.1', () => socket.write(`${method} ${path} HTTP/1.0\r\n\r\n`));
		socket
			.setEncoding('utf8')
			.on('data', (text: string) => (got += text))
			.on('error', reject)
			.on('end', () => resolve(`${got.split(' ')[1]} ${got.split('\r\n\r\n')[1]?.trim()}`));
	});

test.each([
	['/app/', '200 front'],
	['/app/index.html?a=1', '200 front'],
	['/app/part/', '200 part'],
	['/app/two%20words.css', '200 p{}'],
	['/app/part', '404 no such file'],
	['/app/nothing.js', '404 no such file'],
	['/', '404 no such file'],
	['/app', '404 no such file'],
	['/app/../secret.txt', '404 no such file'],
	['/app/%2e%2e/secret.txt', '404 no such file'],
	['/app/..%2fsecret.txt', '404 no such file'],
	['/app/%', '404 no such file'],
	['/app/index.html%00', '404 no such file'],
])('%s: %s', async (path, answer) => {
	expect(await ask(path)).toBe(answer);
});

test('it only shows', async () => {
	expect(await ask('/app/', 'POST')).toBe('405 only GET');
	expect(await ask('/app/', 'HEAD')).toBe('200 ');
});

test('styles and scripts come with their type', async () => {
	const { headers } = await fetch(`${host.address}two%20words.css`);
	expect(headers.get('content-type')).toBe('text/css; charset=utf-8');
});

test('a port that is taken is answered with a free one after it, or refused', async () => {
	const next = await serveFolder(parent, { port: host.port, otherPorts: 100 });
	try {
		expect(next.port).toBeGreaterThan(host.port);
		expect(await (await fetch(`${next.address}secret.txt`)).text()).toBe('secret');
	} finally {
		await next.stop();
	}
	await expect(serveFolder(parent, { port: host.port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
});
