import type { Page } from 'playwright-core';
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { glazingCautions } from '../../../src/core/bench/glazingCautions.ts';
import { knifeCautions } from '../../../src/core/bench/knifeCautions.ts';
import { allOr, isSoak, testInSoak } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { pagesOf, pastMargins } from '../harness/pdfPages.ts';
import { openFirstShow } from '../harness/openShow.ts';
import { resize } from '../harness/resize.ts';
import { someOfExample } from '../harness/someOfExample.ts';
import { isInView } from '../harness/isInView.ts';
import { landscapeTablet, onStage, phone, uprightTablet } from '../harness/stage.ts';
import { cell } from '../screens/prints.ts';
import { oneStage } from '../screens/oneStage.ts';
import { openSettings } from '../screens/settingsOf.ts';

const play = oneStage({ hasTouch: true, reducedMotion: 'reduce' });
/** Begins where the play before has left the page, which had planned the example. */
const goesOn = { goesOn: true };

/** Prints of each board, glazing and backing of the example: in `npm test` the others are as they are. */
const few = [1, 2, 4, 10, 12, 15, 26, 27, 28];

/** Opens the example, in `npm test` with a few of its prints. */
async function openExample(page: Page) {
	if (!isSoak) return openFirstShow(page, someOfExample(few));
	await page.getByRole('button', { name: 'Load the example' }).tap();
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
}

async function goTo(page: Page, place: 'Boards' | 'Prints' | 'Bench') {
	await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place }).tap();
	await page.locator(`nav a[aria-current=page]:text-is("${place}")`).waitFor();
}

/** Types into a cell of the grid. */
async function type(page: Page, row: number, key: string, text: string) {
	await cell(page, row, key).click();
	await page.keyboard.type(text);
	await page.keyboard.press('Enter');
}

const letter = { paper: 'Letter', width: 215.9, height: 279.4 };
/** The lower one; in the soak both. All documents are tried on A4 in `paper/onPaper.test.ts`. */
const papers = allOr([{ paper: 'A4', width: 210, height: 297 }, letter], [letter]);

/** Waits for plans of the boards, glazing and backing of the example that are proven and not as of before a change. */
async function proven(page: Page) {
	await expect
		.poll(() => page.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/).count(), { timeout: 20_000 })
		.toBe(5);
	await expect
		.poll(() => page.getByText('This is the plan before your last change').count(), { timeout: 20_000 })
		.toBe(0);
}

/** How many pieces the plan of a board takes, as the screen says. */
const pieces = async (page: Page, board: string) =>
	Number(
		await page
			.getByRole('region', { name: new RegExp(`^${board}`) })
			.locator('dd')
			.first()
			.innerText(),
	);

const marks = (page: Page) => page.getByRole('button', { name: /^Mark as cut/ });
const cutAlready = (page: Page) => page.getByRole('button', { name: /^Not cut/ });

/** The drawings of sheets: how wide the sheet is, in mm, how wide it is drawn, and in how wide a column. */
const drawnFigures = (page: Page) =>
	page.locator('figure').evaluateAll((figures) =>
		figures.map((figure) => ({
			mm: Number(/of (\d+) × /.exec(figure.querySelector('h4')!.textContent)![1]),
			wide: figure.querySelector('rect.board')!.getBoundingClientRect().width,
			column: figure.getBoundingClientRect().width,
		})),
	);

// In parts: the example is planned in `order/example`, opened cold and offline in `shell`.
testInSoak('with no connection the example comes to a proven plan, with sheets, cost, waste and what to buy', () =>
	onStage({ reducedMotion: 'reduce', hasTouch: true }, async (stage) => {
		const page = await stage.openApp();
		await stage.isKept(page);
		await stage.stopHost();
		await page.reload();
		await openExample(page);
		await goTo(page, 'Boards');
		await proven(page);
		const chalk = page.getByRole('region', { name: /^Chalk/ });
		expect(await chalk.innerText()).toMatch(/cost \(lowest possible: [\d.]+\)\n[\d.]+/);
		expect(await chalk.innerText()).toMatch(/To buy: \d+ packs of 5 sheets, 1200 × 900 mm/);
		expect(
			await page.getByRole('img', { name: /^(\d+ × sheet|Sheet) of 1200 × 900 mm: .*cuts?$/ }).count(),
		).toBeGreaterThan(0);
		// Three prints of the example have something to stop for, and are listed with it.
		expect(await page.getByRole('region', { name: 'Not planned until put right' }).getByRole('listitem').count()).toBe(
			3,
		);
		await stage.startHost();
	}),
);

