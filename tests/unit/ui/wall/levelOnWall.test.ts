import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { levelOnWall } from '../../../../src/ui/wall/levelOnWall.ts';
import { hang, print } from '../../core/walls/wallOf.ts';

const radiator = { name: 'radiator', left: 1050, bottom: 100, width: 900, height: 500 };
const { walls: warm, settings } = hang([print('400x300')], {
	walls: [{ name: 'North', length: 3000, obstacles: [radiator] }],
});
const { walls: cold } = hang([print('400x300')], { walls: [{ name: 'North', length: 3000 }] });
const wide = judgeRow({ id: 'a', order: 1, typed: { ...print('400x300'), 'window width': '900 mm' } }, settings);

test.each([
	['over a radiator', warm, { findings: [] }, 'look'],
	['over nothing', cold, { findings: [] }, undefined],
	['whose window is wider than its mount, over a radiator', warm, wide, 'stop'],
] as const)('a print %s', (_, [wall], result, level) =>
	expect(levelOnWall(wall!, wall!.prints[0]!, [result], settings)).toBe(level),
);
