import fc from 'fast-check';
import { chooseAll } from '../../../../src/core/merge/choices.ts';
import { mergeEdit } from '../../../../src/core/merge/mergeEdit.ts';
import { mergeRows } from '../../../../src/core/merge/mergeRows.ts';
import { addRows } from '../../../../src/core/commands/addRows.ts';
import { changeSettings } from '../../../../src/core/commands/changeSettings.ts';
import { type ColumnName, columns } from '../../../../src/core/show/columns.ts';
import { duplicateRows } from '../../../../src/core/commands/duplicateRows.ts';
import type { Edit } from '../../../../src/core/show/edit.ts';
import { moveRows } from '../../../../src/core/commands/moveRows.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { removeRows } from '../../../../src/core/commands/removeRows.ts';
import { rename } from '../../../../src/core/commands/rename.ts';
import { replaceShow } from '../../../../src/core/commands/replaceShow.ts';
import type { CellTexts, Row } from '../../../../src/core/show/row.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { typeCells } from '../../../../src/core/commands/typeCells.ts';

const lengthTexts = ['', ' ', '70', '7 cm', '2 5/8', '2 5/8 in', '18 x 12 in', 'A3', '456 x 306', '1,500', 'long'];

/** What a file has that was exported. */
export const allColumns: readonly ColumnName[] = columns.map(({ name }) => name);

/** Texts for some cells of a row. */
export const cellTexts: fc.Arbitrary<CellTexts> = fc.dictionary(
	fc.constantFrom(...allColumns),
	fc.oneof(fc.constantFrom(...lengthTexts), fc.string({ maxLength: 5 })),
	{ maxKeys: 4 },
);

const settingChanges = fc.dictionary(
	fc.constantFrom('unit', 'border', 'mountSize', 'ruler', 'sizes'),
	fc.constantFrom<unknown>('mm', 'cm', 'in', '70', '60 x 45', 12, undefined, [
		{ name: 'small', width: '30', height: 40 },
	]),
	{ maxKeys: 2 },
);

const importedRow = fc.record({ printId: fc.constantFrom('r0', 'r1', 'P-1', 'P-2'), cells: cellTexts });

/** What a person may do to a show, by place, so that it can be done to any show. */
export type Action =
	| { readonly kind: 'type'; readonly rows: readonly number[]; readonly cells: CellTexts }
	| { readonly kind: 'add'; readonly rows: readonly CellTexts[]; readonly at: number }
	| { readonly kind: 'remove' | 'duplicate'; readonly rows: readonly number[] }
	| { readonly kind: 'move'; readonly rows: readonly number[]; readonly to: number }
	| { readonly kind: 'settings'; readonly changes: Readonly<Record<string, unknown>> }
	| { readonly kind: 'rename'; readonly name: string }
	| { readonly kind: 'import' | 'replace'; readonly rows: readonly { printId: string; cells: CellTexts }[] };

const places = fc.array(fc.nat(9), { maxLength: 3 });

/** Any action; adding and typing most often. */
export const action: fc.Arbitrary<Action> = fc.oneof(
	{ weight: 5, arbitrary: fc.record({ kind: fc.constant('type'), rows: places, cells: cellTexts }) },
	{
		weight: 4,
		arbitrary: fc.record({
			kind: fc.constant('add'),
			rows: fc.array(cellTexts, { minLength: 1, maxLength: 3 }),
			at: fc.nat(9),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ kind: fc.constantFrom('remove', 'duplicate'), rows: places }) },
	{ weight: 2, arbitrary: fc.record({ kind: fc.constant('move'), rows: places, to: fc.nat(12) }) },
	{ weight: 1, arbitrary: fc.record({ kind: fc.constant('settings'), changes: settingChanges }) },
	{ weight: 1, arbitrary: fc.record({ kind: fc.constant('rename'), name: fc.string({ maxLength: 4 }) }) },
	{
		weight: 1,
		arbitrary: fc.record({ kind: fc.constantFrom('import', 'replace'), rows: fc.array(importedRow, { maxLength: 4 }) }),
	},
);

/** Names that count up. */
export function namer(prefix = 'n'): () => string {
	let count = 0;
	return () => `${prefix}${count++}`;
}

/** The rows that a file would give for an action of importing or replacing. */
export const rowsOfFile = (rows: readonly { printId: string; cells: CellTexts }[]): Row[] =>
	rows.map(({ printId, cells }, index) => ({
		id: printId,
		order: index + 1,
		typed: {
			...Object.fromEntries(Object.entries(cells).filter(([, text]) => text.trim() !== '')),
			'print id': printId,
		},
	}));

/** The edit that takes all of theirs from a file that comes from nobody knows where. */
export function importEdit(
	show: Show,
	rows: readonly Row[],
	columns: readonly ColumnName[],
	makeId: () => string,
): Edit {
	const { settings } = readSettings(show.settings);
	const merge = mergeRows(show.rows, { rows, columns }, [], settings, makeId);
	return mergeEdit(show.rows, merge, chooseAll(merge.rows, 'there'), settings, 'import');
}

/** The ids of rows by place; places past the end are passed over. */
export const idsAt = (show: Show, rows: readonly number[]): string[] => [
	...new Set(rows.flatMap((place) => show.rows[place]?.id ?? [])),
];

/** The edit of an action on a show. */
export function editOf(show: Show, done: Action, makeId: () => string): Edit {
	const { settings } = readSettings(show.settings);
	switch (done.kind) {
		case 'type': {
			const changes = idsAt(show, done.rows).map((id) => ({ id, cells: done.cells }));
			return typeCells(show, changes, settings, 'type');
		}
		case 'add': {
			const rows = done.rows.map((cells) => ({ cells }));
			return addRows(show, rows, done.at, done.rows.map(makeId), settings, 'add');
		}
		case 'remove':
			return removeRows(show, idsAt(show, done.rows), 'remove');
		case 'duplicate':
			return duplicateRows(show, idsAt(show, done.rows), done.rows.map(makeId), 'duplicate');
		case 'move':
			return moveRows(show, idsAt(show, done.rows), done.to, 'move');
		case 'settings':
			return changeSettings(show, done.changes, 'settings');
		case 'rename':
			return rename(show, done.name, 'rename');
		case 'import':
			return importEdit(show, rowsOfFile(done.rows), allColumns, makeId);
		case 'replace':
			return replaceShow(
				show,
				{ name: 'other', settings: { unit: 'cm' }, rows: rowsOfFile(done.rows) },
				makeId,
				'replace',
			);
	}
}
