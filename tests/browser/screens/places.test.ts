import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import { goBehindName, showName } from '../harness/behindName.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { resize } from '../harness/resize.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { onStage, phone } from '../harness/stage.ts';
import { focused } from './hands.ts';
import { oneStage } from './oneStage.ts';
import { press, withPrints } from './prints.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true, hasTouch: true, reducedMotion: 'reduce' });

const places = (page: Page) => page.getByRole('navigation', { name: 'Places' });
const opener = (page: Page) => page.getByRole('button', { name: /^Places, / });

/** The words of the head that are not whole within the page, or that lie on others. */
const notWhole = (page: Page) =>
	page.evaluate(() => {
		const seen = [
			...document.querySelectorAll<HTMLElement>('header :is(a, button:not(.opener), .opener > .name, .saved)'),
		].filter((each) => each.checkVisibility());
		const boxes = seen.map((each) => ({ words: each.textContent.trim(), box: each.getBoundingClientRect() }));
		const outside = boxes.filter(({ box }) => box.left < 0 || box.right > innerWidth || box.top < 0);
		const onOthers = boxes.filter(({ box }, place) =>
			boxes
				.slice(0, place)
				.some(
					({ box: other }) =>
						Math.min(box.right, other.right) - Math.max(box.left, other.left) > 1 &&
						Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top) > 1,
				),
		);
		return [...outside, ...onOthers].map(({ words }) => words);
	});

/** How wide the words of the show's name are, in pixels. */
const nameWidth = (page: Page) => page.locator('header .title .name').evaluate((name) => name.clientWidth);

/** What the head is like: its height, how many of its parts begin lower than the name, and whether the name has room. */
const headOf = (page: Page) =>
	page.evaluate(() => {
		const head = document.querySelector<HTMLElement>('#app > header')!;
		// On a phone what is said of saving stands under the name.
		const saved = innerWidth > 640 ? ', :scope .saved' : '';
		const parts = head.querySelectorAll(`:scope .title, :scope > :not(.show)${saved}`);
		const middles = [...parts].map((each) => {
			const { top, bottom } = each.getBoundingClientRect();
			return (top + bottom) / 2;
		});
		const name = head.querySelector<HTMLElement>('.name')!;
		return {
			height: head.offsetHeight,
			lower: middles.filter((middle) => middle > middles[0]! + 1).length,
			hasRoom: name.clientWidth >= Math.min(160, name.scrollWidth),
		};
	});

/** A head with nothing on a line more than it should be: all in one line, or only the places under the name. */
const wholeHead = (isOneLine: boolean) => ({
	height: isOneLine ? 56 : 94,
	lower: isOneLine ? 0 : 1,
	hasRoom: true,
});

test('sales, settings, shows and help stand behind the show’s name, by keyboard and by finger, and say where one is', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.keyboard.press('Escape');
		expect(await page.getByRole('link', { name: 'Settings' }).count(), 'folded, they are not heard').toBe(0);
		expect(await showName(page).getAttribute('aria-label')).toBe('New show, sales, settings, shows, help');
		await showName(page).focus();
		await press(page, 'Enter', 'Tab', 'Tab');
		expect(await focused(page)).toBe('Settings');
		expect(await axeProblems(page)).toEqual([]);
		await press(page, 'Escape');
		expect([await focused(page), await showName(page).getAttribute('aria-expanded')]).toEqual([
			'New show, sales, settings, shows, help',
			'false',
		]);
		await press(page, 'Enter', 'Tab', 'Tab', 'Enter');
		await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
		await showName(page).tap();
		const current = page.getByRole('link', { name: 'Settings', exact: true });
		expect(await current.getAttribute('aria-current')).toBe('page');
		expect(await smallTargets(page)).toEqual([]);
		await page.getByRole('link', { name: 'Shows', exact: true }).tap();
		await page.getByRole('heading', { name: 'Shows', level: 1 }).waitFor();
		expect(await showName(page).getAttribute('aria-expanded')).toBe('false');
		await goBehindName(page, 'Help', (what) => what.tap());
		await page.getByRole('heading', { name: 'Help', level: 1 }).waitFor();
		await resize(page, phone);
		expect(await opener(page).innerText(), 'the list of places says where one is').toBe('Help');
		await showName(page).tap();
		await page
			.getByRole('listitem')
			.getByText(/^Saved · .*Never backed up$/)
			.waitFor();
		expect(await axeProblems(page)).toEqual([]);
	}));

