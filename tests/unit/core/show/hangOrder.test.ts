import { expect, test } from 'vitest';
import { hangOrder } from '../../../../src/core/show/hangOrder.ts';

const row = (title: string, hang = '', wall = '') => ({
	id: title,
	order: 0,
	typed: { ...(title && { title }), ...(hang && { 'hang order': hang }), ...(wall && { wall }) },
});
const titles = (...rows: ReturnType<typeof row>[]) => hangOrder(rows).map((place) => rows[place]!.id);

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
