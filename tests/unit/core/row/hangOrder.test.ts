import { expect, test } from 'vitest';
import { readHangCells } from '../../../../src/core/row/hangCells.ts';
import { hangOrder } from '../../../../src/core/row/hangOrder.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

const row = (title: string, hang = '', wall = '') => ({
	id: title,
	order: 0,
	typed: { ...(title && { title }), ...(hang && { 'hang order': hang }), ...(wall && { wall }) },
});
const on = (names: readonly string[], rows: readonly ReturnType<typeof row>[]) => {
	const { settings } = readSettings({ walls: names.map((name) => ({ name, length: 5000 })) });
	const results = rows.map((each) => ({ hangs: readHangCells(each, settings) }));
	return hangOrder(rows, results).map((place) => rows[place]!.id);
};
const titles = (...rows: ReturnType<typeof row>[]) => on([], rows);

test('without a hang order prints hang as they stand; a blank row is none', () =>
	expect(titles(row('Tar'), row(''), row('Ebb'))).toEqual(['Tar', 'Ebb']));

test('numbers go before what has none, by their size and not their letters', () =>
	expect(titles(row('Tar'), row('Ebb', '10'), row('Net', '2'), row('Pier', '2.5'), row('Quay', 'last'))).toEqual([
		...['Net', 'Pier', 'Ebb', 'Tar', 'Quay'],
	]));

test('walls come one after the other, as they first come, however they are spelt', () =>
	expect(titles(row('Ebb', '2', 'North'), row('Tar', '1', 'East'), row('Net', '1', ' north '))).toEqual([
		...['Net', 'Ebb', 'Tar'],
	]));

test('a blank wall is the only one', () => {
	const rows = [row('Ebb', '2', 'North'), row('Tar', '1'), row('Net', '3', 'Attic')];
	expect(on(['North'], rows)).toEqual(['Tar', 'Ebb', 'Net']);
	expect(on(['North', 'East'], rows)).toEqual(['Ebb', 'Tar', 'Net']);
});
