import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
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
	await writeFile(join(parent, 'site/solver.wasm'), '');
	await mkdir(join(parent, 'site/bare'));
	await writeFile(join(parent, 'secret.txt'), 'secret');
	await mkdir(join(parent, 'site2'));
	await writeFile(join(parent, 'site2/secret.txt'), 'secret');
	await symlink(join(parent, 'secret.txt'), join(parent, 'site/way-out.txt'));
	await symlink(parent, join(parent, 'site/upstairs'));
	await symlink(join(parent, 'site/two words.css'), join(parent, 'site/inside.css'));
	host = await serveFolder(join(parent, 'site'), { under: '/app/' });
});

afterAll(async () => {
	await host.stop();
	await rm(parent, { recursive: true });
});

/** Status line and body for what is sent exactly as written, which `fetch` would tidy. */
const send = (...lines: string[]) =>
	new Promise<string>((resolve, reject) => {
		let got = '';
		const socket = connect(host.port, '127.0.0.1', () => socket.write([...lines, '', ''].join('\r\n')));
		socket
			.setEncoding('utf8')
			.on('data', (text: string) => (got += text))
			.on('error', reject)
			.on('close', () => resolve(`${got.split(' ')[1]} ${got.split('\r\n\r\n')[1]?.trim()}`));
	});

/** The host's name as it stands in its address. */
const name = () => `127.0.0.1:${host.port}`;

const ask = (path: string, method = 'GET') =>
	send(`${method} ${path} HTTP/1.1`, `host: ${name()}`, 'connection: close');

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
	['/app/%252e%252e/secret.txt', '404 no such file'],
	['/app/..%5csecret.txt', '404 no such file'],
	['/app/%c0%ae%c0%ae/secret.txt', '404 no such file'],
	['/app/part/../../../secret.txt', '404 no such file'],
	['/app/../site2/secret.txt', '404 no such file'],
	['/app//etc/passwd', '404 no such file'],
	['//etc/passwd', '404 no such file'],
	['/app/way-out.txt', '404 no such file'],
	['/app/upstairs/secret.txt', '404 no such file'],
	['/app/inside.css', '200 p{}'],
	['/app/bare/', '404 no such file'],
	['/app/bare', '404 no such file'],
	['http://127.0.0.1/app/', '404 no such file'],
	['*', '404 no such file'],
])('%s: %s', async (path, answer) => {
	expect(await ask(path)).toBe(answer);
});

test.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE', 'PATCH', 'PROPFIND'])('%s is refused', async (method) => {
	expect(await ask('/app/', method)).toBe('405 only GET and HEAD');
});

test('HEAD has no body, and neither CONNECT nor a made-up method has an answer', async () => {
	expect(await ask('/app/', 'HEAD')).toBe('200 ');
	expect(await ask('/app/', 'BREW')).toMatch(/^400 /);
	expect(await ask('127.0.0.1:80', 'CONNECT')).not.toMatch(/^2/);
	expect(await ask('/app/'), 'and it goes on').toBe('200 front');
});

test('only its own name is answered, so that no page from elsewhere can lead a browser here', async () => {
	const refused = '421 ask for 127.0.0.1 or localhost';
	const under = (...lines: string[]) => send('GET /app/ HTTP/1.1', ...lines, 'connection: close');
	expect(await under(`host: localhost:${host.port}`)).toBe('200 front');
	expect(await under(`Host: LOCALHOST:${host.port}`)).toBe('200 front');
	expect(await under(`host: gallery.example:${host.port}`)).toBe(refused);
	expect(await under('host: 127.0.0.1:1')).toBe(refused);
	expect(await under(`host: 127.0.0.1.gallery.example:${host.port}`)).toBe(refused);
	expect(await under(`host: ${name()}@gallery.example`)).toBe(refused);
	expect(await under('host:')).toBe(refused);
	expect(await under()).toMatch(/^400 /);
	expect(await send('GET /app/ HTTP/1.0')).toBe(refused);
});

test('a browser asks for each file again, unless it is told how long a file stays as it is', async () => {
	const saidBy = async ({ address }: StaticHost) => (await fetch(address)).headers.get('cache-control');
	expect(await saidBy(host)).toBe('no-cache');
	const other = await serveFolder(join(parent, 'site'), { maxAge: 60 });
	try {
		expect(await saidBy(other)).toBe('max-age=60');
	} finally {
		await other.stop();
	}
});

test('a long address is refused', async () => {
	expect(await ask(`/app/index.html?${'a'.repeat(1000)}`)).toBe('200 front');
	expect(await ask(`/app/${'a'.repeat(3000)}`)).toBe('414 the address is too long');
	expect(await ask(`/app/${'%2e%2e%2f'.repeat(300)}`)).toBe('414 the address is too long');
	expect(await ask(`/app/${'a'.repeat(100_000)}`)).toMatch(/^431 /);
});

test('only this machine is listened to', async () => {
	const others = Object.values(networkInterfaces())
		.flatMap((addresses) => addresses ?? [])
		.filter(({ internal, family }) => !internal && family === 'IPv4');
	for (const { address } of others) {
		const isRefused = new Promise((resolve) => {
			const socket = connect(host.port, address, () => (socket.destroy(), resolve(false)));
			socket.on('error', () => resolve(true));
		});
		expect(await isRefused, address).toBe(true);
	}
	expect(new URL(host.address).hostname).toBe('127.0.0.1');
});

test.each([
	['', 'text/html; charset=utf-8'],
	['two%20words.css', 'text/css; charset=utf-8'],
	['solver.wasm', 'application/wasm'],
])('%s comes with its type, and nobody guesses another', async (path, type) => {
	const { headers } = await fetch(host.address + path);
	expect(headers.get('content-type')).toBe(type);
	expect(headers.get('x-content-type-options')).toBe('nosniff');
	expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
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
