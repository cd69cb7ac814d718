import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { testInSoak } from '../../soak.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { resize } from '../harness/resize.ts';
import { oneStage } from '../screens/oneStage.ts';
import { pagesOf } from '../harness/pdfPages.ts';
import { cell, orderFound, paste, seen, startTyping, withPrints } from '../screens/prints.ts';
import { inchRow } from './inchReckoning.ts';

const inWindow = oneStage({ isInOnePage: true, reducedMotion: 'reduce' });

const plain = /^(\d+ )?\d+\/\d+$|^\d+$/;
const sign = /[⅛¼⅜½⅝¾⅞]/;

const go = (page: Page, place: string, ready: string) =>
	goByAddress(page, place).then(() => page.locator(ready).first().waitFor());

// In parts: the test below, and `unit/core/length` for how a measure is written.
testInSoak('in inches a measure is written alike in the lists and at the steps of bench and knife: 6 1/2, 42 1/8', () =>
	inWindow(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await go(page, 'settings/show', 'fieldset');
		await page.getByRole('radio', { name: 'inches' }).click();
		await page.getByRole('button', { name: 'Keep the sizes' }).click();
		await go(page, 'bench', '.steps .measure');
		await orderFound(page);
		const list = await page.locator('.steps .measure').allTextContents();
		await page.getByText('Sheet steps', { exact: true }).click();
		await page.locator('details .measure').first().waitFor();
		const knifeList = await page.locator('details .measure').allTextContents();
		expect(list.length * knifeList.length).toBeGreaterThan(0);
		for (const measure of [...list, ...knifeList]) expect(measure.replace('in', '')).toMatch(plain);
		expect([...list, ...knifeList].join(' '), 'an eighth, a quarter or a half among them').toMatch(/\/[248]in/);
		await go(page, 'cut', '.bench');
		await page.getByRole('button', { name: 'Next', exact: true }).click();
		expect(await page.locator('.digits').first().textContent()).toBe(list[0]?.replace('in', ''));
		expect(await page.locator('.bench svg text').allTextContents(), 'the drawing too').not.toContainEqual(
			expect.stringMatching(sign),
		);
		await go(page, 'knife', '.bench');
		await page.getByRole('button', { name: 'Next', exact: true }).click();
		expect(await page.locator('.digits').first().textContent()).toMatch(plain);
		expect(await page.locator('.bench svg text, .ticks').allTextContents()).not.toContainEqual(
			expect.stringMatching(sign),
		);
	}),
);

/** Pictures of an inch show, in inches. */
const inchPrints = [
	['Low water', '16 1/2', '11'],
	['Kiln door', '8 5/8', '12 3/16'],
	['Salt road', '14 1/32', '10 7/8'],
	['Rope', '9', '6 3/4'],
] as const;

test('an inch show is what exact fractions give, on the screen, at the bench and on paper', () =>
	inWindow(async (page) => {
		await page.getByRole('radio', { name: 'inches' }).click();
		await withPrints(page, inchPrints);
		const borders = new Set<string>();
		for (const [row, [, width, height]] of inchPrints.entries()) {
			const expected = inchRow(width, height);
			for (const [key, text] of Object.entries(expected)) expect(await seen(page, row, key)).toBe(`${text} worked-out`);
			for (const border of [expected.side, expected.top, expected.bottom]) borders.add(`${border}in`);
		}
		await go(page, 'bench', '.steps .measure');
		await orderFound(page);
		expect(new Set(await page.locator('.steps .measure').allTextContents())).toEqual(borders);
		await page.getByRole('link', { name: 'Print on paper' }).click();
		await page.getByRole('checkbox', { name: /Corner templates/ }).check();
		const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
		const texts = pages.map((each) => each.texts.map(({ text }) => text).join(' ')).join(' ');
		const written = texts.replace(/[\u2044\u2215]/g, '/').replace(/\s+/g, '');
		for (const border of borders) expect(written).toContain(border.replace(' ', ''));
		expect(texts).toContain('This ruler is 4 in');
	}));

test('a long fraction has room on a phone: 11 57/64 in, at 390 pixels and at 320', () =>
	inWindow(async (page) => {
		await startTyping(page);
		const typed = { 'mount width': '36 in', 'mount height': '30 in', side: '11 57/64 in', top: '5 in', bottom: '6 in' };
		for (const [column, text] of Object.entries(typed)) {
			await cell(page, 0, column).click();
			await paste(page, text);
		}
		await go(page, 'settings/show', 'fieldset');
		await page.getByRole('radio', { name: 'inches' }).check();
		await go(page, 'bench', '.steps .measure');
		await go(page, 'cut', '.bench');
		await page.getByRole('button', { name: 'Next', exact: true }).click();
		await expect.poll(() => page.locator('.digits').allTextContents()).toContain('11 57/64');
		for (const width of [390, 320]) {
			await resize(page, { width, height: 844 });
			const [room, ends, size] = await page.evaluate(() => {
				const values = [...document.querySelectorAll('.work .digits')].map((value) => {
					const range = document.createRange();
					range.selectNodeContents(value);
					return range.getBoundingClientRect().right;
				});
				const long = document.querySelector('.digits')!;
				return [innerWidth, Math.max(...values), Number.parseFloat(getComputedStyle(long).fontSize)] as const;
			});
			expect(ends, `the last of it at ${width}`).toBeLessThanOrEqual(room);
			expect(size, `still to be read from afar at ${width}`).toBeGreaterThanOrEqual(40);
			expect(await page.evaluate(() => document.querySelector('.bench')!.scrollWidth)).toBeLessThanOrEqual(width);
		}
	}));
