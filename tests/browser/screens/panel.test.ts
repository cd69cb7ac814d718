import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr } from '../../soak.ts';
import { axeProblems } from '../harness/axe.ts';
import { resize } from '../harness/resize.ts';
import { allListed } from '../harness/screens.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { phone, uprightTablet } from '../harness/stage.ts';
import { oneStage } from './oneStage.ts';
import { cell, paste, press, startTyping, withPrints } from './prints.ts';
import { openSettings } from './settingsOf.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });
const onPhone = oneStage({ isPlanned: false, isInOnePage: true, viewport: phone });

const heightOf = async (page: Page, selector: string) => (await page.locator(selector).boundingBox())?.height ?? 0;
const widthOf = async (page: Page, selector: string) => (await page.locator(selector).boundingBox())?.width ?? 0;
const front = (page: Page) => page.getByRole('img', { name: /^Front/ });
const choice = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const back = (page: Page) => page.getByRole('img', { name: 'Back, mirrored' });

const boxOf = (page: Page, selector: string) =>
	page
		.locator(selector)
		.first()
		.evaluate((shape) => {
			const { left, right, top, bottom } = shape.getBoundingClientRect();
			return { left, right, top, bottom };
		});

/** Loads the example, or goes on with it in the page of the play before. */
async function seeExample(page: Page): Promise<void> {
	if ((await page.getByRole('toolbar', { name: 'Prints' }).count()) === 0)
		await page.getByRole('button', { name: 'Load the example' }).click();
	else await choice(page, 'Front').click();
	await front(page).waitFor();
}
const goesOn = { goesOn: true };

const [tablet, laptop] = [
	{ width: 1180, height: 820, panel: 440, grid: 0.59 },
	{ width: 1440, height: 900, panel: 440, grid: 0.64 },
];
test.each(allOr([tablet, laptop], [tablet]))(
	'at $width px the mount is drawn large, and its figures stand outside it, whole',
	({ panel, grid, ...viewport }) =>
		play(async (page) => {
			await resize(page, viewport);
			await seeExample(page);
			expect(Math.abs((await widthOf(page, '.panel')) - panel)).toBeLessThanOrEqual(1);
			expect((await widthOf(page, '.sheet')) / Math.min(viewport.width - 48, 1280)).toBeGreaterThan(grid);
			const cut = await page.getByRole('grid').evaluate((sheet) => ({
				rows: (sheet.clientHeight - 56) % 45,
				columns: [...sheet.querySelectorAll('.columns > [role=columnheader]')].flatMap((head) => {
					const { left, right } = head.getBoundingClientRect();
					const end = sheet.getBoundingClientRect().left + sheet.clientWidth;
					return left < end - 1 && right > end + 1 ? [Math.round(end - left)] : [];
				}),
			}));
			expect(cut.rows, 'the grid ends with a whole row').toBe(0);
			expect(new Set(cut.columns).size, 'and with a part of a column, so that it shows that there are more').toBe(1);
			expect(cut.columns[0]).toBeGreaterThanOrEqual(12);
			expect(await page.locator('.sheet > .frame.more').count(), 'its edge fades').toBe(1);
			await page.getByRole('grid').evaluate((sheet) => sheet.scrollTo(9999, 0));
			await page.locator('.sheet > .frame:not(.more)').waitFor();
			await page.getByRole('grid').evaluate((sheet) => sheet.scrollTo(0, 0));
			for (const drawn of ['Front', 'Framed']) {
				await choice(page, drawn).click();
				const whole = await boxOf(page, `.drawings svg[role=img]`);
				const body = await boxOf(page, drawn === 'Front' ? '.drawings path.card' : '.drawings path.frame');
				expect(body.right - body.left).toBeGreaterThanOrEqual(drawn === 'Front' ? 380 : 300);
				const figures = page.locator('.drawings svg[role=img]').first().locator('text:not(.bottom)');
				expect(await figures.count()).toBeGreaterThanOrEqual(5);
				for (const figure of await figures.all()) {
					const { x, y, width, height } = (await figure.boundingBox())!;
					expect(x >= body.right || y >= body.bottom || y + height <= body.top + 1, drawn).toBe(true);
					expect(x >= whole.left && x + width <= whole.right && y + height <= whole.bottom + 1, drawn).toBe(true);
				}
			}
		}, goesOn),
);

