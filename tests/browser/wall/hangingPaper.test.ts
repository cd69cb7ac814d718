import { expect, test } from 'vitest';
import { goByAddress } from '../harness/goByAddress.ts';
import { pagesOf } from '../harness/pdfPages.ts';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage();

test('on paper the heads of a wall’s columns stand right over its first line, under the drawing', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await goByAddress(page, 'paper');
		await page.getByRole('checkbox', { name: 'Walls and hanging list' }).check();
		await page.locator('article').first().waitFor();
		const pages = await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
		const texts = pages.flatMap((each) => each.texts);
		const at = texts.findIndex(({ text }) => text === 'from left end');
		const head = texts[at]!;
		const first = texts.slice(at).find(({ text }) => text.includes('Ebb, before six'))!;
		expect(head.bottom - first.top).toBeGreaterThan(0);
		expect(head.bottom - first.top).toBeLessThan(8);
		const all = texts.map(({ text }) => text);
		expect(all).toContain('hook above floor, mm');
		// A hook’s height is no more settled on paper than at the wall: the sum is filled in once its cord is measured.
		expect(all.join(' ')).toMatch(
			/Pull each cord up[^]*\(if cord as planned\)[^]*\(1652\)[^]*top 1742 − cord _+ \(90 planned\) = hook _+ Left edge 237/,
		);
		expect(all, 'what a marked corner says').toContain('Marked corner: can’t be cut yet, so gaps may change.');
		const gaps = page.locator('article svg text').filter({ hasText: 'gaps' }).first();
		const lowest = (part: typeof gaps) => part.evaluate((each) => each.getBoundingClientRect().bottom);
		expect(await lowest(gaps), 'whole, with its tails').toBeLessThanOrEqual(
			await lowest(page.locator('article svg').first()),
		);
		// Salt pan III, and two on the long wall.
		expect(await page.locator('article svg .stop').count()).toBe(3);
		// Paper does not scroll: what is measured stands there whole, also of a print that can't be cut yet.
		expect(all.join(' ')).toMatch(/Salt pan III can’t be cut yet[^]*Left edge 7532, middle 1450 mm/);
		const cut = await page
			.locator('article .line :is(.figure, .more, .more p)')
			.evaluateAll((all) => all.filter((each) => each.scrollWidth > each.clientWidth + 1).length);
		const over = await page
			.locator('article .line')
			.evaluateAll((all) => all.filter((each) => each.scrollHeight > each.clientHeight + 1).length);
		expect([cut, over]).toEqual([0, 0]);
	}));
