import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import { smallTargets } from '../harness/smallTargets.ts';
import { phone } from '../harness/stage.ts';
import { focused } from './hands.ts';
import { oneStage } from './oneStage.ts';
import { press, withPrints } from './prints.ts';

const play = oneStage({ hasTouch: true, reducedMotion: 'reduce' });

const places = (page: Page) => page.getByRole('navigation', { name: 'Places' });
const opener = (page: Page) => page.getByRole('button', { name: /^Places, / });

/** The words of the head that are not whole within the page, or that lie on others. */
const notWhole = (page: Page) =>
	page.evaluate(() => {
		const seen = [...document.querySelectorAll<HTMLElement>('header :is(a, button, .saved)')].filter((each) =>
			each.checkVisibility(),
		);
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

test('at every width the places are whole, and the one that is open is seen', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.evaluate(() => (location.hash = 'settings')); // the last of them
		await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
		for (const [width, inOne] of [
			[320, false],
			[390, false],
			[740, false],
			[741, true],
			[820, true],
			[1000, true],
			[1180, true],
			[1440, true],
		] as const) {
			await page.setViewportSize({ width, height: 820 });
			const current = inOne ? places(page).getByRole('link', { name: 'Settings' }) : opener(page);
			await expect.poll(() => current.isVisible(), { message: `${width} px` }).toBe(true);
			expect(await opener(page).isVisible(), `${width} px`).toBe(!inOne);
			expect(await notWhole(page), `${width} px`).toEqual([]);
			expect(await smallTargets(page), `${width} px`).toEqual([]);
			expect(await page.evaluate(() => document.documentElement.scrollWidth), 'nothing to the side').toBe(width);
		}
	}));

test('on a phone the places open as a list, by finger and by keyboard', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '300', '200']]);
		await page.setViewportSize(phone);
		const link = (name: string) => places(page).getByRole('link', { name, exact: true });
		expect(await link('Bench').count(), 'folded, they are not heard').toBe(0);
		await opener(page).tap();
		expect(await opener(page).getAttribute('aria-expanded')).toBe('true');
		expect(await link('Prints').getAttribute('aria-current')).toBe('page');
		expect(await notWhole(page).then((all) => all.filter((words) => words === 'Settings'))).toEqual([]);
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
		expect(await link('Wall').count(), 'a tap elsewhere closes the list').toBe(0);
	}));
