import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { goBehindName } from './harness/behindName.ts';
import { chooseFile } from './harness/chooseFile.ts';
import { resize } from './harness/resize.ts';
import { landscapeTablet, onStage, uprightTablet } from './harness/stage.ts';
import { plainPng } from './pictures/pictureFiles.ts';
import { cell, press, seen, withPrints } from './screens/prints.ts';

test('two tabs keep their own shows over a reload, and a backup puts back what another device lacks', async () => {
	let backup = '';
	await onStage({ isKept: false }, async (stage) => {
		const one = await stage.openShow();
		await withPrints(one, [['Low water', '376', '251']]);
		const other = await stage.openShow();
		await goBehindName(other, 'Shows');
		await other.getByRole('button', { name: 'New show', exact: true }).first().click();
		await other.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		await withPrints(other, [['Kiln door', '300', '200']]);
		await cell(one, 0, 'title').click();
		await one.keyboard.type('High water');
		await press(one, 'Tab');
		for (const page of [one, other]) {
			await page.getByText('Saved', { exact: true }).waitFor();
			await page.reload();
			await cell(page, 0, 'title').waitFor();
		}
		expect([await seen(one, 0, 'title'), await seen(other, 0, 'title')]).toEqual([
			'High water typed',
			'Kiln door typed',
		]);
		await goBehindName(one, 'Shows');
		const download = one.waitForEvent('download');
		await one.getByRole('button', { name: 'Back up all shows' }).click();
		backup = await readFile(await (await download).path(), 'utf8');
	});

	await onStage({ isKept: false }, async (stage) => {
		const page = await stage.openShow();
		await goBehindName(page, 'Shows');
		await chooseFile(page, 'Open a file or a backup', 'backup.json', backup);
		await page.getByRole('button', { name: 'Restore the 2 missing shows' }).click();
		await page.getByText('2 shows restored').waitFor();
		const shows = page.getByRole('listitem').filter({ hasText: /1 print · last backed up/ });
		await expect.poll(() => shows.count()).toBe(2);
		await page.getByRole('button', { name: 'Close' }).click();
		await chooseFile(page, 'Open a file or a backup', 'backup.json', backup);
		await page.getByRole('heading', { name: 'A backup of 2 shows' }).waitFor();
		expect(await page.getByText('on this device, the same').count()).toBe(2);
		await page.getByRole('button', { name: 'Close' }).click();

		// With one show there is one main thing to do: it is at the corner, upright too.
		const all = JSON.parse(backup) as { shows: { name: string }[] };
		const one = JSON.stringify({ ...all, shows: [{ ...all.shows[0], name: 'Changed' }] });
		await chooseFile(page, 'Open a file or a backup', 'one.json', one);
		await page.getByRole('heading', { name: 'A backup of 1 show' }).waitFor();
		const main = page.getByRole('button', { name: 'Compare print by print: Changed' });
		expect(await main.count()).toBe(1);
		await page.getByText('“one.json”. Nothing has changed yet. Restoring never overwrites.').waitFor();
		await page.getByText(/^Yours is called “/).waitFor();
		for (const viewport of [landscapeTablet, uprightTablet]) {
			await resize(page, viewport);
			const [button, title] = [(await main.boundingBox())!, (await page.locator('main h1').boundingBox())!];
			expect(button.x + button.width).toBe(viewport.width - 24);
			expect(Math.abs(button.y + button.height / 2 - title.y - title.height / 2)).toBeLessThanOrEqual(1);
		}
	});
});

test('a file or pictures that another app shares come in, and are there only once', () =>
	onStage({}, async (stage) => {
		const page = await stage.openShow();
		await stage.isKept(page);
		// What the device sends when one chooses this app in another app's "share": a form, which no page of ours may send.
		const share = async (files: readonly { name: string; type: string; data: string }[]) => {
			await page.goto(`${stage.address}start.css`);
			await page.evaluate((files) => {
				const form = document.createElement('form');
				Object.assign(form, { method: 'post', action: 'share-target', enctype: 'multipart/form-data' });
				const input = Object.assign(document.createElement('input'), { type: 'file', name: 'files' });
				const shared = new DataTransfer();
				for (const { name, type, data } of files) {
					const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
					shared.items.add(new File([bytes], name, { type }));
				}
				input.files = shared.files;
				form.append(input);
				document.body.append(form);
				form.submit();
			}, files);
		};
		const base64 = (bytes: string | Uint8Array) => Buffer.from(bytes).toString('base64');
		const rows = base64('title,picture width\nLow water,376\n');
		await share([{ name: 'spring ü.csv', type: 'text/csv', data: rows }]);
		await page.getByText('1 row read').waitFor();
		expect(await seen(page, 0, 'title')).toBe('Low water typed');
		await page.getByRole('button', { name: 'Undo: import “spring ü.csv”' }).waitFor();
		expect(page.url()).not.toContain('shared');
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.goto(`${stage.address}?shared`);
		await cell(page, 0, 'title').waitFor();
		expect(await cell(page, 1, 'title').count()).toBe(0);

		// So do pictures, of which there may be several: shown first, as those that are dropped.
		await share([
			{ name: 'Low water.png', type: 'image/png', data: base64(plainPng(30, 20)) },
			{ name: 'Grüner Weir.png', type: 'image/png', data: base64(plainPng(20, 30)) },
		]);
		await page.getByText('30 × 20: Low water, by its title').waitFor();
		await page.getByText('20 × 30: new print “Grüner Weir”').waitFor();
		await page.getByRole('button', { name: 'Add pictures: 1 to prints, 1 new print' }).click();
		await cell(page, 1, 'title').waitFor();
		await expect.poll(() => page.locator('.beside svg image[href^="blob:"]').count()).toBe(1);

		// What the service worker could not keep is told.
		await page.goto(`${stage.address}?shared=not-kept`);
		await page.getByRole('alert').filter({ hasText: 'open it with Import' }).waitFor();
		expect(page.url()).not.toContain('shared');

		// A page of nothing but text names no icon; the browser may have looked for one.
		const problems = stage.problems.filter((problem) => !problem.includes('favicon'));
		stage.problems.splice(0, Infinity, ...problems);
	}));
