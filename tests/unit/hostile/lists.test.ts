import 'fake-indexeddb/auto';
import { describe, expect, onTestFinished, test } from 'vitest';
import { on } from '../app/edits.ts';
import { openSession } from '../../../src/app/openSession.ts';
import { importText } from '../../../src/app/importFile.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { mergeRows } from '../../../src/core/merge/mergeRows.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { mergeRow } from '../../../src/core/show/mergeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readRows, type RowsOfFile, writeRows } from '../../../src/files/csv.ts';
import { decodeText } from '../../../src/files/decodeText.ts';
import { readColumns } from '../../../src/files/readColumns.ts';
import { readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { encode, encodings } from '../files/encode.ts';
import { rowsOfFile } from '../files/rowsOfFile.ts';

const { settings } = readSettings({});
const makeId = (place: number, attempt: number) => `made ${place}.${attempt}`;

function read(file: string | Uint8Array): RowsOfFile {
	const rows = rowsOfFile(file, settings, makeId);
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}

/** The words that every record of the language has by itself; as names of columns they are names like any other. */
const wordsOfRecords = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', '__defineGetter__'];

describe.each(wordsOfRecords)('a column named %s', (name) => {
	const list = `print id,title,${name}\nP-1,Pier,oak\nP-2,Quay,\n`;
	const without = { id: 'P-3', order: 3, typed: { title: 'Mole' }, extra: { lab: 'x' } };

	test('keeps its values through a list and a show file', () => {
		const { rows, unknown } = read(list);
		expect(unknown).toEqual([name]);
		expect(rows.map(({ extra }) => Object.entries(extra ?? {}))).toEqual([[[name, 'oak']], [[name, '']]]);
		const all = [...rows, without];
		const results = all.map((row) => judgeRow(row, settings));
		const csv = writeRows({ rows: all, results, settings, bench: orderBench(all, results, settings) });
		expect(read(csv).rows.map(({ extra }) => Object.entries(extra ?? {}))).toEqual([
			[
				[name, 'oak'],
				['lab', ''],
			],
			[
				[name, ''],
				['lab', ''],
			],
			[
				[name, ''],
				['lab', 'x'],
			],
		]);
		const show = { name: 'Salt', settings: {}, rows: all };
		const shown = readShowFile(writeShowFile(show));
		if ('problem' in shown) throw new Error(shown.problem);
		expect(Object.entries(shown.value.rows[0]!.extra ?? {})).toEqual([[name, 'oak']]);
		expect(shown.value.rows[2]).toEqual(without);
	});

	test('is compared with a show that has no such column', () => {
		const file = read(list);
		const here: Row[] = [{ id: 'P-1', order: 1, typed: { title: 'Pier' }, extra: { lab: 'x' } }];
		const meaning = { unit: settings.unit, sizes: settings.sizes };
		const merge = mergeRows(here, file, [], meaning, () => 'new');
		const changed = merge.rows.find(({ kind }) => kind === 'changed');
		if (changed?.kind !== 'changed') throw new Error('no difference is told');
		expect(changed.cells.map(({ column, here: cell, there }) => [column.name, cell.text, there.text])).toEqual([
			[name, '', 'oak'],
		]);
	});

	test('is kept where two tabs change one row', () => {
		const before: Row = { id: 'P-1', order: 1, typed: { title: 'Pier' }, extra: { lab: 'x' } };
		const [withIt] = read(list).rows;
		const after: Row = { ...before, extra: Object.fromEntries([['lab', 'x'], ...Object.entries(withIt!.extra!)]) };
		const current: Row = { ...before, typed: { title: 'Pier', note: 'hung' } };
		const merged = mergeRow(current, { before, after })!;
		expect(Object.entries(merged.extra ?? {})).toEqual([
			['lab', 'x'],
			[name, 'oak'],
		]);
		expect(merged.typed).toEqual({ title: 'Pier', note: 'hung' });
		const gone = mergeRow({ ...current, extra: after.extra! }, { before: after, after: before })!;
		expect(gone).toEqual(current);
	});
});

test.each(['5 constructor', 'constructor', '3:2 constructor', '12 constructor x 4'])(
	'“%s” is no length, size, shape or weight, and is said to be none',
	(typed) => {
		const columns = ['side', 'mount', 'shape', 'bottom weight'] as const;
		for (const column of columns) {
			const { findings } = judgeRow({ id: 'a', order: 1, typed: { [column]: typed } }, settings);
			expect(findings.map(({ code }) => code)).toContain('not-read');
		}
	},
);

test('a column of any name is kept by the session, which has its rows from components', async () => {
	const session = await openSession({ databaseName: 'words of records' });
	onTestFinished(() => session.close());
	const extra = Object.fromEntries(wordsOfRecords.map((name) => [name, `of ${name}`]));
	on(session).addRows([{ cells: { title: 'Pier' }, extra }], 0, 'Add row');
	const { rows } = session.show;
	on(session).replaceShow({ name: 'Salt', settings: {}, rows: rows.map((row) => ({ ...row, id: 'b' })) }, 'Open');
	expect(Object.entries(session.show.rows[0]!.extra ?? {})).toEqual(Object.entries(extra));
	session.undo();
	expect(Object.entries(session.show.rows[0]!.extra ?? {})).toEqual(Object.entries(extra));
});

test('settings of any name stay when another is changed by a form', async () => {
	const session = await openSession({ databaseName: 'words of settings' });
	onTestFinished(() => session.close());
	const odd = wordsOfRecords.map((name) => [name, `of ${name}`] as const);
	const kept = [...odd, ['unheard of', Object.fromEntries(odd)] as const];
	const show = { name: 'Salt', settings: Object.fromEntries(kept) as typeof session.show.settings, rows: [] };
	on(session).replaceShow(show, 'Open');
	on(session).changeSettings({ border: '60' });
	const now = Object.entries<unknown>(session.show.settings);
	expect(now).toEqual(expect.arrayContaining([['border', '60'], ...odd]));
	const [, nested] = now.find(([name]) => name === 'unheard of')!;
	expect(Object.entries(nested as object)).toEqual(odd);
});

test('what a person says of a column named like a word of every record is remembered by its name', () => {
	const matching: Record<string, 'none' | 'title'> = Object.fromEntries([['__proto__', 'title']]);
	const rows = readRows('__proto__,side\nPier,70\n', settings, makeId, { matching });
	expect('rows' in rows && rows.rows[0]!.typed).toEqual({ title: 'Pier', side: '70' });
	expect(readColumns('__proto__,side\nPier,70\n', matching)?.columns[0]?.meaning).toBe('title');
});

describe('lines that end in a sign of their own', () => {
	const signs: readonly [string, string][] = [
		['a vertical tab', '\v'],
		['a form feed', '\f'],
		['U+0085', '\u0085'],
		['U+2028', '\u2028'],
		['U+2029', '\u2029'],
		['U+001E', '\u001e'],
	];

	test.each(signs)('%s', (_, end) => {
		const list = ['title,side', 'Pier,70', '"Quay, east",65', ''].join(end);
		expect(read(list).rows.map(({ typed }) => typed)).toEqual([
			{ title: 'Pier', side: '70' },
			{ title: 'Quay, east', side: '65' },
		]);
		expect(read(list).lines).toEqual([2, 3]);
		expect(read(`${list}\n`).rows, 'with a line feed at the end of the file').toHaveLength(2);
		expect(read(encode(list, 'utf-8')).rows).toHaveLength(2);
	});

	test.each(signs)('%s where a file names what stands between its cells', (_, end) => {
		expect(read(['sep=;', 'title;side', 'Pier;70'].join(end)).rows.map(({ typed }) => typed)).toEqual([
			{ title: 'Pier', side: '70' },
		]);
	});

	test.each(signs)('%s is part of a cell where lines end as they do elsewhere', (_, end) => {
		const { rows } = read(`title,side\nPier${end}at dusk,70\n`);
		expect(rows.map(({ typed }) => typed)).toEqual([{ title: `Pier${end}at dusk`, side: '70' }]);
	});

	test.each(signs)('%s within quotes is part of the cell', (_, end) => {
		expect(read(`title,side${end}"Pier${end}at dusk",70${end}`).rows.map(({ typed }) => typed)).toEqual([
			{ title: `Pier${end}at dusk`, side: '70' },
		]);
	});
});

describe('a file that breaks off within its last sign', () => {
	const text = 'title,side\r\nBlüte – im März,70\r\nKai,6';

	const wide = encodings.filter((encoding) => encoding.startsWith('utf-16'));

	test.each(wide)('%s with a byte too many', (encoding) => {
		const bytes = encode(text, encoding);
		expect(decodeText(Uint8Array.of(...bytes, 0x35))).toEqual({ value: `${text}\ufffd` });
		expect(decodeText(Uint8Array.of(...bytes, 0))).toEqual({ value: `${text}\ufffd` });
	});

	test.each(wide)('%s with half of a pair', (encoding) => {
		const bytes = encode(`${text}𝄞`, encoding);
		expect(decodeText(bytes.subarray(0, bytes.length - 2))).toEqual({ value: `${text}\ufffd` });
		expect(decodeText(bytes.subarray(0, bytes.length - 1))).toEqual({ value: `${text}\ufffd` });
	});

	test.each([1, 2, 3])('UTF-8 of which %i bytes of the last sign are there', (there) => {
		const whole = encode(`${text}𝄞`, 'utf-8');
		expect(decodeText(whole.subarray(0, whole.length - 4 + there))).toEqual({ value: `${text}\ufffd` });
	});

	test('an accent at the end of a text that has no other is Windows-1252, as before', () => {
		expect(decodeText(Uint8Array.of(0x63, 0x61, 0x66, 0xe9))).toEqual({ value: 'café' });
	});

	test('a sign that is broken elsewhere makes it no UTF-16', () => {
		expect(decodeText(Uint8Array.of(0xff, 0xfe, 0x61, 0, 0x3d, 0xd8, 0x62, 0))).toEqual({
			problem: 'the file is not text',
		});
	});

	test('is said, with its place, and so is a zero byte before it', () => {
		expect(read(encode('title,side\nPier,70\nMole\0,60\nQuay,50\n', 'utf-8')).notes).toEqual([
			'line 3: a damaged character is shown as \ufffd',
		]);
		const { rows, notes } = read(Uint8Array.of(...encode(text, 'utf-16le'), 0x35));
		expect(rows.map(({ typed }) => typed.side)).toEqual(['70', '6\ufffd']);
		expect(notes).toEqual(['line 3: the file breaks off in the middle of its last character, shown as \ufffd']);
	});
});

test.each<[what: string, list: string, said: string]>([
	['the first cell', '"title"x,side\nPier,70\n', 'Line 1, column 1: text follows a closing quote'],
	['the first cell, to the end', '"title,side\nPier,70\n', 'Line 1, column 1: a quote is opened and never closed'],
	['a later line', 'title,side\n"Pier"x,70\n', 'Line 2, column title: text follows a closing quote'],
	['nothing', '\n,,\n', 'The file is empty.'],
	['a picture', '\x89PNG\r\n\x1a\n', 'The file is not text: it is a picture or a film.'],
])('%s that breaks the rules is said with its place, what is wrong with all of it without', async (_, list, said) => {
	const session = await openSession({ databaseName: `place ${said} ${list}` });
	onTestFinished(() => session.close());
	const came = await importText(session, list);
	if (came.kind !== 'reported') throw new Error(`asked: ${came.kind}`);
	expect(came.report.sentences[0]).toMatch(new RegExp(`^${said}`));
	expect(came.report.sentences[1]).toBe('Nothing here has changed.');
});
