import { expect, test } from 'vitest';
import { oneStage } from '../screens/oneStage.ts';
import { keyTable } from './keyTable.ts';
import { setUp, wrongLines } from './playKeys.ts';

// So wide that every column is in view.
const play = oneStage({ viewport: { width: 3400, height: 820 } });

test('every key of the grid does what the table says', () =>
	play(async (page) => {
		await setUp(page);
		expect((await wrongLines(page, keyTable)).join('\n')).toBe('');
	}));
