import { expect, test } from 'vitest';
import { heatWords } from '../../../../src/core/walls/wallWords.ts';
import { hang, print } from './wallOf.ts';

const over = (name: string, left: number) => {
	const obstacle = { name, left, bottom: 100, width: 900, height: 500 };
	const { walls, settings } = hang([print('400x300')], {
		walls: [{ name: 'North', length: 3000, obstacles: [obstacle] }],
	});
	return heatWords(walls[0]!, walls[0]!.prints[0]!, settings);
};

test('a print above a radiator is told so; beside one, and above something cold, it is not', () => {
	expect(over('Radiator', 1050)).toBe('Hangs 700 mm above the Radiator. Heat cockles paper.');
	expect(over('radiator', 2000)).toBeUndefined();
	expect(over('bench', 1050)).toBeUndefined();
});