test('on a tablet held upright the mount is drawn large, and eight rows stay under it', () =>
	play(async (page) => {
		await resize(page, uprightTablet);
		await seeExample(page);
		const mount = await boxOf(page, '.drawings path.card');
		expect(mount.right - mount.left).toBeGreaterThanOrEqual(330);
		const foot = (await page.getByRole('toolbar', { name: 'Prints' }).boundingBox())!.y;
		const eighth = await boxOf(page, '[role=grid] [aria-rowindex="9"]');
		expect(eighth.bottom).toBeLessThanOrEqual(foot);
		// The figures of the print are whole, over the part of their box that fades; a title of two lines is too.
		const sentences = await boxOf(page, '#sentences');
		for (const what of ['Mount covers', 'Window at the face', 'Mount, print and undermount']) {
			const { bottom } = await boxOf(page, `#sentences dl > div:has(dt:text-is("${what}")) > dd`);
			expect(bottom, what).toBeLessThanOrEqual(sentences.bottom - 24);
		}
		const title = page.getByRole('grid').getByText('Slipway, low water', { exact: true });
		expect(await title.evaluate((text) => text.scrollHeight - text.clientHeight)).toBe(0);
		expect(await title.evaluate((text) => text.scrollWidth - text.clientWidth)).toBe(0);
	}, goesOn));

test('figures of the hinges are as large as those of the mount, however large the drawing is', () =>
	play(async (page) => {
		await seeExample(page);
		/** Of the letters, as they are seen: those of the drawing times its scale. */
		const lettersOf = (drawn: RegExp) =>
			page
				.getByRole('img', { name: drawn })
				.locator('text')
				.first()
				.evaluate((text: SVGTextElement) => parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM()!.a);
		const usual = await lettersOf(/^Front/);
		for (const viewport of [{ width: 1180, height: 820 }, { width: 1440, height: 900 }, uprightTablet, phone]) {
			await resize(page, viewport);
			const folded = page.getByRole('button', { name: 'Show drawing' });
			if (await folded.isVisible()) await folded.click();
			await choice(page, 'Hinges').click();
			const [title, fold] = [await boxOf(page, '.panel h2'), await boxOf(page, '.panel .fold')];
			const isBeside = fold.left >= title.right || fold.right <= title.left || fold.top >= title.bottom;
			expect(isBeside, `the title is read beside its button at ${viewport.width} px`).toBe(true);
			await expect
				.poll(async () => Math.abs((await lettersOf(/^Undermount/)) - usual), { message: `${viewport.width} px` })
				.toBeLessThan(0.5);
		}
	}, goesOn));

test('a print is shown in its frame, in profile, and on its undermount, by keyboard', () =>
	play(async (page) => {
		await seeExample(page);
		await cell(page, 0, 'title').click();
		await page.getByRole('button', { name: 'Framed', exact: true }).focus();
		await press(page, 'Enter');
		const framed = page.getByRole('img', { name: /^Framed/ });
		const heardOf = (name: string) => page.getByRole('img', { name }).locator('desc').textContent();
		expect(await framed.locator('desc').textContent()).toMatch(
			/^Framed in “Large oak”, 735 × 585 mm\. The mount has 3 mm of play\./,
		);
		expect(await heardOf('Frame in profile')).toMatch(/^glazing .*, mount .*, print .*, undermount .*, backing /);
		expect(await front(page).count()).toBe(0);
		await openSettings(page, 'Frames');
		await page.getByRole('button', { name: /^Large oak/ }).click();
		await page.getByLabel('Rebate depth, Large oak', { exact: true }).fill('4');
		await press(page, 'Tab');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await page.getByRole('button', { name: 'Framed', exact: true }).click();
		await page
			.locator('figcaption')
			.getByText(/more than the rebate’s 4\.$/)
			.waitFor();
		await page.getByRole('button', { name: 'Hinges', exact: true }).focus();
		await press(page, 'Space');
		expect(await heardOf('Undermount')).toMatch(/Hinges at \d.* and \d.* mm from the left\./);
		await page.getByRole('button', { name: 'Front', exact: true }).click();
		await front(page).waitFor();
	}, goesOn));

