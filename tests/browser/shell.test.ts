import { expect, test } from 'vitest';
import { onStage } from './harness/stage.ts';

test('it opens, keeps every file that was built, and opens cold with the host switched off', () =>
	onStage({ hasProfile: true, isWhole: true }, async (stage) => {
		const first = await stage.openShow();
		expect(await first.title()).toBe('Evenhang');
		await stage.isKept(first);
		const kept = await first.evaluate(async () => {
			const requests = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
			return requests.flat().map(({ url }) => new URL(url).pathname);
		});
		expect(kept.sort()).toEqual((await stage.filesServed()).sort());

		await stage.closeBrowser();
		await stage.stopHost();
		await stage.openBrowser();
		const page = await stage.openShow();
		await page.goto(`${stage.address}?from=home-screen`);
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		await expect(page.goto(`${stage.address}no-such-page`), 'only what is there is answered').rejects.toThrow();
	}));

test('the device may install it, from wherever it is served', () =>
	onStage({ under: '/some/where/' }, async (stage) => {
		const page = await stage.openShow();
		await stage.isKept(page);
		const debug = await stage.context.newCDPSession(page);
		const { installabilityErrors } = await debug.send('Page.getInstallabilityErrors');
		expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
		const { url, errors, data } = await debug.send('Page.getAppManifest');
		expect([url, errors]).toEqual([`${stage.address}manifest.webmanifest`, []]);
		const { icons } = JSON.parse(data ?? '') as { icons: { src: string; sizes: string; purpose?: string }[] };
		for (const { src, sizes } of icons) {
			const size = await page.evaluate(async (address) => {
				const image = new Image();
				image.src = address;
				await image.decode();
				return `${image.naturalWidth}x${image.naturalHeight}`;
			}, stage.address + src);
			if (sizes !== 'any') expect(size, src).toBe(sizes);
		}
		expect(icons.filter(({ purpose }) => purpose === 'maskable').length).toBeGreaterThan(0);
	}));

test('files of every kind that is imported are opened with the app, and may be shared with it', () =>
	onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		const text = await page.evaluate(async () => (await fetch('manifest.webmanifest')).text());
		const manifest = JSON.parse(text) as {
			file_handlers: { accept: Record<string, string[]> }[];
			share_target: { params: { files: { accept: string[] }[] } };
		};
		const opened = manifest.file_handlers.flatMap(({ accept }) => Object.entries(accept).flat(2));
		const shared = manifest.share_target.params.files.flatMap(({ accept }) => accept);
		for (const kind of ['.csv', '.tsv', '.json', '.zip']) {
			expect(opened).toContain(kind);
			expect(shared).toContain(kind);
		}
	}));

test('the page takes no text for a script, and no script from outside its folder', () =>
	onStage({ under: '/some/where/', isKept: false }, async (stage) => {
		const page = await stage.openShow();
		const outcomes = await page.evaluate(() => {
			const outcome = (act: () => unknown) => {
				try {
					act();
					return 'done';
				} catch (cause) {
					return (cause as Error).name;
				}
			};
			return {
				html: outcome(() => (document.createElement('div').innerHTML = '<b>bold</b>')),
				outside: outcome(() => new Worker('/outside.js')),
				// oxlint-disable-next-line typescript/no-implied-eval -- to see it refused
				code: outcome(() => setTimeout('1 + 1')),
			};
		});
		// Pictures are its own, or made on the device: none that a file or a text brings with it, none from elsewhere.
		const drawn = (address: string) =>
			page.evaluate(async (src) => {
				const breach = new Promise<string>((resolve) =>
					addEventListener('securitypolicyviolation', ({ effectiveDirective }) => resolve(effectiveDirective), {
						once: true,
					}),
				);
				const image = new Image();
				image.src = src;
				return Promise.race([breach, image.decode().then(() => 'drawn')]).catch(() => breach);
			}, address);
		expect(await drawn('data:image/gif;base64,R0lGODlhAQABAAAAACH5BAEKAAEALAAAAAABAAEAAAICTAEAOw==')).toBe('img-src');
		expect(await drawn('https://pictures.example/a.png')).toBe('img-src');
		expect(await drawn('icon-192.png')).toBe('drawn');
		expect(outcomes).toEqual({ html: 'TypeError', outside: 'TypeError', code: 'TypeError' });
		stage.expectProblems(/policy breached|Trusted|Content Security Policy|pictures\.example/);
	}));