// That a search goes on beside the page: `unit/app/packing`; how long a key takes meanwhile: the bench.
testInSoak('typing never waits while boards are planned, the old plan says so, and the new one follows', () =>
	play(async (page) => {
		await openExample(page);
		const begun = performance.now();
		await goTo(page, 'Boards');
		await proven(page);
		const planning = performance.now() - begun; // as slow as this machine is just now
		const before = await pieces(page, 'Chalk');
		await goTo(page, 'Prints');
		await page.evaluate(() => {
			const counted = window as unknown as { waits: number[] };
			counted.waits = [];
			addEventListener(
				'keydown',
				() => {
					const start = performance.now();
					requestAnimationFrame(() => counted.waits.push(performance.now() - start));
				},
				{ capture: true },
			);
		});
		await type(page, 0, 'copies', '9');
		for (const title of ['Ebb, rewritten', 'Ebb, once more', 'Ebb, before seven']) {
			await type(page, 0, 'title', title);
			await page.waitForTimeout(350); // long enough for a search to begin
		}
		const waits = await page.evaluate(() => (window as unknown as { waits: number[] }).waits);
		expect(waits.length).toBeGreaterThan(40);
		expect(Math.max(...waits)).toBeLessThan(planning); // no key had to wait for a plan
		await goTo(page, 'Boards');
		await expect.poll(() => pieces(page, 'Chalk'), { timeout: 20_000 }).toBeGreaterThan(before);
		await page
			.getByRole('img', { name: /Ebb, before seven \(\d\)/ })
			.first()
			.waitFor();
		await proven(page);
	}),
);

test('on paper each sheet comes with its cuts, all of it inside its page, with show, date and page', () =>
	play(async (page) => {
		await openExample(page);
		await goTo(page, 'Boards');
		await proven(page);
		const figures = await page.locator('figure').count();
		const acrylic = page.getByRole('region', { name: /^Clear acrylic/ });
		await acrylic.getByText('700 × 550 mm, glazing: 2 pieces').waitFor();
		const given = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Export cut list' }).tap();
		const list = await readFile(await (await given).path(), 'utf8');
		expect(list).toContain('glazing,Clear acrylic,700,550,glazing,2,"26 Level four; 27 Level four, lamp lit"');
		await page.getByRole('link', { name: 'Print on paper' }).tap();
		for (const { paper, width, height } of papers) {
			await page.getByRole('radio', { name: paper }).check();
			const pageCount = await page.locator('article').count();
			expect(pageCount).toBeGreaterThanOrEqual(figures - 2); // ready-cut offcuts have figures too
			const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
			expect(pages).toHaveLength(pageCount);
			const said = pages.map((each) => each.texts.map(({ text }) => text).join(' '));
			expect(said[0]).toContain('Cut list by size');
			expect(said.join(' ')).toContain('Clear acrylic, 700 × 550 mm, glazing: 2 pieces. 26 Level four');
			const ofGlass = said.filter((text) => /Clear (glass|acrylic), sheet/.test(text) && !text.includes(', continued'));
			expect(ofGlass.length).toBeGreaterThan(1);
			for (const glass of ofGlass)
				expect(glass).toMatch(/cut-resistant gloves, eye protection.*Score from edge to edge.*snap it/);
			let cuts = 0;
			for (const [place, each] of pages.entries()) {
				const whole = each.texts.map(({ text }) => text).join(' ');
				expect(whole).toContain('Salt and slate, Kiln Lane Rooms');
				expect(whole).toContain(`Page ${place + 1} of ${pageCount}`);
				expect(whole).toMatch(/\b20\d\d\b/);
				cuts += whole.match(/\d+\. [\d.]+ mm from the (left|top) edge of/g)?.length ?? 0;
			}
			expect(pastMargins(pages, { width, height }), paper).toEqual([]);
			expect(cuts).toBeGreaterThan(20);
		}
	}));

