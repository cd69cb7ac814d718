import { expect, test } from 'vitest';
import { typeCells } from '../../../../src/core/commands/typeCells.ts';
import { mm, toMm } from '../../../../src/core/length/length.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import {
	type Arranged,
	dropOf,
	evenOut,
	giveToWall,
	mirrorWall,
	orderByHeight,
	orderOnWall,
	putInOrder,
	swapPrints,
	takeDown,
} from '../../../../src/core/walls/arrange.ts';
import { hangWalls } from '../../../../src/core/walls/hangWalls.ts';
import { neighboursOf, placeWords, wallLine } from '../../../../src/core/walls/wallWords.ts';
import { hang, print, rowsOf } from './wallOf.ts';

const two = {
	walls: [
		{ name: 'North', length: 5000 },
		{ name: 'South', length: 3000 },
	],
};

/** A show, and where its prints hang after cells were typed: `wall: numbers of the prints from the left`. */
function on(prints: readonly Typed[], typed: TypedSettings = two) {
	const { settings, results } = hang(prints, typed);
	const rows = rowsOf(prints);
	const show: Arranged = { rows, results, settings };
	function after(changes: Parameters<typeof typeCells>[1]) {
		const whole = { ...newShow('s'), settings: typed, rows };
		const changed = apply(whole, typeCells(whole, changes, settings, 'Arrange')).rows;
		const hanging = hangWalls(
			changed.map((row) => workOut(row, settings)),
			settings,
		);
		return {
			rows: changed,
			walls: hanging.walls.map(({ prints: hung }) => hung.map(({ place, left }) => `${place + 1} at ${toMm(left)}`)),
			order: hanging.walls.map(({ prints: hung }) => hung.map(({ place }) => place + 1).join(' ')),
			unhung: hanging.unhung.length,
		};
	}
	return { show, after };
}
const onNorth = (sizes: readonly string[], more: readonly Typed[] = []) =>
	sizes.map((size, at) => print(size, { wall: 'North', ...more[at] }));

test('prints are given to a wall, behind what hangs there, and taken off again', () => {
	const { show, after } = on([
		...onNorth(['500x400']),
		print('500x400', { 'hang left': '3', 'hang order': '1' }),
		print('400x400'),
	]);
	expect(after(giveToWall(show, [1, 2], 0)).order).toEqual(['1 2 3', '']);
	expect(after(giveToWall(show, [0], 0)).order).toEqual(['1', '']);
	expect(giveToWall(show, [0], 0)).toEqual([]);
	expect(after(takeDown(show, [0])).unhung).toBe(3);
});

test('a print comes before others, and only then are they numbered', () => {
	const { show, after } = on([...onNorth(['500x400', '500x400', '500x400']), print('500x400')]);
	expect(after(putInOrder(show, 2, 0, 0)).order).toEqual(['3 1 2', '']);
	expect(after(putInOrder(show, 3, 0, 1)).order).toEqual(['1 4 2 3', '']);
	expect(putInOrder(show, 3, 0, 3)).toEqual([{ id: 'r3', cells: { wall: 'North' } }]);
	expect(after(putInOrder(show, 0, 1, 0)).order).toEqual(['2 3', '1']);
});

test('a typed place is cleared by another order, and its column goes with it', () => {
	const { show, after } = on(
		onNorth(['500x400', '300x300', '200x200'], [{}, { 'hang order': '1', 'hang left': '20' }, { 'hang order': '1' }]),
	);
	const moved = after(putInOrder(show, 1, 0, 1));
	expect(moved.rows.map(({ typed }) => [typed['hang order'], typed['hang left']])).toEqual([
		['1', undefined],
		['2', undefined],
		['2', undefined],
	]);
});

test('two change places, on one wall and between two, typed ones too', () => {
	const { show, after } = on([
		...onNorth(['500x400', '400x400', '300x400'], [{ 'hang left': '100' }]),
		print('200x200', { wall: 'South' }),
	]);
	expect(after(swapPrints(show, 1, 2)).order[0]).toBe('1 3 2');
	expect(after(swapPrints(show, 0, 1)).walls[0]![0]).toBe('2 at 100');
	expect(after(swapPrints(show, 1, 3)).order).toEqual(['1 4 3', '2']);
	expect(swapPrints(show, 1, 1)).toEqual([]);
});

