import { expect, test } from 'vitest';
import { goByAddress } from '../harness/goByAddress.ts';
import { resize } from '../harness/resize.ts';
import { landscapeTablet, phone } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage();

test('each step of finishing has its drawing and its figures: hinges on the undermount, the stack in the frame, the cord', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await goByAddress(page, 'finish');
		await page.getByRole('heading', { name: /^1 Ebb, before six/ }).waitFor();
		const step = page.getByRole('region', { name: 'This step', exact: true });
		const said = (await step.innerText()).replaceAll('\u00A0', ' ');
		for (const told of [
			/Undermount\s+Greyback, grey, 1 mm/,
			/Rings\s+eyes 195 mm below the frame’s top, 40 mm in from each outer edge/,
			/Cord\s+cut 1029 mm\. 688 mm from ring to ring, the rest for knots; rings 655 mm apart\. Pulled up, 90 mm below/,
			/Frame\s+Large oak, rebate 703 × 553 mm/,
			/Glazing\s+Clear glass, 700 × 550 mm/,
		])
			expect(said).toMatch(told);
		expect(said, 'drawn on the undermount').not.toContain('Paper lies');
		await resize(page, phone);
		const topOf = async (part: string) => (await step.locator(part).first().boundingBox())!.y;
		await expect
			.poll(async () => (await topOf('dl')) > (await topOf('figure')), { message: 'figures follow the drawing' })
			.toBe(true);
		await resize(page, landscapeTablet);
		const drawing = (name: string) => step.getByRole('img', { name }).waitFor();
		const tick = (name: string) => page.getByRole('button', { name, exact: true }).first().click();
		/** The main button ticks the next step, and says which it is. */
		const main = page.locator('.area.main');
		await tick('Printed');
		expect(await main.innerText()).toBe('Signed');
		await main.click();
		await drawing('Undermount');
		for (const measured of ['0', '53', '61.5', '152', 'paper 594 × 420 mm'])
			await step.locator('svg text').getByText(measured, { exact: true }).waitFor();
		await tick('Hinged');
		await step.getByRole('img', { name: 'Undermount' }).waitFor({ state: 'detached' });
		await tick('Mount and bevel clean');
		await drawing('Frame in profile');
		// Another one is chosen for as long as the step takes.
		await step.getByRole('button', { name: 'Hinges' }).click();
		await drawing('Undermount');
		await tick('Glazing clean, no dust under it');
		await drawing('Frame in profile');
		for (const name of ['Fitted, pinned, sealed', 'Labelled']) await tick(name);
		expect(await main.innerText()).toBe('Rings on, corded, bumpers on');
		await main.click();
		await page.getByRole('heading', { name: /1 of \d+ ready/ }).waitFor();
	}));