test('all sheets and offcuts are drawn at one scale, and the widest fills its column, on a tablet either way and on a phone', () =>
	play(async (page) => {
		// In the page of the play before, which has the example and its plans.
		await goTo(page, 'Boards');
		await proven(page);
		for (const { columns, ...size } of [
			{ width: 1180, height: 820, columns: 3 },
			{ width: 820, height: 1180, columns: 2 },
			{ width: 390, height: 844, columns: 1 },
		]) {
			await resize(page, size);
			// The drawings follow the page a moment later.
			await expect
				.poll(
					async () => {
						const drawn = await drawnFigures(page);
						const scales = drawn.map(({ mm, wide }) => wide / mm);
						const widest = drawn.reduce((a, b) => (b.mm > a.mm ? b : a));
						return {
							sizes: new Set(drawn.map(({ mm }) => mm)).size > 2,
							isOneScale: Math.max(...scales) / Math.min(...scales) < 1.01,
							isFilled: widest.wide > widest.column - 60,
							columns: Math.round((size.width - (size.width < 641 ? 32 : 48) + 32) / (widest.column + 32)),
						};
					},
					{ message: `${size.width} px` },
				)
				.toEqual({ sizes: true, isOneScale: true, isFilled: true, columns });
			if (size.width < 641) continue; // there it is at the foot
			const main = (await page.getByRole('link', { name: 'Start cutting sheets' }).boundingBox())!;
			const title = (await page.getByRole('heading', { level: 1 }).boundingBox())!;
			expect(main.x + main.width, 'the main button is at the corner').toBe(size.width - 24);
			expect(Math.abs(main.y + main.height / 2 - title.y - title.height / 2)).toBeLessThanOrEqual(1);
		}
	}, goesOn));

test('by keyboard alone: to the knife and through a step; the focus stays where one goes on', () =>
	play(async (page) => {
		const focused = () => page.evaluate(() => document.activeElement?.textContent.trim() ?? '');
		const press = (key: string) => page.keyboard.press(key);
		const tabTo = async (wanted: RegExp, key = 'Tab') => {
			for (let turn = 0; turn < 60 && !wanted.test(await focused()); turn++) await press(key);
			expect(await focused()).toMatch(wanted);
		};
		// In the page of the play before, which has the example and its plans.
		await goTo(page, 'Prints');
		await goTo(page, 'Boards');
		await proven(page);
		await tabTo(/^Start cutting sheets$/);
		await press('Enter');
		await expect.poll(focused, { message: 'one comes to the heading' }).toBe('Before the first cut');
		await tabTo(/^Next$/);
		await press('Enter');
		await page.locator('.digits').waitFor();
		await tabTo(/^Chalk, sheet/, 'Shift+Tab');
		const ticked = await focused();
		await press('Space');
		await page.getByText(/^[1-9]\d* of \d+ cuts made$/).waitFor();
		expect(await focused()).toBe(ticked);
		await press('Control+z');
		await page.getByText(/^0 of \d+ cuts made$/).waitFor();
		expect(await focused()).toBe(ticked);
		await tabTo(/^Spoilt$/);
		await press('Enter');
		await expect.poll(() => page.getByText('Replanning. Wait before you cut.').count(), { timeout: 20_000 }).toBe(0);
		await expect.poll(focused, { message: 'its line has gone, another is at hand' }).toMatch(/^Chalk, sheet|^Spoilt/);
		await press('Control+z'); // the line that is at hand may go with it
		await expect.poll(focused).not.toBe(await page.evaluate(() => document.body.textContent.trim()));
		await tabTo(/^Back$/);
		await press('Enter');
		await page.getByRole('heading', { name: 'Before the first cut' }).waitFor();
		expect(await focused(), 'there is nothing before it, and yet the focus stays').toBe('Back');
		await tabTo(/^List$/, 'Shift+Tab');
		await press('Enter');
		await expect.poll(focused, { message: 'where one came from' }).toBe('Boards');
	}, goesOn));