test('mirrored, the order and every typed place are seen from the other end', () => {
	const { show, after } = on(onNorth(['500x400', '400x400', '300x400'], [{}, { 'hang left': '3000' }]));
	const before = hangWalls(show.results, show.settings).walls[0]!.prints;
	const mirrored = after(mirrorWall(show, 0));
	expect(mirrored.walls[0]).toContain('2 at 1600');
	const lefts = new Map(before.map(({ place, left, size }) => [place + 1, 5000 - toMm(left) - toMm(size.width)]));
	for (const text of mirrored.walls[0]!) {
		const [number, left] = text.split(' at ').map(Number) as [number, number];
		expect(Math.abs(left - lefts.get(number)!)).toBeLessThanOrEqual(1);
	}
});

test.each([
	['tallest first', '2 4 3 1', '2 5 3 1 4'],
	['shortest first', '1 3 4 2', '4 1 3 5 2'],
	['tallest in the middle', '1 4 2 3', '1 5 2 3 4'],
] as const)('by height, %s', (order, ofFour, ofFive) => {
	const four = on(onNorth(['500x400', '400x700', '300x500', '200x600']));
	expect(four.after(orderByHeight(four.show, 0, order)).order[0]).toBe(ofFour);
	const five = on(onNorth(['500x400', '400x700', '300x500', '300x300', '200x600']));
	expect(five.after(orderByHeight(five.show, 0, order)).order[0]).toBe(ofFive);
});

test('alike in height, prints keep their order; a column counts by its tallest; a typed place is kept', () => {
	const { show, after } = on(
		onNorth(
			['500x400', '500x400', '300x300', '300x600', '200x200'],
			[
				{ 'hang order': '1' },
				{ 'hang order': '2' },
				{ 'hang order': '3' },
				{ 'hang order': '3' },
				{ 'hang left': '10' },
			],
		),
	);
	expect(after(orderByHeight(show, 0, 'tallest first')).order[0]).toBe('5 3 4 1 2');
	expect(after(orderByHeight(show, 0, 'shortest first')).order[0]).toBe('5 1 2 3 4');
});

test('evened out, all prints share the walls in order; those with a typed place stay', () => {
	const prints = [
		...onNorth(['500x400', '500x400', '500x400', '500x400', '500x400', '500x400']),
		print('500x400', { wall: 'South', 'hang left': '2500' }),
		print('500x400'),
	];
	const { show, after } = on(prints);
	const evened = after(evenOut(show));
	// 5 on 5 m leave gaps of 416⅔, 2 in the 2.5 m left of the typed one 500; 6 and 1 leave 285.7
	expect(evened.order).toEqual(['1 2 3 4 5', '6 8 7']);
	expect(evened.unhung).toBe(0);
});

test('what a drop means', () => {
	const { show } = on(onNorth(['500x400', '500x400', '500x400'], [{}, {}, { 'hang left': '4400' }]));
	const [north] = hangWalls(show.results, show.settings).walls;
	// free is 0–4400: gaps of 1133⅓
	const drop = (place: number, left: number) =>
		dropOf(show, north!, place, { left: mm(left), even: mm(1133), near: mm(20) });
	expect(drop(0, 1300)).toEqual({ kind: 'left', left: mm(1300) });
	expect(drop(0, 1150)).toEqual({ kind: 'even' });
	expect(drop(0, 3000)).toEqual({ kind: 'order', at: 1 });
	expect(drop(1, 100)).toEqual({ kind: 'order', at: 0 });
	// Past one with a typed place, the order is the same.
	expect(drop(1, 4500)).toEqual({ kind: 'left', left: mm(4500) });
	expect(orderOnWall(show, 0)).toEqual([[0], [1], [2]]);
});

test('a place is said with what is beside it', () => {
	const { show } = on(onNorth(['500x400', '400x400'], [{ title: 'Rain' }, { title: 'Quay' }]));
	const [north] = hangWalls(show.results, show.settings).walls;
	const [first] = north!.prints;
	expect(placeWords(north!, first!, show.rows, show.settings, undefined)).toBe(
		'on North, left 1367 mm, centre 1450 mm, 1367 mm to the wall’s left end, 1366 mm from “Quay”',
	);
	expect(toMm(neighboursOf(north!, first!, mm(100)).right.distance)).toBe(2633);
	expect(wallLine(north!, show.settings)).toBe('2 prints, gaps of about 1367 mm');
});