test('a float shows the edge that its paper has in the settings, and one step takes a change of it back', () =>
	play(async (page) => {
		await seeExample(page);
		await cell(page, 14, 'title').click();
		const words = () => front(page).locator('desc').textContent();
		const corners = async () =>
			((await front(page).locator('path.line').getAttribute('d')) ?? '').match(/[LHV]/g)!.length;
		await expect.poll(words).toMatch(/^Float on a board .*, paper 420 × 297 mm with a deckle edge\./);
		expect(await corners()).toBeGreaterThan(40);
		await openSettings(page, 'Papers');
		await page.getByRole('button', { name: /^Cotton A3/ }).click();
		await page.getByLabel('Edge, Cotton A3', { exact: true }).selectOption('straight');
		await page.getByRole('link', { name: 'Prints', exact: true }).click();
		await expect.poll(words).toMatch(/with a straight edge\./);
		expect(await corners()).toBe(3);
		await page.getByRole('button', { name: /^Undo/ }).click();
		await expect.poll(words).toMatch(/with a deckle edge\./);
	}, goesOn));

test('a print whose measures do not add up is drawn as an outline, and the caption says so', () =>
	play(async (page) => {
		await startTyping(page);
		await paste(page, 'Low water\t\t456\t306');
		await choice(page, 'Back').waitFor();
		await front(page)
			.getByText(/^\d+ × \d+ mm$/)
			.waitFor();
		expect(await page.locator('figcaption').count(), 'the drawing needs no words').toBe(0);
		const paths = await front(page).locator('path').count();
		await paste(page, 'Low water\t\t456\t306\t\t\t70\t71\t90\t\t600\t450');
		await page
			.locator('figcaption')
			.getByText(/the width and height do not add up/)
			.waitFor();
		expect(await choice(page, 'Back').count()).toBe(0);
		expect(await front(page).locator('path').count()).toBeLessThan(paths);
	}));

test('drawings have a least height on a low screen, and can be folded away', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '456', '306']]);
		await resize(page, { width: 1100, height: 440 });
		await front(page).waitFor();
		expect((await front(page).boundingBox())?.height).toBeGreaterThanOrEqual(120);
		await choice(page, 'Back').click();
		expect((await back(page).boundingBox())?.height).toBeGreaterThanOrEqual(120);
		await choice(page, 'Front').click();
		await page.getByRole('button', { name: 'Hide drawing' }).click();
		expect(await front(page).count()).toBe(0);
		await page.getByRole('button', { name: 'Show drawing' }).click();
		await front(page).waitFor();
	}));

test('on a phone the fields come soon: head of one line, drawing folded, foot of one line', () =>
	onPhone(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		const close = page.getByRole('button', { name: 'Close' });
		await close.waitFor();
		const first = page.locator('.form input').first();
		const foot = page.locator('.foot');
		const tops = async () => [(await first.boundingBox())!.y, (await foot.boundingBox())!.y];
		const under = await tops();
		await close.click();
		await close.waitFor({ state: 'detached' });
		expect(await tops(), 'the message lay over them').toEqual(under);
		expect(under[0]).toBeLessThanOrEqual(300);
		expect(await heightOf(page, 'header')).toBe(56);
		expect(await heightOf(page, '.foot')).toBeLessThanOrEqual(64);
		for (const name of ['Undo: load the example', 'More…', 'Add print'])
			expect((await page.getByRole('button', { name }).boundingBox())!.x).toBeLessThan(phone.width - 44);
		expect(await front(page).count()).toBe(0);
		const field = page.getByRole('textbox', { name: 'Title' });
		expect((await field.boundingBox())!.y).toBeLessThan(phone.height * 0.75);
		/** How much more there is across than is seen: what is there can be pushed sideways, with figures off its edge. */
		const pastEdge = (section: string) =>
			page.locator(section).evaluate((element) => element.scrollWidth - element.clientWidth);
		expect(await pastEdge('section.panel')).toBe(0);
		await page.getByRole('button', { name: /can’t be cut yet/ }).click();
		expect(await pastEdge('section.list')).toBe(0);
		await page.getByRole('button', { name: 'Close' }).click();
		expect(await page.evaluate(() => document.activeElement?.id)).toBe('checks');
	}));