test('a sheet marked as cut stays over a reload, undo takes it back; a spoilt one is planned again', () =>
	play(async (page) => {
		// In the page of the play before, which has the example and its plans.
		await goTo(page, 'Boards');
		await proven(page);
		const [count, open] = [await pieces(page, 'Chalk'), await marks(page).count()];
		await marks(page).first().tap();
		await expect.poll(() => cutAlready(page).count()).toBe(1);
		expect(await marks(page).count()).toBe(open - 1);
		expect(await page.evaluate(() => document.activeElement?.id), 'one goes on with the sheet').toMatch(/^sheet-/);
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await expect.poll(() => cutAlready(page).count()).toBe(1);
		await proven(page);
		expect(await pieces(page, 'Chalk')).toBe(count);
		expect(await axeProblems(page)).toEqual([]);
		await page
			.getByRole('button', { name: /^Spoilt: .* 1\b/ })
			.first()
			.tap();
		await page.getByText('(spoilt)').waitFor();
		await expect.poll(() => pieces(page, 'Chalk'), { timeout: 20_000 }).toBeGreaterThan(count);
		await page.getByRole('button', { name: /^Undo: mark a sheet as spoilt/ }).tap();
		await expect.poll(() => pieces(page, 'Chalk'), { timeout: 20_000 }).toBe(count);
		await page.getByRole('button', { name: /^Not cut/ }).tap();
		await expect.poll(() => cutAlready(page).count()).toBe(0);
		await proven(page);
	}, goesOn));

test('a change that leaves a cut blank over is asked about; left, all is as it was, and so is where one was', () =>
	play(async (page) => {
		// In the page of the play before, which has the example and its plans.
		await goTo(page, 'Boards');
		await proven(page);
		// Of equally good plans any may stand: the sheet is the one with the blank that the change would leave over.
		const chalk = page.getByRole('region', { name: /^Chalk/ });
		const withFirst = chalk.locator('figure').filter({ has: page.getByRole('img', { name: /\b1 Ebb\b/ }) });
		await marks(page).and(withFirst.getByRole('button')).first().tap();
		await expect.poll(() => cutAlready(page).count()).toBe(1);
		const leave = page.getByRole('button', { name: 'Leave it as it was' });
		await openSettings(page, 'Mount and window');
		const size = page.getByLabel('Mount size', { exact: true }).first();
		const before = await size.inputValue();
		await size.fill('800 x 600');
		await page.keyboard.press('Enter');
		await page
			.getByText(/blanks? of 700 × 550 mm, cut from “Chalk”, would be left over/)
			.first()
			.waitFor();
		await leave.press('Enter');
		await expect.poll(() => size.inputValue(), { message: 'the field shows what is kept' }).toBe(before);
		expect(await size.evaluate((field) => document.activeElement === field)).toBe(true);
		await goTo(page, 'Prints');
		await type(page, 0, 'mount', 'Small');
		await leave.press('Enter');
		await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('gridcell');
		await goTo(page, 'Boards');
		await cutAlready(page).tap();
		await expect.poll(() => cutAlready(page).count()).toBe(0);
	}, goesOn));

