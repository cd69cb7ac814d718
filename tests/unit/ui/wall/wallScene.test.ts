import { describe, expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import {
	centredOn,
	type DrawnWall,
	fillHeight,
	fitWidth,
	lookNear,
	obstacleBoxIn,
	type WallScene,
} from '../../../../src/ui/wall/wallScene.ts';

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

describe('on a phone a wall', () => {
	const phone = { width: 390, height: 300 };
	const long: WallScene = { walls: [], width: 10_000, height: 4000 };
	const filling = fillHeight(long, phone);

	test('fills the height, from its left end', () => expect(filling).toEqual({ scale: 0.075, x: 16, y: 0 }));

	test('that is short fits as it is', () => {
		const short = { ...long, width: 3000 };
		expect(fillHeight(short, phone)).toEqual(fitWidth(short, phone));
	});

	test('has its middle where it was as the room changes', () => {
		const before = centredOn(filling, long, phone, { x: 5000, width: 200 });
		const after = fillHeight(long, { ...phone, height: 400 }, before);
		expect((195 - after.x) / after.scale).toBeCloseTo(5100, 6);
		expect(after.scale).toBe(0.1);
	});

	// 10 000 mm are 750 px: of these 374 are seen from either end, with the edge of 16.
	test.each([
		['in its midst in the middle', 5000, 195 - 382.5],
		['near its left end no farther than that', 100, 16],
		['near its right end no farther than that', 9800, 390 - 16 - 750],
	])('has a print %s', (_, at, x) =>
		expect(centredOn(filling, long, phone, { x: at, width: 200 })).toEqual({ ...filling, x }),
	);
});
