import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { suggestColumns } from '../../../src/core/imports/columnMatching.ts';
import { chooseMerge, parted } from '../../../src/core/merge/choices.ts';
import type { Exchange } from '../../../src/core/merge/exchange.ts';
import { mergeEdit } from '../../../src/core/merge/mergeEdit.ts';
import { mergeRows } from '../../../src/core/merge/mergeRows.ts';
import { asideLines } from '../../../src/core/merge/mergeWords.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import { apply } from '../../../src/core/show/edit.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readRows } from '../../../src/files/csv.ts';
import { readColumns } from '../../../src/files/readColumns.ts';
import { textOfFile } from '../../../src/files/textOfFile.ts';
import { type ExpectedComparison, idOf, listColumns } from './mangledLists.ts';

const held = (file: string) => readFileSync(resolve('shared/samples', file));
const expectations = JSON.parse(held('mangled/expected.json').toString()) as readonly ExpectedComparison[];
const { settings } = readSettings({ unit: 'mm', sizes: [{ name: 'Small', width: '500 mm', height: '400 mm' }] });
let made = 0;
const makeId = () => `made ${++made}`;

/** The example as it went out. */
const out = ((): readonly Row[] => {
	const example = readRows(held('example.csv').toString(), settings, makeId);
	if ('problem' in example) throw new Error(example.problem);
	return example.rows.map(({ typed, units, extra }, at) => ({
		id: idOf(at),
		order: at + 1,
		typed,
		...(units && { units }),
		...(extra && { extra }),
	}));
})();
const exchange: Exchange = { id: 'x', direction: 'given', fileName: 'rows.csv', at: 1, unit: 'mm', rows: out };

/** A list that came back, read as the app reads it: what is in doubt is answered as it is suggested. */
function read(file: string) {
	const text = textOfFile(held(`mangled/${file}`));
	if ('problem' in text) throw new Error(text.problem);
	const columns = readColumns(text.value)!.columns;
	const sure = columns.flatMap(({ meaning, guesses }) =>
		guesses.length === 0 && meaning && meaning !== 'none' ? [meaning] : [],
	);
	const open = columns.filter(({ guesses }) => guesses.length > 0);
	const answers = suggestColumns(
		open.map(({ guesses }) => guesses),
		sure,
	);
	const matching = Object.fromEntries([
		...open.map((column, at) => [column.text, answers[at]!] as const),
		// The column of print ids has a name that nobody can know; a person says what it is.
		...columns
			.filter(({ text: header }) => ['Kennung', 'Clé', 'Chiave', 'Sleutel'].includes(header))
			.map((column) => [column.text, 'print id'] as const),
	]);
	const rows = readRows(text.value, settings, makeId, { matching });
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}

const titleAt = (title: string) => String(out.findIndex(({ typed }) => typed.title === title)).padStart(3, '0');

test('five kinds of program, twelve things done to the list', () => expect(expectations).toHaveLength(60));

describe.each(expectations)('$file', ({ file, aside, edits, added, leftOut, missing, isReordered }) => {
	test('is compared as expected, and nothing is lost or replaced unsaid', () => {
		const there = read(file);
		const merge = mergeRows(out, there, [exchange], settings, makeId);
		const said = asideLines(merge).map(({ kind, rows }) => [
			kind,
			rows.reduce((sum, row) => sum + (row.kind === 'changed' ? row.cells.length : 0), 0),
		]);
		expect(Object.fromEntries(said)).toEqual(aside);
		const changes = parted(merge.rows, 'theirs or both').flatMap((row) =>
			row.kind === 'changed'
				? row.cells.map(({ column, there: cell }) => [row.here.typed.title, column.name, cell.text])
				: [],
		);
		expect(changes).toEqual(edits.toSorted((a, b) => (titleAt(a[0]) < titleAt(b[0]) ? -1 : 1)));
		const titles = (kind: string, part: Parameters<typeof parted>[1]) =>
			parted(merge.rows, part).flatMap((row) =>
				row.kind === kind ? [('there' in row ? row.there : row.here).typed.title] : [],
			);
		expect(titles('added', 'theirs or both')).toEqual(added);
		expect(titles('added', 'in doubt')).toEqual(leftOut);
		expect(titles('removed there', 'theirs or both')).toEqual(missing);
		expect(merge.order.changedBy !== undefined).toBe(isReordered);
		for (const choices of [new Map(), chooseMerge(merge, 'there')]) {
			const show = { id: 's', name: '', settings: {}, rows: out };
			const after = apply(show, mergeEdit(out, merge, choices, settings, 'import')).rows;
			const expected = out.map(({ id, typed }) => {
				const own = edits.filter(([title]) => title === typed.title);
				return [id, { ...typed, ...Object.fromEntries(own.map(([, column, text]) => [column, text])) }];
			});
			expect(after.slice(0, out.length).map(({ id, typed }) => [id, typed])).toEqual(expected);
			expect(after.slice(out.length).map(({ typed }) => typed.title)).toEqual(added);
		}
	});
});

test('the lists have the columns that they are made of', () => {
	const there = read('1-as-it-is.csv').columns satisfies readonly ColumnName[];
	expect(there).toEqual(listColumns);
});
