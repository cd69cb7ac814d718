import { expect, test } from 'vitest';
import { readHangCells } from '../../../../src/core/row/hangCells.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const settingsOf = (...names: readonly string[]) =>
	readSettings({ walls: names.map((name) => ({ name, length: 5000 })) }).settings;
const row = (typed: Typed) => ({ id: 'r', order: 1, typed: { title: 'Ebb', ...typed } });

test.each([
	['East Room', 1],
	[' east room', 1],
	['East-Room', 0],
	['EAST-ROOM', 0],
	['West-Wing', 2],
	['Attic', undefined],
])('of walls that differ by a hyphen “%s” is the one that is spelt so', (wall, place) =>
	expect(readHangCells(row({ wall }), settingsOf('East-Room', 'East Room', 'West Wing')).wall).toBe(place),
);

test('a material is found by its own name too', () => {
	const glazing = ['Art-Glass', 'Art Glass'].map((name) => ({ name, width: 1000, height: 800 }));
	const backing = ['Brown-Board', 'Brown Board'].map((name) => ({ name, width: 1000, height: 800 }));
	const { settings } = readSettings({ glazing, backing });
	const { materials } = workOut(row({ frame: 'Oak', glazing: 'Art Glass', backing: 'brown board' }), settings);
	expect([materials.glazing?.name, materials.backing?.name]).toEqual(['Art Glass', 'Brown Board']);
});

const readOrder = (order: string) => {
	const typed = row({ 'hang order': order });
	return [
		readHangCells(typed, settingsOf('North')).order,
		workOut(typed, settingsOf('North')).read.unread.map(({ column, readings }) => [column, ...readings]),
	];
};

test.each([
	['', undefined],
	['3', 3],
	[' 10 ', 10],
	['2.5', 2.5],
	['2,5', 2.5],
	['0', 0],
	['-1', -1],
])('“%s” is a place in the hang order', (text, order) => expect(readOrder(text)).toEqual([order, []]));

test.each(['abc', 'last', '1/2', '1 of 3', '0x10', '1.5.2', '3a', '1e3', 'Infinity'])(
	'“%s” is no place in the hang order, and counts as blank',
	(text) => expect(readOrder(text)).toEqual([undefined, [['hang order']]]),
);

test('digits that may be meant in two ways are asked about', () =>
	expect(readOrder('1,500')).toEqual([undefined, [['hang order', '1500', '1.500']]]));
