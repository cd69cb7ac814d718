import { inflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { type Pages, pagesOf, pastMargins, type Text } from '../harness/pdfPages.ts';
import { resize } from '../harness/resize.ts';
import { phone, uprightTablet } from '../harness/stage.ts';
import { openShow, showOf } from '../harness/openShow.ts';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage();

const maker = 'Marguerite Oyelaran-Vance';
const longTitle =
	'The long shore of the winter estuary at ebb, seen from the breakwater before the first boat goes out, after a week of easterly wind and rain that took the old landing stage with it';

const small = {
	name: 'Small',
	width: 62,
	height: 31,
	columns: 3,
	rows: 8,
	left: 8,
	top: 14,
	gapAcross: 3,
	gapDown: 2.5,
};
const show = showOf(
	'Salt on paper',
	{
		...{ unit: 'mm', mountSize: '600 x 450 mm', border: 70, currency: 'EUR', labels: { name: 'forbidden' } },
		boards: [{ name: 'Chalk', width: 1200, height: 900, price: '43', pack: 5 }],
		frames: [{ name: 'Oak', moulding: 20, lip: 6, depth: 40, stick: 3000, price: '18.50', weight: 0.6 }],
		walls: [{ name: 'North', length: 9000, height: 2800 }],
		labelSheets: [small],
		labelContents: { back: ['this way up', 'title', 'maker', 'size', 'edition', 'price'] },
	},
	[
		{
			number: '1',
			title: longTitle,
			maker,
			edition: '3/25',
			medium: longTitle,
			note: longTitle,
			wall: 'North',
			frame: 'Oak',
		},
		...['Ebb', 'Breakwater', 'Net store', 'Kelp', 'Slip', 'Quay'].map((title, at) => ({
			...{
				number: `${at + 2}`,
				title,
				maker,
				shape: '3:2',
				edition: '1/12',
				wall: 'North',
				frame: 'Oak',
				price: '340',
			},
			...{ buyer: 'Tomasz Reedham' },
		})),
	].map((cells) => ({ shape: '3:2', ...cells })),
);

/** All documents of this show on A4; those of the lists are tried on Letter too, and in the soak all are. */
const papersTried = allOr(
	[
		['A4', 210, 297],
		['Letter', 215.9, 279.4],
	] as const,
	[['A4', 210, 297]] as const,
);

/** @param pageRanges the pages that are wanted. Default: all */
const pdfOf = async (page: Page, pageRanges = '') =>
	new Uint8Array(await page.pdf({ preferCSSPageSize: true, pageRanges }));
const choose = (page: Page, name: string) => page.getByRole('checkbox', { name, exact: true });
const toPaper = async (page: Page) => {
	await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'On paper' }).click();
	await page.getByRole('heading', { name: 'On paper', level: 1 }).waitFor();
};

/** Everything in a PDF that can be read: its bytes as they are, its streams unpacked, and its texts. */
async function readable(pdf: Uint8Array): Promise<string> {
	const bytes = Buffer.from(pdf);
	const raw = bytes.toString('latin1');
	const streams = [...raw.matchAll(/stream\r?\n/g)].flatMap(({ index, 0: { length } }) => {
		const from = index + length;
		try {
			return [inflateSync(bytes.subarray(from, raw.indexOf('endstream', from))).toString('latin1')];
		} catch {
			return []; // not packed, or the word stands in a packed one
		}
	});
	const pages = await pagesOf(pdf.slice());
	const trees = await Promise.all(pages.map(({ page }) => page.getStructTree()));
	const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
	return [raw, ...streams, JSON.stringify(trees), texts.join(' '), texts.join('')].join('\n').replaceAll('\0', '');
}

interface Sheet {
	readonly name: string;
	readonly page: readonly [number, number];
	readonly width: number;
	readonly height: number;
	readonly columns: number;
	readonly rows: number;
	readonly left: number;
	readonly top: number;
	readonly gapAcross: number;
	readonly gapDown: number;
}

