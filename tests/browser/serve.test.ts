import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { allOr } from '../soak.ts';
import { serveFolder } from '../../src/cli/staticHost.ts';
import { builtApp } from './harness/stage.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Starts what `npm start` starts after the build, and ends it once `until` is said or it ends by itself. */
function serve(port: string, until: RegExp): Promise<{ said: string; code: number | null; page: string }> {
	return new Promise((resolve, reject) => {
		const child = spawn(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'src/cli/serve.ts'], {
			cwd: root,
			env: { ...process.env, PORT: port },
		});
		let said = '';
		let page = '';
		const listen = (text: string) => {
			said += text;
			const address = until.exec(said)?.[1];
			if (address === undefined || page !== '') return;
			page = 'asked for';
			fetch(address)
				.then((answer) => answer.text())
				.then((text) => (page = text))
				.catch(reject)
				.finally(() => child.kill());
		};
		child.stdout.setEncoding('utf8').on('data', listen);
		child.stderr.setEncoding('utf8').on('data', listen);
		child.on('error', reject);
		child.on('close', (code) => resolve({ said, code, page }));
	});
}

const address = /at (http:\/\/127\.0\.0\.1:\d+\/)\n/;

test('the address is printed, and the app is there', async () => {
	const { said, page } = await serve('0', address);
	expect(said).toMatch(/^Evenhang is at http:\/\/127\.0\.0\.1:\d+\/\n$/);
	expect(page).toContain('<title>Evenhang</title>');
});

test('a port that is taken is answered with the next free one', async () => {
	const other = await serveFolder(builtApp);
	try {
		const { said, page } = await serve(String(other.port), address);
		expect(said).toContain(`Port ${other.port} is taken.`);
		expect(Number(/:(\d+)\/\n/.exec(said)?.[1])).toBeGreaterThan(other.port);
		expect(page).toContain('<title>Evenhang</title>');
	} finally {
		await other.stop();
	}
});

test.each(allOr(['tablet', '-1', '65536', '80.5'], ['tablet', '65536']))(
	'PORT=%s is no port, and it says so',
	async (port) => {
		const { said, code } = await serve(port, address);
		expect(said).toContain(`PORT is "${port}"`);
		expect(code).toBe(2);
	},
);