test('the knife is worked through by touch: one measure at a time, ticks kept, and taken back', () =>
	play(async (page) => {
		// In the page of the play before, which has the example and its plans.
		await goTo(page, 'Boards');
		await proven(page);
		await page.getByRole('link', { name: 'Start cutting sheets' }).tap();
		await page.getByRole('heading', { name: 'Before the first cut' }).waitFor();
		await page.getByRole('button', { name: 'Next', exact: true }).tap();
		await page.locator('.digits').waitFor();
		const small = await page
			.locator('main button, main a')
			.evaluateAll(
				(all) =>
					all.filter((each) => Math.min(each.getBoundingClientRect().width, each.getBoundingClientRect().height) < 60)
						.length,
			);
		expect(small).toBe(0);
		// Glass has its own cautions, and not those of the knife.
		const ofKnife = page.getByText(knifeCautions.atStep);
		const ofGlass = page.getByText(glazingCautions.scoring);
		expect([await ofKnife.count(), await ofGlass.count()]).toEqual([1, 0]);
		// Where a step has several sheets it says which of them is drawn.
		while ((await page.getByRole('button', { name: /^Show / }).count()) === 0) await page.keyboard.press('ArrowRight');
		expect(await page.locator('figcaption').innerText()).toContain(await page.locator('.drawn .name').innerText());
		while ((await ofGlass.count()) === 0) await page.keyboard.press('ArrowRight');
		expect(await ofKnife.count()).toBe(0);
		while ((await page.getByRole('heading', { name: /^Sheets, step 1 of/ }).count()) === 0)
			await page.keyboard.press('ArrowLeft');
		await resize(page, phone);
		await expect.poll(() => isInView(page, ofKnife), { message: 'read before anything is scrolled' }).toBe(true);
		const drawing = page.locator('.work figure svg').first();
		const row = page.locator('.ticks li button').first();
		expect([await isInView(page, drawing), await isInView(page, row)], 'so are the drawing and a row').toEqual([
			true,
			true,
		]);
		await resize(page, uprightTablet);
		const list = page.getByRole('region', { name: 'To tick off in this step' });
		await expect.poll(async () => (await row.boundingBox())!.height, { message: 'upright' }).toBeGreaterThanOrEqual(88);
		const [sheet, ticked] = [
			(await page.locator('.work figure svg rect').first().boundingBox())!,
			(await list.boundingBox())!,
		];
		expect(sheet.width).toBeGreaterThanOrEqual(380);
		expect(sheet.y + sheet.height).toBeLessThanOrEqual(ticked.y);
		expect(await page.locator('.digits').evaluate((figure) => getComputedStyle(figure).fontSize)).toBe('200px');
		await resize(page, landscapeTablet);
		expect(await isInView(page, ofKnife)).toBe(true);
		const open = page.locator('[aria-pressed=false]');
		const sheets = await open.count();
		for (let left = sheets; left > 0; left--) {
			await open.first().tap();
			await expect.poll(() => open.count()).toBe(left - 1);
		}
		const made = await page.getByText(/of \d+ cuts made$/).innerText();
		expect(made).not.toMatch(/^0 /);
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await expect.poll(() => page.getByText(/of \d+ cuts made$/).innerText(), { timeout: 20_000 }).toBe(made);
		await goByAddress(page, 'bench');
		await page.getByText(`; ${made}`).waitFor();
		await page.getByRole('link', { name: 'Carry on cutting sheets' }).tap();
		await page.getByRole('heading', { name: /^Sheets, step 1 of/ }).waitFor(); // which stays open, though all of it is made
		await expect.poll(() => page.locator('[aria-pressed=true]').count()).toBe(sheets);
		await page.locator('[aria-pressed=true]').first().tap();
		await expect.poll(() => page.locator('[aria-pressed=true]').count()).toBe(sheets - 1);
	}, goesOn));

test('without stock the place says what to do, and one tap leads to the stock', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await type(page, 0, 'title', 'Ebb');
		await goTo(page, 'Boards');
		await page.getByRole('link', { name: 'Add boards to stock' }).tap();
		await page.getByRole('heading', { name: 'Boards', exact: true }).waitFor();
		await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('boards');
		for (const [label, text] of [
			['Name, new board', 'Chalk'],
			['Width, new board', '1200'],
			['Height, new board', '900'],
			['Price of a pack, new board', '860'],
		] as const)
			await page.getByLabel(label, { exact: true }).fill(text);
		await page.getByLabel('Grain along, new board').selectOption('width');
		await page.getByRole('button', { name: 'Add board' }).tap();
		await page.getByRole('button', { name: /^Chalk 1200 × 900 mm/ }).tap();
		expect(await page.getByLabel('Grain along, Chalk').inputValue()).toBe('width');
		await page.getByRole('link', { name: 'Back to Boards' }).tap();
		await page.getByRole('heading', { level: 1, name: 'Boards' }).waitFor();
	}));