/** The measures of the sheets, written by hand: in mm, those of Letter from 25.4 mm to the inch. */
const allSheets: readonly Sheet[] = [
	{ ...small, page: [210, 297] },
	{
		...{ name: 'A4, 2 × 5 of 99.1 × 57 mm', page: [210, 297], width: 99.1, height: 57, columns: 2, rows: 5 },
		...{ left: 4.65, top: 6, gapAcross: 2.5, gapDown: 0 },
	},
	{
		...{ name: 'Letter, 2 × 5 of 4 × 2 in', page: [215.9, 279.4], width: 101.6, height: 50.8, columns: 2, rows: 5 },
		...{ left: 3.97, top: 12.7, gapAcross: 4.76, gapDown: 0 },
	},
];
/** A small one and one in inches; in the soak all. */
const sheets = allOr(allSheets, [allSheets[2]!]);

/** The texts of each label, by its place, as they lie within it: mm from its left and its top. */
function textsOfLabels({ texts, height }: Pages[number], sheet: Sheet) {
	const labels = new Map<number, Text[]>();
	for (const text of texts) {
		const column = Math.floor((text.left - sheet.left) / (sheet.width + sheet.gapAcross));
		const row = Math.floor((height - text.bottom - sheet.top) / (sheet.height + sheet.gapDown));
		const left = sheet.left + column * (sheet.width + sheet.gapAcross);
		const top = sheet.top + row * (sheet.height + sheet.gapDown);
		const place = row * sheet.columns + column;
		const within = { left: text.left - left, right: text.right - left };
		const upright = { bottom: height - text.bottom - top, top: height - text.top - top };
		labels.set(place, [...(labels.get(place) ?? []), { ...text, ...within, ...upright }]);
	}
	return labels;
}

