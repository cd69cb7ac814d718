import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { isAnswering } from '../screens/prints.ts';
import { downTable, keyTable } from './keyTable.ts';
import { setUp, wrongLines } from './playKeys.ts';

// So wide that every column of the show is in view, and so high that each row is.
const play = oneStage({ isPlanned: false, viewport: { width: 1440, height: 480 } });

/** Many lines on one page: some seconds on a machine that has nothing else to do, in milliseconds on one that has. */
const timeoutMs = 180_000;

test(
	'every key of the grid does what the table says; where the habit of Enter is to go down, which is kept, so too',
	() =>
		play(async (page) => {
			await setUp(page);
			expect((await wrongLines(page, keyTable)).join('\n')).toBe('');
			await page.getByRole('button', { name: 'Keys', exact: true }).click();
			await page.getByRole('radio', { name: 'goes down' }).check({ force: true });
			await page.reload();
			await isAnswering(page);
			expect((await wrongLines(page, downTable)).join('\n')).toBe('');
		}),
	timeoutMs,
);
