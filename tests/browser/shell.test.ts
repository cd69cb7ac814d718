import { expect, test } from 'vitest';
import { axeProblems } from './harness/axe.ts';
import { onStage } from './harness/stage.ts';

test.each(['/', '/some/where/'])('under %s it opens, asks nothing from elsewhere, and axe finds nothing', (under) =>
	onStage({ under }, async (stage) => {
		const page = await stage.openShow();
		expect(await page.title()).toBe('Evenhang');
		await stage.isKept(page);
		expect(await axeProblems(page)).toEqual([]);
	}),
);

test.each(['/', '/some/where/'])('under %s it opens cold with the host switched off', (under) =>
	onStage({ under }, async (stage) => {
		await stage.isKept(await stage.openShow());
		await stage.closeBrowser();
		await stage.stopHost();
		await stage.openBrowser();
		const page = await stage.openShow();
		await page.goto(`${stage.address}?from=home-screen`);
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		await expect(page.goto(`${stage.address}no-such-page`), 'only what is there is answered').rejects.toThrow();
	}),
);

test('every file that was built is kept on the device', () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await stage.isKept(page);
		const kept = await page.evaluate(async () => {
			const requests = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
			return requests.flat().map(({ url }) => new URL(url).pathname);
		});
		expect(kept.sort()).toEqual((await stage.filesServed()).sort());
	}));

test('the device may install it', () =>
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

test('the page takes no text for a script, and no script from outside its folder', () =>
	onStage({ under: '/some/where/' }, async (stage) => {
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
		expect(outcomes).toEqual({ html: 'TypeError', outside: 'TypeError', code: 'TypeError' });
		stage.expectProblems(/policy breached|Trusted|Content Security Policy/);
	}));