test('labels: true to size on sheets of several sizes, from the label that is chosen, no hidden name in them, and remembered', () =>
	play(async (page) => {
		await openShow(page, show);
		await toPaper(page);
		await choose(page, 'Labels for the back').check();
		const why = page.getByText('The rules of the show forbid the maker’s name on the back.');
		await why.waitFor();
		const makerBox = page
			.getByRole('group', { name: 'On a label for the back' })
			.getByRole('checkbox', { name: 'Maker' });
		expect(await makerBox.getAttribute('aria-disabled')).toBe('true');
		await makerBox.click({ force: true });
		expect(await makerBox.isChecked()).toBe(false);
		await page.getByText(/: title shortened to fit its label/).waitFor();

		// How far the foot of the letters is below the top of a line of 1.25, in the size of the type.
		const toBaseline = await page.evaluate(() => {
			const context = document.createElement('canvas').getContext('2d')!;
			context.font = `400 100px ${getComputedStyle(document.documentElement).fontFamily}`;
			const { fontBoundingBoxAscent: above, fontBoundingBoxDescent: below } = context.measureText('x');
			return ((125 - above - below) / 2 + above) / 100;
		});
		expect(toBaseline).toBeGreaterThan(0.7);

		const select = page.getByRole('combobox', { name: 'Label sheet for the back' });
		for (const sheet of sheets) {
			await select.selectOption(sheet.name);
			await expect.poll(() => select.inputValue()).toBe(sheet.name);
			await page.getByRole('button', { name: 'Start at label 2', exact: true }).click();
			await expect.poll(() => page.getByRole('spinbutton', { name: /^Start at label/ }).inputValue()).toBe('2');
			const pdf = await pdfOf(page);
			const pages = await pagesOf(pdf.slice());
			expect(pages, sheet.name).toHaveLength(1);
			expect([pages[0]!.width, pages[0]!.height].map((side, at) => Math.abs(side - sheet.page[at]!) < 0.5)).toEqual([
				true,
				true,
			]);
			const labels = textsOfLabels(pages[0]!, sheet);
			expect(
				[...labels.keys()].sort((a, b) => a - b),
				'seven labels, the first one left free',
			).toEqual([1, 2, 3, 4, 5, 6, 7]);
			const padding = Math.max(1, Math.min(4, Math.min(sheet.width, sheet.height) / 10));
			for (const [place, texts] of labels) {
				const words = texts.map(({ text }) => text).join(' ');
				expect(words).toContain('This way up');
				for (const { left, right, bottom, top, text } of texts) {
					const at = `${sheet.name}, label ${place + 1}: ${text}`;
					expect(left, at).toBeGreaterThan(padding - 0.3);
					expect(right, at).toBeLessThan(sheet.width - padding + 0.3);
					expect(top, at).toBeGreaterThan(0);
					expect(bottom, at).toBeLessThan(sheet.height);
				}
				// Its texts begin at its left edge, and their block lies in the middle of its height.
				const edge = Math.min(...texts.filter(({ text }) => !text.includes('This way up')).map(({ left }) => left));
				expect(Math.abs(edge - padding), `label ${place + 1} across`).toBeLessThanOrEqual(0.3);
				const lines = texts.toSorted((a, b) => a.bottom - b.bottom);
				const [first, last] = [lines[0]!, lines.at(-1)!];
				const sizeOf = ({ top, bottom }: Text) => bottom - top;
				const above = first.bottom - toBaseline * sizeOf(first);
				const below = sheet.height - (last.bottom + (1.25 - toBaseline) * sizeOf(last));
				expect(Math.abs(above - below) / 2, `label ${place + 1} down`).toBeLessThanOrEqual(0.3);
			}
			const whole = await readable(pdf);
			expect(whole).toContain('Breakwater');
			for (const hidden of [...maker.split(/[ -]/), 'Reedham']) expect(whole, hidden).not.toContain(hidden);
		}

		// On the wall the name may stand, and there it is found by the same search.
		await choose(page, 'Labels for the back').uncheck();
		await choose(page, 'Labels for the wall').check();
		await page.getByText(maker).first().waitFor();
		expect(await readable(await pdfOf(page))).toContain('Marguerite');

		await page.keyboard.press('Control+z');
		await expect.poll(() => choose(page, 'Labels for the wall').isChecked()).toBe(false);
		await choose(page, 'Labels for the back').check();
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await page.getByRole('spinbutton', { name: /^Start at label/ }).waitFor();
		expect(await select.inputValue()).toBe(sheets.at(-1)!.name);
		expect(await page.getByRole('spinbutton', { name: /^Start at label/ }).inputValue()).toBe('2');

		// With few documents, so that few pages are laid out again.
		await choose(page, 'Print cards').check();
		await page.locator('article').nth(1).waitFor();
		// What comes out is counted where it is printed: a paper may be ticked out of sight.
		const counted = await page.locator('.desk .sum').innerText();
		const [, all, ...each] = /^2 papers, (\d+) pages\s+Print cards (\d+) · Labels for the back (\d+)$/.exec(counted)!;
		expect(
			each.map(Number).reduce((sum, pages) => sum + pages),
			counted,
		).toBe(Number(all));
		expect(await page.locator('article').count()).toBe(Number(all));
		// Held upright, what is chosen is a line over the pages, which go downwards, and opens; beside them on a page that lies.
		const topOf = async (selector: string) => (await page.locator(selector).first().boundingBox())!;
		await resize(page, uprightTablet);
		await expect.poll(async () => (await topOf('.desk')).height).toBeLessThan(80);
		const [first, second] = await page.locator('article').all();
		const [one, other] = [(await first!.boundingBox())!, (await second!.boundingBox())!];
		expect(one.y).toBeGreaterThan((await topOf('.desk')).y);
		expect([other.x, other.y > one.y + one.height]).toEqual([one.x, true]);
		expect(one.y + one.height, 'the page is seen whole').toBeLessThanOrEqual(uprightTablet.height);
		expect(one.width, 'and read').toBeGreaterThan(uprightTablet.width * 0.75);
		await page.getByText(/^2 papers, \d+ pages$/).click();
		expect((await topOf('.desk')).height).toBeGreaterThan(300);
		const record = await topOf('.choices > fieldset:last-child');
		expect(record.x, 'in two columns, so that they end early').toBeGreaterThan(uprightTablet.width / 2);
		const tick = (await choose(page, 'Labels for the back').boundingBox())!;
		const options = await topOf('.options');
		expect(options.x - tick.x, 'under its tick').toBeLessThan(60);
		expect(options.y - tick.y, 'under its tick').toBeGreaterThan(0);
		expect(options.width, 'as wide as the page').toBeGreaterThan(uprightTablet.width * 0.8);
		// What is chosen first folds the choices, for its pages stand under them.
		for (const name of ['Labels for the back', 'Print cards']) await choose(page, name).uncheck();
		await choose(page, 'Bench list').check();
		await expect.poll(() => page.locator('.desk details').getAttribute('open')).toBeNull();
		expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY');
		for (let step = 0; step < 3; step++) await page.keyboard.press('Control+z');
		await page.getByText(/^2 papers, \d+ pages$/).waitFor();
		await resize(page, { width: 1180, height: 820 });
		await expect.poll(async () => (await topOf('article')).x > (await topOf('.desk')).x + 200).toBe(true);
		await resize(page, { width: 1440, height: 900 });
		const tops = () =>
			page.locator('article').evaluateAll((all) => all.slice(0, 2).map((each) => each.getBoundingClientRect().top));
		await expect.poll(async () => new Set(await tops()).size, { message: 'two pages side by side' }).toBe(1);

		// Pages are drawn to fit the screen; on paper they are as large as ever.
		for (const viewport of [uprightTablet, phone, { width: 320, height: 640 }]) {
			await resize(page, viewport);
			await expect
				.poll(() => page.evaluate(() => document.querySelector('article')!.getBoundingClientRect().right))
				.toBeLessThanOrEqual(viewport.width - 16);
			expect(await page.evaluate(() => document.querySelector('.place')!.scrollWidth)).toBe(viewport.width);
		}
		const widths = (await pagesOf(await pdfOf(page))).map(({ width }) => Math.round(width));
		expect(new Set(widths)).toEqual(new Set([Math.round(sheets.at(-1)!.page[0]), 210]));
		await resize(page, { width: 1180, height: 820 });

		// Other documents: long texts lie inside their pages, nothing is cut off, each page says whose it is.
		await choose(page, 'Labels for the back').uncheck();
		const others = page
			.getByRole('region', { name: 'What to print' })
			.locator('.choice .line')
			.filter({ hasNotText: /^Labels/ })
			.getByRole('checkbox', { checked: false });
		expect(await others.count()).toBeGreaterThan(10);
		// All at once: the pages are laid out once.
		await others.evaluateAll((boxes) => boxes.forEach((box) => (box as HTMLElement).click()));
		await expect.poll(() => others.count()).toBe(0);
		// Without an undermount a paper is hinged to the back of its mount: left is on the right there, and so is what is measured.
		for (const sheet of ['Print card', 'Frames and hinges']) {
			const back = page
				.getByRole('article', { name: new RegExp(`^${sheet}`) })
				.getByRole('img', { name: /^Back of the mount: / })
				.first();
			const texts = await back
				.locator('text')
				.evaluateAll((all) => all.map((each) => [each.textContent, each.getBoundingClientRect().x] as const));
			const at = (word: string) => texts.find(([text]) => text === word)![1];
			// The hinges come first, from the left.
			const hinges = texts.filter(([text], place) => place < 3 && /^\d+$/.test(text)).map(([, x]) => x);
			expect(texts[0]![0], sheet).toBe('0');
			const order = [at('right'), ...hinges.toReversed(), at('left')];
			expect(order, sheet).toHaveLength(5);
			expect(order, sheet).toEqual(order.toSorted((a, b) => a - b));
		}
		const framing = page.getByRole('article', { name: /^Frames and hinges/ });
		// Figures over the hinges are apart from each other, and the note on the mount's back is said once a page.
		const close = await framing
			.getByRole('img', { name: /^(Back of the mount|Undermount): / })
			.evaluateAll((drawings) =>
				drawings.flatMap((drawing) => {
					const boxes = [...drawing.querySelectorAll('text')].map(
						(text) => [text.textContent, text.getBoundingClientRect()] as const,
					);
					return boxes.flatMap(([one, a], at) =>
						boxes.slice(at + 1).flatMap(([other, b]) => {
							const isOver = a.top < b.bottom - 3 && b.top < a.bottom - 3;
							return isOver && a.left < b.right && b.left < a.right ? [`${one} on ${other}`] : [];
						}),
					);
				}),
			);
		expect(close).toEqual([]);
		const [caption, care] = await Promise.all(
			['section:last-child figcaption', '.care'].map((part) =>
				framing
					.first()
					.locator(part)
					.last()
					.evaluate((each) => each.getBoundingClientRect()),
			),
		);
		expect(care!.top - caption!.bottom, 'words under the last are apart from the cautions').toBeGreaterThan(9);
		const notes = (await framing.first().innerText()).match(/no undermount is set/gi);
		expect(notes).toHaveLength(1);
		for (const [paper, width, height] of papersTried) {
			await page.getByRole('radio', { name: paper }).check();
			await expect.poll(() => page.locator(`article:not(.${paper})`).count()).toBe(0);
			await expect.poll(() => page.getByText(/Wait before you print/).count()).toBe(0);
			const cutOff = await page
				.locator('article .body')
				.evaluateAll((bodies) =>
					bodies.flatMap((body, at) =>
						body.scrollHeight > body.clientHeight + 1 ? [`page ${at + 1}: ${body.textContent.slice(0, 60)}`] : [],
					),
				);
			expect(cutOff, paper).toEqual([]);
			const pages = await pagesOf(await pdfOf(page));
			expect(pastMargins(pages, { width, height }), paper).toEqual([]);
			const year = `${new Date().getFullYear()}`;
			for (const [at, { texts }] of pages.entries()) {
				const words = texts.map(({ text }) => text).join(' ');
				expect(words).toContain(`Page ${at + 1} of ${pages.length}`);
				expect(words).toContain('Salt on paper');
				expect(words).toContain(year);
			}
		}
	}));

test('a place leads to its own documents and back; what was chosen before is there again; nothing to print says why', () =>
	play(async (page) => {
		await openShow(page, showOf('Bare', { unit: 'mm' }, [{ title: 'Ebb' }]));
		await toPaper(page);
		await page.getByText('Nothing is chosen yet').waitFor();
		const walls = page.getByRole('checkbox', { name: 'Walls and hanging list No print hangs on a wall yet.' });
		await expect.poll(() => walls.isDisabled()).toBe(true);
		await choose(page, 'Labels for the back').check();
		expect(await page.getByRole('button', { name: 'Print or save as PDF' }).isDisabled()).toBe(false);
		await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Whole show' }).click();
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.getByRole('link', { name: 'Back to the whole show' }).waitFor();
		expect(await choose(page, 'Contact sheet').isChecked()).toBe(true);
		expect(await choose(page, 'Labels for the back').isChecked()).toBe(false);
		await page.getByText('Page 1 of 1').waitFor();
		await toPaper(page);
		await expect.poll(() => choose(page, 'Labels for the back').isChecked()).toBe(true);
		expect(await choose(page, 'Contact sheet').isChecked()).toBe(false);
	}));
