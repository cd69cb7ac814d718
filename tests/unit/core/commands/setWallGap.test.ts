import { expect, test } from 'vitest';
import { setWallGap } from '../../../../src/core/commands/setWallGap.ts';
import { mm } from '../../../../src/core/length/length.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';

test('a wall gets a gap, the others stay', () => {
	const walls = [
		{ name: 'North', length: 3000, gap: '90' },
		{ name: 'South', length: 2000 },
	];
	const show = { ...newShow('s'), settings: { walls } };
	const after = apply(show, setWallGap(show, 'north', mm(45), 'Set the gap'));
	expect(after.settings['walls']).toEqual([{ ...walls[0], gap: '45 mm' }, walls[1]]);
});
