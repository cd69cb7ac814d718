import type { Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { Stage, type StageOptions } from '../harness/stage.ts';

/**
 * One browser for all the plays of a file, for a browser takes longer to start than most plays last. Each play begins
 * in a new window with an empty show; what goes wrong in the browser fails the play in which it does.
 */
export function oneStage(options: StageOptions = {}) {
	let stage: Stage | undefined;
	beforeAll(async () => {
		stage = await Stage.set({ ...options, hasProfile: false });
	});
	afterAll(() => stage?.strike());
	return async (play: (page: Page, stage: Stage) => Promise<void>): Promise<void> => {
		if (!stage) throw new Error('the browser was not opened');
		const page = await stage.context.newPage();
		for (const other of stage.context.pages()) if (other !== page) await other.close();
		const debug = await stage.context.newCDPSession(page);
		await debug.send('Storage.clearDataForOrigin', {
			origin: new URL(stage.address).origin,
			storageTypes: 'indexeddb',
		});
		await page.goto(stage.address);
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		await play(page, stage);
		const problems = stage.problems.splice(0);
		if (problems.length > 0) throw new Error(`went wrong in the browser:\n${problems.join('\n')}`);
	};
}
