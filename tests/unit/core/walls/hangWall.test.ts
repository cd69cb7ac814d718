import { expect, test } from 'vitest';
import { toMm } from '../../../../src/core/length/length.ts';
import { hang, placesOn, print } from './wallOf.ts';

const north = (more: object = {}) => ({ walls: [{ name: 'North', length: 5000, ...more }] });

test('gaps and ends are equal', () => {
	// (5000 − 1500) / 4 = 875
	expect(placesOn([print('500x400'), print('500x700'), print('500x400')], north())).toEqual([
		'1: 875, 1450',
		'2: 2250, 1450',
		'3: 3625, 1450',
	]);
});

test('a left edge goes to the ruler from its exact place, half up', () => {
	// (1000 − 300 − 101) / 3 = 199⅔: 199.67, 699.33
	expect(placesOn([print('300x400'), print('101x400')], { walls: [{ name: 'A', length: 1000 }] })).toEqual([
		'1: 200, 1450',
		'2: 699, 1450',
	]);
	// (1001 − 400) / 2 = 300.5
	expect(placesOn([print('400x400')], { walls: [{ name: 'A', length: 1001 }] })).toEqual(['1: 301, 1450']);
});

test('with a gap of their own they stand in the middle', () => {
	expect(placesOn([print('500x400'), print('600x400')], north({ gap: 100, centre: 1500 }))).toEqual([
		'1: 1900, 1500',
		'2: 2500, 1500',
	]);
});

test('hang order comes before the order of the show', () => {
	const prints = [print('500x400'), print('500x400', { 'hang order': '2' }), print('500x400', { 'hang order': '1,5' })];
	expect(placesOn(prints, north()).map((text) => text[0])).toEqual(['3', '2', '1']);
});

test('prints of one number hang under each other, in the middle of the widest', () => {
	// a stack of 400 + 60 + 300: from 1450 + 380 down
	const prints = [print('300x400', { 'hang order': '1' }), print('500x300', { 'hang order': '1' })];
	expect(placesOn(prints, north())).toEqual(['1: 2350, 1630', '2: 2250, 1220']);
	expect(placesOn(prints, { ...north(), stackGap: '100 mm' })).toEqual(['1: 2350, 1650', '2: 2250, 1200']);
});

test('a typed left places the column, a typed centre leaves the stack', () => {
	const column = { 'hang order': '1' };
	const prints = [
		print('300x400', { ...column, 'hang left': '1000' }),
		print('500x300', column),
		print('100x100', { ...column, 'hang centre': '2000' }),
	];
	expect(placesOn(prints, north())).toEqual(['1: 1000, 1630', '2: 900, 1220', '3: 1100, 2000']);
});

test('typed prints and obstacles part the wall; a typed one counts by its place', () => {
	const prints = [print('500x400'), print('400x400', { 'hang left': '3000' }), print('500x400'), print('500x400')];
	// 0–3000 and 3400–5000: two in the first, gaps of 666⅔, one in the second, gaps of 550
	expect(placesOn(prints, north())).toEqual(['1: 667, 1450', '3: 1833, 1450', '2: 3000, 1450', '4: 3950, 1450']);
	const door = { name: 'Door', left: 3000, width: 400, height: 2000 };
	expect(placesOn(prints.toSpliced(1, 1), north({ obstacles: [door] }))).toEqual([
		'1: 667, 1450',
		'2: 1833, 1450',
		'3: 3950, 1450',
	]);
});

test('an obstacle that what hangs passes by, or touches, does not count', () => {
	// 1250 to 1650
	const prints = [print('500x400'), print('500x900', { 'hang left': '0' })];
	const places = (bottom: number, height: number) =>
		placesOn(prints, north({ obstacles: [{ name: 'Vent', left: 2000, width: 2000, bottom, height }] }))[1];
	expect([places(1650, 200), places(0, 1250)]).toEqual(['1: 2500, 1450', '1: 2500, 1450']);
	// 500–2000 leaves 1000 for 500
	expect([places(1649, 200), places(0, 1251)]).toEqual(['1: 1000, 1450', '1: 1000, 1450']);
});

test('what does not fit stands edge to edge from the left, and says by how much', () => {
	const prints = [print('500x400'), print('500x400'), print('400x400')];
	expect(placesOn(prints, { walls: [{ name: 'A', length: 1200 }] })).toEqual([
		'1: 0, 1450',
		'2: 500, 1450',
		'3: 1000, 1450 past 200',
	]);
	expect(placesOn(prints, { walls: [{ name: 'A', length: 1440, gap: 30 }] })).toHaveLength(3);
	expect(placesOn(prints, { walls: [{ name: 'A', length: 1440, gap: 30 }] })[2]).toBe('3: 1000, 1450');
	expect(placesOn([print('500x400', { 'hang left': '900' })], { walls: [{ name: 'A', length: 1200 }] })).toEqual([
		'1: 900, 1450 past 200',
	]);
});

test('which wall: the one that is named, else the only one', () => {
	const two = {
		walls: [
			{ name: 'North', length: 3000 },
			{ name: 'South', length: '120 in' },
		],
	};
	const { hanging } = hang(
		[print('500x400', { wall: 'south' }), print('500x400'), { shape: '3:2', mount: 'none' }],
		two,
	);
	expect(hanging.walls.map(({ prints }) => prints.map(({ place }) => place))).toEqual([[], [0]]);
	expect(hanging.unhung).toEqual([
		{ place: 1, why: 'no wall' },
		{ place: 2, why: 'no size' },
	]);
});

test('a wall may be longer than 10 m, and so may a place on it', () => {
	const { walls } = hang([print('500x400', { 'hang left': '14 m' })], { walls: [{ name: 'Long', length: '18 m' }] });
	expect(toMm(walls[0]!.prints[0]!.left)).toBe(14_000);
});
