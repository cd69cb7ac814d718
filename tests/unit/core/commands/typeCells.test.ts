import { expect, test } from 'vitest';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { CellTexts, Row } from '../../../../src/core/show/row.ts';
import { typeCells } from '../../../../src/core/commands/typeCells.ts';
import { withCells } from '../../../../src/core/show/withCells.ts';

const { settings } = readSettings({});
const row: Row = {
	id: 'a',
	order: 1,
	typed: { title: 'Pier', 'picture width': '18', top: '70' },
	units: { 'picture width': 'in' },
	extra: { lab: '7' },
};

test.each<{ cells: CellTexts; typed: Row['typed']; units?: Row['units'] }>([
	{ cells: { title: 'Quay' }, typed: { ...row.typed, title: 'Quay' }, units: row.units },
	{ cells: { top: '' }, typed: { title: 'Pier', 'picture width': '18' }, units: row.units },
	{ cells: { top: ' \t' }, typed: { title: 'Pier', 'picture width': '18' }, units: row.units },
	{ cells: { 'picture width': '450' }, typed: { ...row.typed, 'picture width': '450' } }, // a bare number typed again
	{ cells: { 'picture width': '' }, typed: { title: 'Pier', top: '70' } },
	{ cells: { title: ' Pier' }, typed: { ...row.typed, title: ' Pier' }, units: row.units },
	{
		cells: { 'picture width': '456 x 306' },
		typed: { ...row.typed, 'picture width': '456', 'picture height': '306' },
	},
	{
		cells: { 'picture width': 'A3', 'picture height': '' }, // pasted with the blank cell beside it
		typed: { ...row.typed, 'picture width': '297 mm', 'picture height': '420 mm' },
	},
	{
		cells: { 'picture height': '', 'picture width': 'A3' },
		typed: { ...row.typed, 'picture width': '297 mm', 'picture height': '420 mm' },
	},
	{
		cells: { 'picture width': 'A3', 'picture height': '500' }, // what is typed for a cell itself stands
		typed: { ...row.typed, 'picture width': '297 mm', 'picture height': '500' },
	},
	{
		cells: { 'picture height': '500', 'picture width': 'A3' },
		typed: { ...row.typed, 'picture width': '297 mm', 'picture height': '500' },
	},
])('typing $cells leaves $typed', ({ cells, typed, units }) => {
	expect(withCells(row, cells, settings)).toEqual({ ...row, typed, units });
	expect('units' in withCells(row, cells, settings)).toBe(units !== undefined);
});

test('typing what stands there already, or clearing a blank cell, is no change', () => {
	expect(withCells(row, { title: 'Pier', 'picture width': '18', bottom: ' ' }, settings)).toBe(row);
	const show = { id: 'show', name: '', settings: {}, rows: [row] };
	expect(typeCells(show, [{ id: 'a', cells: { title: 'Pier' } }], settings, 'type').rows).toEqual([]);
});

test('two changes of one row are one diff', () => {
	const show = { id: 'show', name: '', settings: {}, rows: [row] };
	const changes = [
		{ id: 'a', cells: { title: 'Quay' } },
		{ id: 'a', cells: { top: '80' } },
	];
	const { rows } = typeCells(show, changes, settings, 'type');
	expect(rows).toHaveLength(1);
	expect(rows[0]).toMatchObject({ before: row, after: { typed: { title: 'Quay', top: '80' } } });
});

test('a row that is not in the show is a slip of the program', () => {
	const show = { id: 'show', name: '', settings: {}, rows: [row] };
	expect(() => typeCells(show, [{ id: 'z', cells: {} }], settings, 'type')).toThrow('no row z');
});