test.each([{ width: 1180, height: 820 }, phone])(
	'at $width px a mend in the list of checks is one tap, the list stays, and its message takes it back',
	(viewport) =>
		play(async (page) => {
			await resize(page, viewport);
			await page.getByRole('button', { name: 'Load the example' }).click();
			await page.getByRole('button', { name: 'Close', exact: true }).click();
			await page.getByRole('button', { name: /can’t be cut yet/ }).click();
			const list = page.getByRole('region', { name: 'Checks' });
			const found = () => list.locator('li > button').allInnerTexts();
			await allListed(page);
			const before = await found();
			const mend = list.locator('.mends button').first();
			const label = await mend.innerText();
			expect(await mend.getAttribute('aria-label')).toMatch(/: 9 Salt pan III$/);
			await mend.focus();
			await press(page, 'Enter');
			await list.getByText(`Done: ${label}`).waitFor();
			await expect.poll(found).not.toEqual(before);
			expect(await page.evaluate(() => document.activeElement?.closest('.list') !== null), 'the focus stays').toBe(
				true,
			);
			await list.getByRole('button', { name: 'Undo', exact: true }).click();
			await expect.poll(found).toEqual(before);
			expect(await list.getByText(/^Done: /).count()).toBe(0);
			expect(await page.evaluate(() => document.activeElement?.closest('.list') !== null), 'the focus stays').toBe(
				true,
			);
		}),
);

test('each print counts once, by the worst of it, and each count lists exactly those it counts; all of them on demand', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('button', { name: 'Close', exact: true }).click();
		const list = page.getByRole('region', { name: 'Checks' });
		const named = async () => {
			await allListed(page);
			const names = await list.locator('h3, .names > button').allInnerTexts();
			return new Set(names.filter((text) => !/^\d+ prints$/.test(text)));
		};
		const counted: string[][] = [];
		for (const words of [/can’t be cut yet/, /to check/]) {
			const button = page.getByRole('button', { name: words });
			await button.click();
			const names = await named();
			expect(String(names.size)).toBe(/\d+/.exec(await button.innerText())![0]);
			counted.push([...names]);
			await list.getByRole('button', { name: 'Close' }).click();
			await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
		}
		const [stops, looks] = counted;
		expect(
			stops!.filter((name) => looks!.includes(name)),
			'in both',
		).toEqual([]);
		await page.getByRole('button', { name: /to check/ }).click();
		await list.getByRole('button', { name: 'All checks' }).click();
		const all = await named();
		expect([...stops!, ...looks!].filter((name) => !all.has(name))).toEqual([]);
		await list.getByRole('button', { name: 'Close' }).click();
		const gridTop = async () => (await page.getByRole('grid').boundingBox())!.y;
		const top = await gridTop();
		await page.getByRole('button', { name: 'Columns' }).click();
		expect(await gridTop(), 'columns open beside the rows').toBe(top);
		await page.getByRole('button', { name: 'Filter' }).click();
		expect(await gridTop(), 'so does the filter').toBe(top);
		await page.getByRole('combobox', { name: 'Checks' }).selectOption('look');
		await page.getByText(`${looks!.length} of 30 prints`).first().waitFor();
		await page.getByRole('button', { name: 'Close' }).click();
		expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Filter (1)');
	}));

test('what several prints have in common is said once, and a mend of all of them is one step', () =>
	play(async (page) => {
		const prints = ['Low water', 'Slack tide', 'Spring tide', 'Neap tide'];
		await withPrints(
			page,
			prints.map((title) => [title, '440', '340']),
		);
		await page.getByRole('button', { name: /4.*to check/ }).click();
		const list = page.getByRole('region', { name: 'Checks' });
		const shared = list.locator('li > ul > li').filter({ hasText: 'A thin border' });
		await allListed(page);
		expect(await shared.count()).toBe(1);
		await shared.getByText('Which prints?').click();
		for (const name of prints) await shared.getByRole('button', { name, exact: true }).waitFor();
		expect(await axeProblems(page)).toEqual([]);
		expect(await smallTargets(page)).toEqual([]);
		await shared.getByRole('button', { name: /^Set mount to fit.* in all 4$/ }).click();
		await list.getByText(/^Done: Set mount to fit/).waitFor();
		expect(await shared.count()).toBe(0);
		await list.getByRole('button', { name: 'Undo', exact: true }).click();
		await expect.poll(() => shared.count()).toBe(1);
		await shared.getByText('Which prints?').click();
		await shared.getByRole('button', { name: 'Spring tide', exact: true }).click();
		await page.getByRole('heading', { name: 'Spring tide' }).waitFor();
	}));

test('start typing on a phone gives a print with its first field active', () =>
	play(async (page) => {
		await resize(page, phone);
		await page.getByRole('button', { name: 'Start typing' }).click();
		await page.getByRole('textbox', { name: 'Title' }).waitFor();
		await page.keyboard.type('Low water');
		await press(page, 'Tab');
		expect(await page.getByRole('textbox', { name: 'Title' }).inputValue()).toBe('Low water');
	}));
