import { expect, test } from 'vitest';
import { hangingAtStep } from '../../../src/core/walls/wallWords.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { isInView } from '../harness/isInView.ts';
import { resize } from '../harness/resize.ts';
import { landscapeTablet, phone, uprightTablet } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

test('at the wall each frame that is drawn has its print’s own number, on every wall', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await goByAddress(page, 'hang');
		await page.locator('.digits').first().waitFor();
		const drawn = () => page.locator('.work svg .number').allTextContents();
		expect(await drawn()).toEqual(Array.from({ length: 10 }, (_, at) => `${at + 1}`));
		// Held upright the whole wall is drawn over the list.
		await resize(page, uprightTablet);
		const lowerOf = async (part: string) => (({ y, height }) => y + height)((await page.locator(part).boundingBox())!);
		const list = page.getByRole('region', { name: 'To tick off in this step' });
		await expect.poll(async () => (await lowerOf('.work svg')) - (await list.boundingBox())!.y).toBeLessThanOrEqual(0);
		for (const viewport of [phone, landscapeTablet]) {
			await resize(page, viewport);
			const cautions = page.getByText(hangingAtStep);
			await expect.poll(() => isInView(page, cautions), { message: `${viewport.width} px` }).toBe(true);
			expect(await isInView(page, page.locator('.work svg')), `the wall at ${viewport.width} px`).toBe(true);
			expect(await isInView(page, page.getByText('kg or more')), `its hook at ${viewport.width} px`).toBe(true);
		}
		// From the second print on the way from the last hook is said too.
		const step = (name: string) => page.getByRole('button', { name, exact: true });
		await step('Next').click();
		for (const viewport of [phone, uprightTablet, landscapeTablet]) {
			await resize(page, viewport);
			const seen = [page.locator('.work .last'), page.getByText(hangingAtStep), page.locator('.work svg')];
			for (const [place, each] of seen.entries())
				await expect.poll(() => isInView(page, each), { message: `${place} at ${viewport.width} px` }).toBe(true);
			if (viewport !== uprightTablet) continue;
			expect((await lowerOf('.work svg')) - (await list.boundingBox())!.y, 'over the list').toBeLessThanOrEqual(0);
		}
		await step('Back').click();
		// A row grows with its words.
		const isWhole = await page
			.locator('.ticks .tick')
			.first()
			.evaluate((row) => {
				const words = row.querySelector<HTMLElement>(':scope > span:last-child')!;
				words.style.fontSize = '60px';
				const fits = row.scrollHeight <= row.clientHeight;
				words.style.fontSize = '';
				return fits;
			});
		expect(isWhole).toBe(true);
		// What has been saved is no area of the foot: it stands at the end of the bar of what is done.
		const foot = page.getByRole('navigation', { name: 'Steps' });
		expect(await foot.getByText('Saved').count()).toBe(0);
		const [saved, title] = [
			await page.locator('.work').getByText('Saved', { exact: true }).boundingBox(),
			await page.getByRole('heading', { level: 1 }).boundingBox(),
		];
		expect(saved!.y + saved!.height).toBeLessThanOrEqual(title!.y);
		for (const name of ['Back', 'Next'])
			expect((await foot.getByRole('button', { name, exact: true }).boundingBox())!.width).toBeGreaterThanOrEqual(140);
		for (let at = 0; at < 10; at++) await page.getByRole('button', { name: 'Next', exact: true }).click();
		await page
			.getByRole('heading', {
				name: /^11 Rope, cut.*1 of 13 on Long wall, 0 of 25 hung, 3 can’t be cut yet, 2 not placed/,
			})
			.waitFor();
		expect(await drawn()).toEqual(Array.from({ length: 13 }, (_, at) => `${at + 11}`));
		expect(await page.getByText('can’t be cut yet').count()).toBe(3); // in the head, 14 and 21
	}));

test('what the cord of a frame was measured at is typed at the wall, and its hook moves', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await goByAddress(page, 'hang');
		const digits = () => page.locator('.digits').allInnerTexts();
		await expect.poll(digits).toEqual(['1652', '605']);
		const step = page.getByRole('region', { name: 'This step', exact: true });
		const told = (await step.innerText()).replaceAll('\u00A0', ' ');
		expect(told).toMatch(
			/Weight\s+about 4.6 kg\s+Must hold: hook\s+\d+ kg or more\s+each ring\s+31 kg\s+cord\s+31 kg\s[^]*if the cord is at 90[^]*where the cord sits in the hook/,
		);
		expect(told).not.toContain('rated for 4 times'); // where it comes from waits behind Why?
		// The two figures are drawn as well: up from the floor, and along it.
		const drawn = async () => (await page.locator('.work svg .figure').allTextContents()).toSorted();
		expect(await drawn()).toEqual(['605', 'about 1652']);
		// In the list too, where one would read down and drill: quiet, under a head that says what it is.
		const listed = page.locator('.ticks .go').first();
		const weight = () => listed.evaluate((each) => getComputedStyle(each).fontWeight);
		expect([await listed.innerText(), await weight()]).toEqual(['about 1652', '400']);
		await page.locator('.ticks').getByText('hook, mm').waitFor();
		// A cord is never as it was reckoned: until it is measured the height is only said for that case.
		const open = step.getByText('Hook above the floor, mm, if the cord is at 90');
		await open.waitFor();
		const pulledUp = page.getByRole('textbox', { name: 'Cord pulled up, below the frame’s top' });
		expect(await pulledUp.getAttribute('placeholder')).toBe('90 mm');
		await pulledUp.fill('110');
		await pulledUp.press('Enter');
		await expect.poll(digits).toEqual(['1633', '605']); // 1450 + 585 / 2 − 110, to the ruler
		await open.waitFor({ state: 'detached' });
		expect(await drawn()).toEqual(['1633', '605']);
		expect([await listed.innerText(), await weight()]).toEqual(['1633', '600']);
		await pulledUp.fill('2000');
		await pulledUp.press('Enter');
		await page.getByRole('alert').filter({ hasText: 'more than the frame is high' }).waitFor();
		await pulledUp.fill('');
		await pulledUp.press('Enter');
		await expect.poll(digits).toEqual(['1652', '605']);
	}));
