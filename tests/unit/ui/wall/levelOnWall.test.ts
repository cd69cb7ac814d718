import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { levelOnWall, markedOnWalls } from '../../../../src/ui/wall/levelOnWall.ts';
import { hang, print } from '../../core/walls/wallOf.ts';

const radiator = { name: 'radiator', left: 1050, bottom: 100, width: 900, height: 500 };
const { walls: warm, settings } = hang([print('400x300')], {
	walls: [{ name: 'North', length: 3000, obstacles: [radiator] }],
});
const { walls: cold } = hang([print('400x300')], { walls: [{ name: 'North', length: 3000 }] });
const wide = judgeRow({ id: 'a', order: 1, typed: { ...print('400x300'), 'window width': '900 mm' } }, settings);

test.each([
	['over a radiator', warm, { findings: [] }, 'warm'],
	['over nothing', cold, { findings: [] }, undefined],
	['whose window is wider than its mount, over a radiator', warm, wide, 'stop'],
] as const)('a print %s', (_, [wall], result, level) =>
	expect(levelOnWall(wall!, wall!.prints[0]!, [result], settings)).toBe(level),
);

test('each mark names its prints, the gravest first; a warm place is named whatever is wrong with its print', () => {
	const [both] = warm;
	expect(markedOnWalls([both!], [wide], settings)).toEqual([
		{ level: 'stop', places: [0] },
		{ level: 'warm', places: [0] },
	]);
	expect(markedOnWalls(cold, [{ findings: [] }], settings)).toEqual([]);
});
