import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage();

test('each step of finishing has its drawing and its figures: hinges on the undermount, the stack in the frame, the cord', () =>
	play(async (page, stage) => {
		await page.getByRole('button', { name: 'Load the example' }).click();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		await page.goto(`${stage.address}#finish`);
		await page.getByRole('heading', { name: /^1 Ebb, before six/ }).waitFor();
		const step = page.getByRole('region', { name: 'This step', exact: true });
		const said = await step.innerText();
		for (const told of [
			/Undermount\s+Greyback, grey, 1 mm/,
			/Paper lies\s+53 from the left, 61\.5 mm from the top/,
			/Rings\s+195 below the frame’s top, 40 mm in from each side/,
			/Cord\s+688 mm from ring to ring, more for the knots; rings 655 mm apart\. Pulled up, 90 mm below the frame’s top/,
		])
			expect(said).toMatch(told);
		const drawing = (name: string) => step.getByRole('img', { name }).waitFor();
		const tick = (name: string) => page.getByRole('button', { name, exact: true }).click();
		await tick('Printed');
		await page.getByRole('button', { name: 'Tick the other 7' }).waitFor();
		await tick('Signed');
		await drawing('Undermount');
		await tick('Hinged');
		await step.getByRole('img', { name: 'Undermount' }).waitFor({ state: 'detached' });
		await tick('Window clean');
		await drawing('Frame in profile');
		// Another one is chosen for as long as the step takes.
		await step.getByRole('button', { name: 'Hinges' }).click();
		await drawing('Undermount');
		await tick('Glazing clean');
		await drawing('Frame in profile');
		for (const name of ['Fitted, pinned, sealed', 'Labelled']) await tick(name);
		await page.getByRole('button', { name: 'Tick the last one' }).click();
		await page.getByRole('heading', { name: /1 of \d+ ready/ }).waitFor();
	}));