test('at every width the places are whole, and the one that is open is seen', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.getByRole('button', { name: 'Not ready offline' }).waitFor(); // it needs the most room
		await goByAddress(page, 'paper');
		await page.getByRole('heading', { name: 'On paper', level: 1 }).waitFor();
		for (const [width, inOne] of [
			[320, false],
			[390, false],
			[740, false],
			[741, true],
			[820, true],
			[1000, true],
			[1129, true],
			[1130, true],
			[1180, true],
			[1440, true],
		] as const) {
			await resize(page, { width, height: 820 });
			const current = inOne ? places(page).getByRole('link', { name: 'On paper' }) : opener(page);
			await expect.poll(() => current.isVisible(), { message: `${width} px` }).toBe(true);
			expect(await opener(page).isVisible(), `${width} px`).toBe(!inOne);
			expect(await notWhole(page), `${width} px`).toEqual([]);
			expect(await smallTargets(page), `${width} px`).toEqual([]);
			if (inOne) expect(await headOf(page), `${width} px`).toEqual(wholeHead(width >= 1130));
			expect(await page.evaluate(() => document.documentElement.scrollWidth), 'nothing to the side').toBe(width);
		}
	}));

test('every screen has one left edge and one width, at most 1280 px', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		/** Where what stands at the edges of the page begins and ends. */
		const edges = (left: string, right: string) =>
			page.evaluate(
				([first, last]) => [
					Math.round(document.querySelector(first)!.getBoundingClientRect().left),
					Math.round(document.querySelector(last)!.getBoundingClientRect().right),
				],
				[left, right] as const,
			);
		for (const [place, left, right] of [
			['prints', '.prints > .sheet', '.prints > .foot > .main'],
			['wall', 'main h1', 'main .head > :last-child'],
			['boards', 'main h1', 'main .head'],
			['cut', 'main h1', 'nav .main'],
			['shows', 'main h1', 'main .main'],
		] as const) {
			await page.evaluate((to) => (location.hash = to), place);
			await page.locator(right).first().waitFor();
			for (const [width, margin] of [
				[1180, 24],
				[1440, 80],
				[1920, 320],
			] as const) {
				await resize(page, { width, height: 900 });
				const end = place === 'cut' && margin === 24 ? 0 : margin; // there it fills the corner
				await expect
					.poll(() => edges(left, right), { message: `${place}, ${width} px` })
					.toEqual([margin, width - end]);
			}
		}
	}));

test('on a phone every title is at one height, one of two lines too, and the way on beside it ends at the margin', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await resize(page, phone);
		for (const [place, title, ways] of [
			['boards', 'Boards', 0],
			['bench', 'Bench', 1],
			['frames', 'Frames for all prints', 1],
			['shows', 'Shows', 0],
			['settings', 'Settings', 1],
			['settings/boards', 'Boards', 1],
			['settings/lists', 'Catalogue and packing', 1],
		] as const) {
			await page.evaluate((to) => (location.hash = to), place);
			const isSection = place.startsWith('settings/'); // its own name is the title there
			const heading = page.locator(isSection ? 'main h2' : 'main :is(.head, .top) > h1');
			await expect.poll(() => heading.innerText()).toBe(title);
			const seen = await heading.evaluate((head) => {
				const words = document.createRange();
				words.selectNodeContents(head);
				const { top, height } = words.getClientRects()[0]!;
				const links = [...document.querySelectorAll('main .head a.bare')]
					.filter((link) => link.checkVisibility())
					.map((link) => {
						words.selectNodeContents(link);
						return { right: words.getBoundingClientRect().right, top: link.getBoundingClientRect().top };
					});
				return { middle: top + height / 2, links };
			});
			expect(Math.abs(seen.middle - 102), `${title} at ${seen.middle}`).toBeLessThanOrEqual(1);
			expect(seen.links.length, title).toBe(ways);
			for (const { right, top } of seen.links) {
				expect(Math.abs(right - (phone.width - 16)), `${title} ends at ${right}`).toBeLessThanOrEqual(1);
				expect(Math.abs(top - 80), 'in the first line of the title').toBeLessThanOrEqual(1);
			}
		}
		await expect.poll(() => page.getByRole('heading', { name: 'Settings', level: 1 }).count()).toBe(1); // heard
	}));

