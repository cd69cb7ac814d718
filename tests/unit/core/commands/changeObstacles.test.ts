import { expect, test } from 'vitest';
import { putObstacle, removeObstacle, typeObstacle } from '../../../../src/core/commands/changeObstacles.ts';
import { mm, zero } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { apply, type Edit, invert } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';

/** A show with entries that cannot be read among its walls and obstacles: places as read are not places as typed. */
const door = { name: 'door', left: '0,5 m', width: 900, height: '2 m', note: 'sticks' };
const typed = {
	walls: [
		{ name: 'no length' },
		'no record',
		{
			name: 'North',
			length: 4000,
			obstacles: [{ name: 'no width', left: 3 }, door, { name: 'pipe', left: 3000, width: 50 }],
		},
		{ name: 'South', length: 3000 },
	],
};
const show = { ...newShow('s'), settings: typed };
const wallsAfter = (edit: Edit) => apply(show, edit).settings['walls'] as { obstacles?: unknown[] }[];
const read = (edit: Edit) => readSettings(apply(show, edit).settings).settings.walls;
const [north] = readSettings(typed).settings.walls;
const [first, second] = north!.obstacles;

test('an obstacle is moved: what stays the same keeps its text, and all else stands as typed', () => {
	const edit = putObstacle(show, 0, 0, { ...first!, left: mm(700), bottom: mm(10) }, 'Move door');
	const walls = wallsAfter(edit);
	expect(walls[2]!.obstacles).toEqual([
		{ name: 'no width', left: 3 },
		{ ...door, left: '700 mm', bottom: '10 mm' },
		{ name: 'pipe', left: 3000, width: 50 },
	]);
	expect([walls[0], walls[1], walls[3]]).toEqual([typed.walls[0], typed.walls[1], typed.walls[3]]);
	expect(apply(apply(show, edit), invert(edit)).settings).toEqual(typed);
});

test('one is added to a wall that has none, and what goes to the ceiling has no height', () => {
	const edit = putObstacle(
		show,
		1,
		undefined,
		{ name: 'duct', left: zero, bottom: zero, width: mm(200), height: undefined },
		'Add',
	);
	expect(wallsAfter(edit)[3]!.obstacles).toEqual([{ name: 'duct', left: '0 mm', bottom: '0 mm', width: '200 mm' }]);
	expect(read(edit)[1]!.obstacles).toHaveLength(1);
	const lowered = putObstacle(show, 0, 1, { ...second!, height: mm(500) }, 'Resize');
	expect(read(lowered)[0]!.obstacles[1]!.height).toBe(mm(500));
});

test('the last one gone leaves no empty list', () => {
	expect(read(removeObstacle(show, 0, 0, 'Delete door'))[0]!.obstacles).toEqual([second]);
	const added = apply(show, putObstacle(show, 1, undefined, first!, 'Add'));
	expect(apply(added, removeObstacle(added, 1, 0, 'Delete')).settings).toEqual(typed);
});

test('a cell is typed as in the settings; what could not be read is refused with the reason', () => {
	const type = (key: 'name' | 'width' | 'height', text: string) => typeObstacle(show, 0, 0, { key, text }, 'Type');
	const wide = type('width', '95 cm');
	if ('problem' in wide) throw new Error(wide.problem);
	expect(wallsAfter(wide)[2]!.obstacles![1]).toEqual({ ...door, width: '95 cm' });
	const up = type('height', '');
	if ('problem' in up) throw new Error(up.problem);
	expect(read(up)[0]!.obstacles[0]!.height).toBeUndefined();
	expect(type('width', '')).toEqual({ problem: 'the width is missing' });
	expect(type('width', '0')).toHaveProperty('problem');
	expect(type('height', 'tall')).toHaveProperty('problem');
});
