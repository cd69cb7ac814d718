import { describe, expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import { type DrawnWall, lookNear, obstacleBoxIn } from '../../../../src/ui/wall/wallScene.ts';

const look = { scale: 0.03, x: 10, y: 20 };
const room = { width: 390, height: 430 };

describe('a small box is brought near', () => {
	const box = { x: 6000, y: 1000, width: 1000, height: 2000 };
	const near = lookNear(look, room, box, 96)!;

	test('until its narrower side is as large as asked', () => expect(near.scale * box.width).toBeCloseTo(96, 6));

	test('with its middle in the middle of the room', () => {
		expect(near.x + 6500 * near.scale).toBeCloseTo(195, 6);
		expect(near.y + 2000 * near.scale).toBeCloseTo(215, 6);
	});
});

test('a switch is not brought nearer than four times', () =>
	expect(lookNear(look, room, { x: 0, y: 0, width: 80, height: 80 }, 96)!.scale).toBeCloseTo(0.12, 9));

test('a box that is large enough stays where it is', () =>
	expect(lookNear(look, room, { x: 0, y: 0, width: 4000, height: 3200 }, 96)).toBeUndefined());

test.each([
	[2100, { x: 1500, y: 900, width: 1000, height: 2100 }],
	[undefined, { x: 1500, y: 0, width: 1000, height: 3000 }], // up to the top of its wall
])('an obstacle of height %s is drawn on its wall', (height, box) => {
	const drawn = { x: 900, floor: 3000, height: 3000 } as DrawnWall;
	const size = { width: mm(1000), height: height === undefined ? undefined : mm(height) };
	const obstacle = { name: 'door', left: mm(600), bottom: mm(0), ...size };
	expect(obstacleBoxIn(drawn, obstacle)).toEqual(box);
});