test('on a phone the places open as a list, by finger and by keyboard', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await resize(page, phone);
		const link = (name: string) => places(page).getByRole('link', { name, exact: true });
		await expect.poll(() => link('Bench').count(), { message: 'folded, they are not heard' }).toBe(0);
		await opener(page).tap();
		await expect.poll(() => opener(page).getAttribute('aria-expanded')).toBe('true');
		expect(await link('Prints').getAttribute('aria-current')).toBe('page');
		expect(await notWhole(page).then((all) => all.filter((words) => words === 'On paper'))).toEqual([]);
		expect(await axeProblems(page)).toEqual([]);
		await link('Bench').tap();
		await page.getByRole('heading', { name: 'Bench', level: 1 }).waitFor();
		expect(await opener(page).innerText()).toBe('Bench');
		expect(await link('Wall').count()).toBe(0);

		await opener(page).focus();
		await press(page, 'Enter', 'Tab', 'Tab');
		expect(await focused(page)).toBe('Whole show');
		await press(page, 'Escape');
		expect([await focused(page), await link('Wall').count()]).toEqual(['Places, Bench', 0]);
		await press(page, 'Enter', 'Tab', 'Tab', 'Enter');
		await page.getByRole('heading', { name: 'Whole show', level: 1 }).waitFor();
		await expect.poll(() => focused(page)).toBe('Places, Whole show');

		await opener(page).tap();
		await page.getByRole('heading', { name: 'Whole show', level: 1 }).tap({ force: true, position: { x: 300, y: 10 } });
		await expect.poll(() => link('Wall').count(), { message: 'a tap elsewhere closes the list' }).toBe(0);

		await resize(page, { width: phone.width, height: 400 });
		await goByAddress(page, 'help');
		await page.getByRole('img', { name: /^Signing space/ }).waitFor();
		const place = page.locator('.place');
		const scrolled = () => place.evaluate((each) => each.scrollTop);
		await place.evaluate((each) => each.scrollTo(0, 100));
		expect(await scrolled()).toBe(100);
		await goBehindName(page, 'Settings', (what) => what.tap());
		await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
		expect(await scrolled(), 'another place begins at its top').toBe(0);
		await place.evaluate((each) => each.scrollTo(0, 100));
		expect(await scrolled(), 'which is not all of it').toBe(100);
	}));

test('the head is as high as ever, whatever it says about saving, and one line on a landscape tablet', () =>
	onStage({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' }, async (stage) => {
		const page = await stage.openShow();
		await page.getByText('Ready offline').waitFor({ state: 'attached' });
		await page.evaluate(() => {
			const head = document.querySelector<HTMLElement>('#app > header')!;
			const saved = head.querySelector('.saved')!;
			const heights = [head.offsetHeight];
			const note = () => heights.push(head.offsetHeight);
			new MutationObserver(note).observe(saved, { childList: true, characterData: true, subtree: true });
			Object.assign(window, { heights });
		});
		await page.getByRole('button', { name: 'Start typing' }).click();
		await page.getByRole('textbox', { name: 'Title' }).fill('Low water');
		await press(page, 'Tab');
		await page.getByText('Never backed up').waitFor({ state: 'attached' });
		await page.getByText('Saved', { exact: true }).waitFor();
		const heights = await page.evaluate(() => (window as unknown as { heights: number[] }).heights);
		expect(heights.length).toBeGreaterThan(2);
		expect([...new Set(heights)]).toEqual([56]);

		await page.getByRole('button', { name: 'Files' }).tap();
		await page.getByRole('button', { name: 'Load the example' }).tap();
		await showName(page).getByText('Salt and slate, Kiln Lane Rooms').waitFor();
		for (const width of [320, 360, 390, 640]) {
			await resize(page, { width, height: 820 });
			await expect.poll(() => headOf(page), { message: `${width} px` }).toMatchObject({ height: 56, lower: 0 });
			if (width >= 360) expect(await nameWidth(page), `${width} px`).toBeGreaterThanOrEqual(132);
			expect(await notWhole(page), `${width} px`).toEqual([]);
			expect(await smallTargets(page), `${width} px`).toEqual([]);
		}
		for (const [width, isOneLine] of [
			[741, false],
			[820, false],
			[999, false],
			[1000, true],
			[1180, true],
			[1440, true],
		] as const) {
			await resize(page, { width, height: 820 });
			await expect.poll(() => headOf(page), { message: `${width} px` }).toEqual(wholeHead(isOneLine));
		}
	}));
