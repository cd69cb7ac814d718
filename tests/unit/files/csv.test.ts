import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import type { Unit } from '../../../src/core/length/reading.ts';
import { readCells } from '../../../src/core/row/readCells.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { type ColumnName, kindOf, sharedColumns } from '../../../src/core/show/columns.ts';
import { type SolvedRow, solvedKeys } from '../../../src/core/row/solvedRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../src/core/show/row.ts';
import type { Settings, TypedSettings } from '../../../src/core/settings/settings.ts';
import {
	compareResults,
	readRows,
	type RowsOfFile,
	writeRows,
	type WriteOptions,
	writingRows,
} from '../../../src/files/csv.ts';
import { encode, encodeWindows, encodings } from './encode.ts';
import { rowsOfFile } from './rowsOfFile.ts';
import { runs } from '../../soak.ts';

const settingsOf = (unit: Unit, more = {}) =>
	readSettings({ unit, sizes: [{ name: 'Small frame', width: 333, height: 222 }], ...more }).settings;
const mm = settingsOf('mm', { mountSize: '610 x 460', border: 62, bottomWeight: '9 %' });

const makeId = (place: number, attempt: number) => `made ${place}.${attempt}`;

/** The rows of a file that can be read. */
function read(file: Uint8Array | string, settings: Settings = mm): RowsOfFile {
	const rows = rowsOfFile(file, settings, makeId);
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}

function problemOf(file: Uint8Array | string): string {
	const rows = rowsOfFile(file, mm, makeId);
	if ('rows' in rows) throw new Error(`read: ${JSON.stringify(rows.rows)}`);
	return rows.problem;
}

function write(rows: readonly Row[], settings: Settings = mm, options?: WriteOptions): string {
	const results = rows.map((row) => judgeRow(row, settings));
	return writeRows({ rows, results, settings, bench: orderBench(rows, results, settings) }, options);
}

/** Writes rows without working them out, which takes most of the time. */
function writeTyped(rows: readonly Row[], settings: Settings, options: WriteOptions): string {
	const solved = Object.fromEntries(solvedKeys.map((key) => [key, undefined])) as unknown as SolvedRow;
	const result = { ...judgeRow({ id: 'none', order: 1, typed: {} }, settings), solved };
	return writeRows({ rows, results: rows.map(() => result), settings, bench: orderBench([], [], settings) }, options);
}

const row = (typed: Typed, more: Partial<Row> = {}): Row => ({ id: 'r', order: 1, typed, ...more });

/** The cells of one column of a written file, its header first. */
function columnOf(file: string, header: RegExp): string[] {
	const lines = file
		.trimEnd()
		.split(/\r\n/)
		.map((line) => line.split(','));
	const at = lines[0]!.findIndex((cell) => header.test(cell));
	return lines.map((cells) => cells[at]!);
}

describe('reading', () => {
	const expected = [
		{
			id: 'a',
			order: 1,
			typed: { 'print id': 'a', title: 'Ebb', 'picture width': '45,6' },
			units: { 'picture width': 'cm' },
		},
		{ id: 'b', order: 2, typed: { 'print id': 'b', title: 'Flow; or neap', 'picture width': '30 in' } },
	];
	test.each([
		['commas', 'print id,title,picture width (cm)\na,Ebb,"45,6"\nb,Flow; or neap,30 in\n'],
		['semicolons and decimal commas', 'print id;title;picture width (cm)\na;Ebb;45,6\nb;"Flow; or neap";30 in\n'],
		['tabs', 'print id\ttitle\tpicture width (cm)\na\tEbb\t45,6\nb\tFlow; or neap\t30 in\n'],
		['bars', 'print id|title|picture width (cm)\na|Ebb|45,6\nb|Flow; or neap|30 in\n'],
		[
			'a line that says the delimiter',
			'sep=;\r\nprint id;title;picture width (cm)\r\na;Ebb;45,6\r\nb;"Flow; or neap";30 in\r\n',
		],
		['CRLF', 'print id,title,picture width (cm)\r\na,Ebb,"45,6"\r\nb,Flow; or neap,30 in\r\n'],
		['CR', 'print id,title,picture width (cm)\ra,Ebb,"45,6"\rb,Flow; or neap,30 in\r'],
		['several line ends', 'print id,title,picture width (cm)\r\na,Ebb,"45,6"\nb,Flow; or neap,30 in\r'],
		['no last line end', 'print id,title,picture width (cm)\na,Ebb,"45,6"\nb,Flow; or neap,30 in'],
		['blank lines', '\n\nprint id,title,picture width (cm)\n\na,Ebb,"45,6"\n,,\n , ,\t\nb,Flow; or neap,30 in\n,,\n'],
		['other forms of the headers', 'PRINT-ID,Title,Picture_Width [cm]\na,Ebb,"45,6"\nb,Flow; or neap,30 in'],
		['columns in another order', 'picture width (cm),print id,title\n"45,6",a,Ebb\n30 in,b,Flow; or neap'],
		['apostrophes against formulas', "'print id,title,picture width (cm)\n'a,'Ebb,\"'45,6\"\nb,Flow; or neap,30 in"],
	])('%s', (_, text) => expect(read(text)).toMatchObject({ rows: expected, notes: [] }));

	test('one column, whose decimal commas are no delimiters', () => {
		const { rows } = read('picture width\n45,6\n30,6\n');
		expect(rows.map(({ typed }) => typed)).toEqual([{ 'picture width': '45,6' }, { 'picture width': '30,6' }]);
	});

	test('lines are those of the file, past blank lines and line ends in quotes', () => {
		const { lines } = read('\ntitle,note\n"a\nb",1\n\nc,2\n');
		expect(lines).toEqual([3, 6]);
	});

	test('texts are kept exactly, whatever they hold', () => {
		const { rows } = read('title,note,side\n"  spaced  ","say ""so""\r\ntwice",7o\n');
		expect(rows[0]!.typed).toEqual({ title: '  spaced  ', note: 'say "so"\r\ntwice', side: '7o' });
	});

	test('unknown columns are kept, in the order of the file, and so is every cell too many', () => {
		const { rows, notes } = read('lab,title,lab,,\nx,a,y,,,extra\n,b,\n');
		expect(rows.map(({ extra }) => extra)).toEqual([
			{ lab: 'x', 'lab (2)': 'y', 'column 6': 'extra' },
			{ lab: '', 'lab (2)': '', 'column 6': '' },
		]);
		expect(notes).toEqual(['line 2, column 6: this cell has no header; it is kept as “column 6”']);
	});

	test('a header may be the name of anything', () => {
		const { rows } = read('title,__proto__,constructor\na,b,c\n');
		expect(Object.entries(rows[0]!.extra!)).toEqual([
			['__proto__', 'b'],
			['constructor', 'c'],
		]);
	});

	test('200 columns', () => {
		const names = Array.from({ length: 199 }, (_, at) => `c${at}`);
		const { rows } = read(`title,${names.join(',')}\na,${names.map((name) => `${name}!`).join(',')}\n`);
		expect(rows[0]!.typed).toEqual({ title: 'a' });
		expect(rows[0]!.extra).toEqual(Object.fromEntries(names.map((name) => [name, `${name}!`])));
	});

	test('a print id names its row once; the next row of that name is told', () => {
		const { rows, notes } = read('print id,title\na,1\n,2\na,3\n');
		expect(rows.map(({ id }) => id)).toEqual(['a', 'made 2.1', 'made 3.1']);
		expect(rows.map(({ typed }) => typed['print id'])).toEqual(['a', undefined, 'a']);
		expect(notes).toEqual(['line 4, column print id: “a” names a row before it too']);
	});

	test('a unit in a column of its own that is none that is read is told, once for all its lines', () => {
		const { rows, notes } = read(
			'title,Unit,picture width\na,centimetres,45\nb,Elle,45\nc,,45\nd,Elle,45 cm\ne,px,45\n',
		);
		expect(rows.map(({ units, extra }) => [units?.['picture width'], extra])).toEqual([
			['cm', undefined],
			[undefined, { Unit: 'Elle' }],
			[undefined, undefined],
			[undefined, { Unit: 'Elle' }],
			[undefined, { Unit: 'px' }],
		]);
		expect(notes).toEqual([
			'line 3, column Unit: “Elle” is no unit that is read; numbers without a unit count as mm; so they do in line 5',
			'line 6, column Unit: “px” is no unit that is read; numbers without a unit count as mm',
		]);
	});

	test('a name that is made up is none that a row of the file has, before it or after', () => {
		const { rows, notes } = read('print id,title\n,1\nmade 1.1,2\n');
		expect(rows.map(({ id }) => id)).toEqual(['made 1.2', 'made 1.1']);
		expect(notes).toEqual([]);
	});

	test('a print id that the app made up is a name, but no text of the row', () => {
		expect(read('print id,title\np2345abcde,1\n').rows[0]).toMatchObject({ id: 'p2345abcde', typed: { title: '1' } });
		expect(read('print id,title\np2345abcde,1\n').rows[0]!.typed).not.toHaveProperty('print id');
	});
});

describe('the unit of a header', () => {
	/** What the row's cell is pinned to. */
	const unitOf = (header: string, text: string, settings = mm) => {
		const [first] = read(`${header}\t\n${text}\t\n`, settings).rows;
		return Object.values(first!.units ?? {})[0];
	};
	test.each<[string, string, Unit, Unit | undefined]>([
		['picture width (cm)', '45.6', 'mm', 'cm'],
		['picture width (mm)', '456', 'mm', undefined], // the show's unit says it already
		['picture width (mm)', '456', 'in', 'mm'],
		['picture width (centimetres)', '45.6', 'mm', 'cm'],
		['picture width in Millimeter', '456', 'in', 'mm'],
		['picture width (cm)', '45.6 cm', 'mm', undefined],
		['picture width (cm)', '16½', 'cm', 'cm'], // or it would be inches
		['picture width (mm)', '16½', 'mm', 'mm'],
		['picture width', '16½', 'mm', undefined],
		['picture width (in)', '16½', 'mm', 'in'],
		['picture width (cm)', 'wide', 'mm', undefined],
		['paper (cm)', 'A3', 'mm', undefined],
		['paper (cm)', '30 x 40', 'mm', 'cm'],
		['paper (cm)', '30 x 40 cm', 'mm', undefined],
		['mount (cm)', 'fit', 'mm', undefined],
		['mount (cm)', 'Small frame', 'mm', undefined],
		['bottom weight (%)', '12', 'mm', undefined],
		['bottom weight (mm)', '12', 'mm', 'mm'],
		['bottom weight (mm)', '12 %', 'mm', undefined],
		['title (cm)', '12', 'mm', undefined],
	])('%s: %s in a show of %s', (header, text, unit, pinned) => {
		expect(unitOf(header === 'title (cm)' ? 'title' : header, text, settingsOf(unit))).toBe(pinned);
	});

	test('a bare fraction under a metric header is not read, and both readings are offered', () => {
		const [first] = read('title,picture width (mm)\na,16½\n').rows;
		const { unread } = readCells(first!, mm);
		expect(unread).toMatchObject([{ column: 'picture width', readings: ['16 1/2 in', '16 1/2 mm'] }]);
	});

	test('metres and feet are spelled out in the cell', () => {
		const [first] = read('picture width (m),picture height (ft),overlap (m)\n0.6,1 1/2,3 mm\n').rows;
		expect(first!.typed).toEqual({ 'picture width': '0.6 m', 'picture height': '1 1/2 ft', overlap: '3 mm' });
	});
});

describe('what cannot be read', () => {
	test.each<[string, Uint8Array | string, string]>([
		[
			'a PNG',
			Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13),
			'line 1, column 1: the file is not text',
		],
		['nothing', '', 'line 1, column 1: the file is empty'],
		['no bytes', new Uint8Array(), 'line 1, column 1: the file is empty'],
		['blank lines', '\n,,\n', 'line 1, column 1: the file is empty'],
		['no known header', '\nred,green\n1,2\n', 'line 2, column red: no header is known'],
		['no header at all', '45,30\n60,40\n', 'line 1, column 45: no header is known'],
		[
			'one known header twice',
			'title,Picture-Width (mm),picture width\n',
			'line 1, column picture width: this header stands twice',
		],
		['one under both words', 'title,mat,mount\n', 'line 1, column mount: this header stands twice'],
		[
			'a result header twice',
			'title,result top,result top (mm)\n',
			'line 1, column result top: this header stands twice',
		],
		['a quote never closed', 'title,note\na,b\nc,"d\ne,f\n', 'line 3, column note: a quote is opened and never closed'],
		['text behind a quote', 'title,note\n"16" frame",b\n', 'line 2, column title: text follows a closing quote'],
		['a quote in the header', 'title,"note\n', 'line 1, column 2: a quote is opened and never closed'],
	])('%s', (_, file, problem) => expect(problemOf(file).slice(0, problem.length)).toBe(problem));
});

describe('writing', () => {
	test('the columns, typed ones first, then results, then those of others', () => {
		const [header] = write([row({ title: 'a' }, { extra: { lab: 'x' } })]).split('\r\n');
		const names = header!.split(',').map((name) => name.replace(/ \(mm\)$/, ''));
		expect(names.slice(0, sharedColumns.length)).toEqual(sharedColumns.map(({ name }) => name));
		expect(names[sharedColumns.length]).toBe('result mount width');
		expect(names.slice(-4)).toEqual(['result findings', 'result steps', 'result settings', 'lab']);
	});

	test('who bought a print is never in it; a file that says it is read', () => {
		const sold = row({ title: 'a', stage: 'sold', buyer: 'R. Thistle' }, { id: 'p1' });
		for (const hasIds of [true, false])
			for (const isForSpreadsheet of [true, false]) {
				const written = write([sold], mm, { hasIds, isForSpreadsheet });
				expect(written).toContain('sold');
				expect(written).not.toMatch(/buyer|Thistle/i);
			}
		expect(read('title,Buyer\na,R. Thistle\n').rows[0]!.typed).toEqual({ title: 'a', buyer: 'R. Thistle' });
	});

	test.each(['Buyer', 'buyer email', 'Buyer (name)', 'Käuferin, Ort', 'sold to', 'Purchaser'])(
		'nor where it came as a column of others, “%s”',
		(name) => {
			const sold = row({ title: 'a' }, { id: 'p1', extra: { [name]: 'R. Thistle', client: 'Mill' } });
			const written = write([sold]);
			expect(written).not.toMatch(/Thistle|buyer|purchaser/i);
			expect(written).toContain('client');
		},
	);

	test('what a print costs is a result: written in the show’s currency where it is known, and not imported', () => {
		const priced = row({ title: 'a' });
		const rows = [priced, row({ title: 'b' })];
		const results = rows.map((each) => judgeRow(each, mm));
		const costOf = (each: Row) => (each === priced ? 1250 : undefined);
		const written = writeRows({ rows, results, settings: mm, bench: orderBench(rows, results, mm), costOf });
		expect(columnOf(written, /^result cost/)).toEqual(['result cost', '12.50', '']);
		expect(read(written).rows.map(({ typed, extra }) => [typed.title, extra])).toEqual([
			['a', undefined],
			['b', undefined],
		]);
	});

	test('results are exact, in the show’s unit, with the settings that gave them', () => {
		const written = write([row({ 'picture width': '456', 'picture height': '306' })]);
		expect(columnOf(written, /^result side/)).toEqual(['result side (mm)', '80']);
		expect(columnOf(written, /^result overlap top/)).toEqual(['result overlap top (mm)', '3']);
		expect(columnOf(written, /^result steps/)).toEqual(['result steps', '1 2 3']);
		expect(columnOf(written, /^result settings/)[1]).toBe(
			'unit=mm; ruler=1 mm; mount=610 x 460 mm; border=62 mm; weight=9 %; overlap=3 mm',
		);
	});

	test.each<[TypedSettings, string]>([
		[{ unit: 'in' }, 'unit=in; ruler=1/16 in; mount=20 x 16 in; border=2 1/2 in; weight=10 %; overlap=1/8 in'],
		[
			{ reveal: 5, bottomWeight: '6 mm' },
			'unit=mm; ruler=1 mm; mount=500 x 400 mm; border=65 mm; weight=6 mm; overlap=3 mm; reveal=5 mm',
		],
		[
			{ unit: 'cm', bottomWeight: '12.5' },
			'unit=cm; ruler=0.1 cm; mount=50 x 40 cm; border=6.5 cm; weight=12.5 %; overlap=0.3 cm',
		],
		[
			{ bottomWeight: '100/3 %' },
			'unit=mm; ruler=1 mm; mount=500 x 400 mm; border=65 mm; weight=100/3 %; overlap=3 mm',
		],
		[
			{ bottomWeight: 'optical centre' },
			'unit=mm; ruler=1 mm; mount=500 x 400 mm; border=65 mm; weight=optical centre; overlap=3 mm',
		],
	])('settings %j are written so that they can be typed again', (typed, text) => {
		const { settings } = readSettings(typed);
		expect(columnOf(write([row({ title: 'a' })], settings), /^result settings/)[1]).toBe(text);
		const keys: Record<string, string> = { mount: 'mountSize', weight: 'bottomWeight' };
		const again = Object.fromEntries(
			text.split('; ').map((entry): [string, string] => {
				const [key = '', value = ''] = entry.split('=');
				return [keys[key] ?? key, value];
			}),
		);
		expect(readSettings(again)).toMatchObject({ settings, problems: [] });
	});

	test('a negative result is a number, a typed formula is guarded', () => {
		const written = write([row({ title: '=1+1', 'picture width': '400', 'picture height': '300', reveal: '5' })]);
		expect(columnOf(written, /^result overlap side/)[1]).toBe('-5');
		expect(columnOf(written, /^title/)[1]).toBe("'=1+1");
	});

	test('a row has a name of its own only where it is asked for', () => {
		const rows = [row({ title: 'a' }), row({ title: 'b', 'print id': 'B7' }, { id: 's' })];
		expect(columnOf(write(rows), /^print id/)).toEqual(['print id', '', 'B7']);
		expect(columnOf(write(rows, mm, { hasIds: true }), /^print id/)).toEqual(['print id', 'r', 'B7']);
	});

	test('zero characters, which no text file has, are written as a mark', () => {
		expect(read(encode(write([row({ title: 'a\0b' })]), 'utf-8')).rows[0]!.typed.title).toBe('a\ufffdb');
	});
});

describe('the unit of a written header', () => {
	/** Header and cells of the picture's width and height. */
	function written(rows: readonly Row[], settings = mm) {
		const file = write(rows, settings);
		return { width: columnOf(file, /^picture width/), height: columnOf(file, /^picture height/) };
	}
	test('is the show’s', () => {
		expect(written([row({ 'picture width': '456' })]).width).toEqual(['picture width (mm)', '456']);
		expect(written([row({ 'picture width': '18' })], settingsOf('in')).width).toEqual(['picture width (in)', '18']);
	});
	test('is the cells’ own where they agree on one', () => {
		const rows = [row({ 'picture width': '45.6' }, { units: { 'picture width': 'cm' } }), row({ title: 'b' })];
		expect(written(rows).width).toEqual(['picture width (cm)', '45.6', '']);
	});
	test('is spelled out in cells that differ', () => {
		const rows = [
			row({ 'picture width': '45.6' }, { units: { 'picture width': 'cm' } }),
			row({ 'picture width': '300' }),
		];
		expect(written(rows).width).toEqual(['picture width (mm)', '45.6 cm', '300']);
	});
	test('is none where a bare fraction makes a size inches, in both columns of the size', () => {
		const rows = [row({ 'picture width': '16½', 'picture height': '11' }), row({ 'picture width': '300' })];
		expect(written(rows)).toEqual({ width: ['picture width', '16½', '300'], height: ['picture height', '11', ''] });
	});
	test('keeps a fraction unread that was', () => {
		const rows = [
			row({ 'picture width': '16½' }, { units: { 'picture width': 'cm' } }),
			row({ 'picture width': '300' }),
		];
		expect(written(rows).width).toEqual(['picture width (cm)', '16½', '300 mm']);
	});
	test('of a size or a weight is there only where a number needs it', () => {
		const file = write([row({ paper: 'A3', 'bottom weight': '12' })]);
		expect(file).toMatch(/,paper,/);
		expect(file).toMatch(/,bottom weight,/);
		expect(write([row({ paper: '300 x 400' })])).toMatch(/,paper \(mm\),/);
		expect(columnOf(write([row({ 'bottom weight': '6' }, { units: { 'bottom weight': 'mm' } })]), /^bottom w/)).toEqual(
			['bottom weight (mm)', '6'],
		);
	});
});

describe('two lengths in one cell of a size', () => {
	test.each([
		{ header: 'picture width', cells: '456 x 306', typed: ['456', '306'], units: undefined },
		{ header: 'picture width (cm)', cells: '45.6 x 30.6', typed: ['45.6', '30.6'], units: ['cm', 'cm'] },
		{ header: 'picture height (m)', cells: '0.6 x 0.4', typed: ['0.6 m', '0.4 m'], units: undefined },
		{ header: 'picture width', cells: '18 x 12 in', typed: ['18 in', '12 in'], units: undefined },
		{ header: 'picture height', cells: 'A4', typed: ['210 mm', '297 mm'], units: undefined },
		{ header: 'picture width,picture height', cells: '456 x 306,300', typed: ['456 x 306', '300'], units: undefined },
		{ header: 'picture width (in)', cells: '16½ x 11', typed: ['16 1/2 in', '11'], units: [undefined, 'in'] },
		{ header: 'picture width (cm)', cells: '16½ x 11', typed: ['16½ x 11', undefined], units: ['cm', undefined] },
	])('$cells under $header', ({ header, cells, typed, units }) => {
		const [row] = read(`${header}\n${cells}\n`).rows;
		expect([row?.typed['picture width'], row?.typed['picture height']]).toEqual(typed);
		expect(row?.units && [row.units['picture width'], row.units['picture height']]).toEqual(units);
	});
});

test('columns that are not known are named, as often as they stand there', () => {
	expect(read('title,size,size,\na,b,c,d\n').unknown).toEqual(['size', 'size (2)']);
	expect(read('title\na\n').unknown).toEqual([]);
});

describe('results that came with the rows', () => {
	const rows = [row({ 'picture width': '456', 'picture height': '306' }), row({ shape: '3:2' }, { id: 's' })];
	const worked = (settings: Settings) => rows.map((each) => judgeRow(each, settings));
	/** How many rows have results that are not those, under nothing that is known. */
	const differing = (fromFile: RowsOfFile['results'], results: ReturnType<typeof worked>, unit: Unit) =>
		fromFile.filter((cells, at) => {
			const { isOther, edited } = compareResults(cells, { result: results[at]!, unit }, () => []);
			return isOther || edited.length > 0;
		}).length;
	test('agree with what their own settings give', () => {
		for (const unit of ['mm', 'cm', 'in'] as const) {
			const settings = settingsOf(unit);
			expect(differing(read(write(rows, settings), settings).results, worked(settings), unit)).toBe(0);
		}
	});
	test('differ under other settings', () => {
		const file = read(write(rows));
		expect(differing(file.results, worked(settingsOf('mm')), 'mm')).toBe(2);
		const other = readSettings({ mountSize: '610 x 460', border: 63, bottomWeight: '9 %' }).settings;
		expect(differing(file.results, worked(other), 'mm')).toBe(1);
	});
	test('are compared in the unit of the file, and never taken', () => {
		const file = read(write(rows, settingsOf('in')), settingsOf('mm'));
		expect(differing(file.results, worked(settingsOf('in')), 'mm')).toBe(0);
		expect(file.rows.map(({ typed }) => typed)).toEqual(rows.map(({ typed }) => typed));
	});
	test('that nobody wrote do not differ', () => {
		expect(differing(read('title,result top\na,\n').results, worked(mm), 'mm')).toBe(0);
		expect(differing(read('title\na\n').results, worked(mm), 'mm')).toBe(0);
		expect(differing(read('title,result top\na,x\n').results, worked(mm), 'mm')).toBe(1);
	});
	test('that somebody has typed over are told from those of other settings, and from what a spreadsheet rounds', () => {
		const [first] = read(write(rows)).results;
		const [here, there] = [worked(mm)[0]!, worked(settingsOf('mm'))[0]!];
		const others = () => [here, there].map((result) => ({ result, unit: 'mm' as const }));
		const typedOver = first!.map((cell) => (cell.name === 'result window width' ? { ...cell, text: '431' } : cell));
		const ofOthers = { isOther: true, edited: [] };
		expect(compareResults(first!, { result: there, unit: 'mm' }, others)).toEqual(ofOthers);
		expect(compareResults(typedOver, { result: here, unit: 'mm' }, others)).toEqual({
			...{ isOther: false, edited: [{ name: 'window width', text: '431' }] },
		});
	});
});

const bareTexts = ['45,6', '300', '0.5', '12', '1,500', '-3', '0', '450.25'];
const freeTexts = ['16½', '2 5/8', '11 1/4', '5/8'];
const wholeTexts = ['45,6 cm', '11 in', '1\'4"', '2 5/8 in', '0.3 m'];
const names = [
	'A3',
	'Small frame',
	'ansi b',
	'fit',
	'none',
	'60 x 45',
	'60 cm x 45',
	'24 by 18 in',
	'16½ x 11',
	'600×450',
];
const weights = ['12', '12 %', '6 mm', 'none', 'optical centre', '1/4', '1/4 in', '-1'];
const anyText = fc
	.oneof(
		fc.string({ unit: 'binary', minLength: 1 }),
		fc.string({
			unit: fc.constantFrom('"', "'", ',', ';', '\t', '|', '\r', '\n', '=', '+', '-', '@', ' ', 'ü', '½', '漢'),
			minLength: 1,
		}),
	)
	.filter((text) => text.trim() !== '' && !text.includes('\0'));

/** Texts for a cell: such as people type, and any at all. */
function textFor(column: ColumnName): fc.Arbitrary<string> {
	const kind = kindOf(column);
	const usual =
		kind === 'length' || kind === 'space'
			? [...bareTexts, ...freeTexts, ...wholeTexts]
			: kind === 'size' || kind === 'mount'
				? names
				: kind === 'weight'
					? weights
					: kind === 'shape'
						? ['3:2', '1.5', '1,5', '3x2', 'square']
						: ['7', 'Ebb', '3/12'];
	return fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...usual) }, { weight: 1, arbitrary: anyText });
}

const anyTyped: fc.Arbitrary<Typed> = fc.record(
	Object.fromEntries(sharedColumns.filter(({ name }) => name !== 'print id').map(({ name }) => [name, textFor(name)])),
	{ requiredKeys: [] },
);
const anyExtra = fc.dictionary(
	fc.constantFrom('lab', 'Shelf no.', 'price (EUR)', "'quoted", '=sum', 'a;b', '列'),
	fc.oneof(fc.constant(''), anyText),
	{ noNullPrototype: true },
);

/** Rows whose cells have units of their own, or not. */
const anyRows = (hasUnits: boolean): fc.Arbitrary<Row[]> =>
	fc
		.array(
			fc.record({
				typed: anyTyped,
				extra: anyExtra,
				pins: fc.array(fc.constantFrom<Unit | undefined>(undefined, undefined, 'mm', 'cm', 'in'), {
					minLength: sharedColumns.length,
					maxLength: sharedColumns.length,
				}),
			}),
			{ minLength: 1, maxLength: 5 },
		)
		.map((rows) =>
			rows.map(({ typed, extra, pins }, at): Row => {
				const units = sharedColumns.flatMap(({ name, kind }, place) =>
					hasUnits &&
					pins[place] !== undefined &&
					typed[name] !== undefined &&
					['length', 'space', 'size', 'mount', 'weight'].includes(kind)
						? [[name, pins[place]]]
						: [],
				);
				return {
					id: `p${'23456789a'.slice(0, 8)}${'bcdef'[at]!}`,
					order: at + 1,
					typed,
					extra,
					...(units.length > 0 && { units: Object.fromEntries(units) as NonNullable<Row['units']> }),
				};
			}),
		);

const options: fc.Arbitrary<Required<Omit<WriteOptions, 'isForSpreadsheet'>>> = fc.record({
	delimiter: fc.constantFrom(',', ';', '\t', '|'),
	lineEnd: fc.constantFrom('\r\n', '\n', '\r'),
	hasIds: fc.constant(true),
});
const anyUnit = fc.constantFrom<Unit>('mm', 'cm', 'in');

/** What a row means: its cells as read, which of them cannot be, and what came with it from others. */
function meaningOf(each: Row, settings: Settings) {
	const { cells, copies, unread } = readCells(each, settings);
	const [mount, paper] = [cells.mount.kind === 'size' ? cells.mount.size : cells.mount.kind, cells.paper].map((size) =>
		typeof size === 'object' ? [size.width, size.height] : size,
	);
	const extra = Object.entries(each.extra ?? {}).filter(([, text]) => text !== '');
	return {
		id: each.id,
		cells: { ...cells, mount, paper },
		copies,
		unread: unread.map(({ column }) => column),
		extra: new Map(extra),
	};
}

describe('export and import again', () => {
	test('give the same texts, whatever the delimiter, line end and encoding', () =>
		fc.assert(
			fc.property(anyRows(false), options, anyUnit, fc.constantFrom(...encodings), (rows, chosen, unit, encoding) => {
				const settings = settingsOf(unit);
				const again = read(encode(writeTyped(rows, settings, chosen), encoding), settings);
				expect(again.notes).toEqual([]);
				expect(again.rows.map(({ typed }) => typed)).toEqual(rows.map(({ typed }) => typed));
				expect(again.rows.map((each) => meaningOf(each, settings))).toEqual(
					rows.map((each) => meaningOf(each, settings)),
				);
			}),
			{ numRuns: runs(12, 2500) },
		));

	test('mean the same where cells have units of their own', () =>
		fc.assert(
			fc.property(anyRows(true), options, anyUnit, (rows, chosen, unit) => {
				const settings = settingsOf(unit);
				const again = read(writeTyped(rows, settings, chosen), settings).rows;
				expect(again.map((each) => meaningOf(each, settings))).toEqual(rows.map((each) => meaningOf(each, settings)));
				again.forEach((each, at) => {
					for (const [column, text] of Object.entries(rows[at]!.typed))
						expect(['', ' mm', ' cm', ' in', ' %'].map((unit) => (unit === '' ? text : text.trim() + unit))).toContain(
							each.typed[column as ColumnName],
						);
				});
			}),
			{ numRuns: runs(12, 2500) },
		));

	test('solve the same', () =>
		fc.assert(
			fc.property(anyRows(true), options, anyUnit, ([first], chosen, unit) => {
				const settings = settingsOf(unit);
				const again = read(write([first!], settings, chosen), settings);
				const here = again.rows.map((each) => judgeRow(each, settings));
				expect(here[0]!.solved).toEqual(judgeRow(first!, settings).solved);
				const compared = compareResults(again.results[0]!, { result: here[0]!, unit }, () => []);
				expect(compared).toEqual({ isOther: false, edited: [] });
			}),
			{ numRuns: runs(5, 250) },
		));

	test('a second time give the same file', () =>
		fc.assert(
			fc.property(anyRows(true), options, anyUnit, (rows, chosen, unit) => {
				const settings = settingsOf(unit);
				const once = read(writeTyped(rows, settings, chosen), settings).rows;
				const twice = writeTyped(once, settings, chosen);
				expect(read(twice, settings).rows).toEqual(once);
				expect(writeTyped(read(twice, settings).rows, settings, chosen)).toBe(twice);
			}),
			{ numRuns: runs(12, 2500) },
		));

	test('in Windows-1252, which a spreadsheet may save', () => {
		const rows = [row({ title: 'Blüte – „Ansicht“ 5 €', 'picture width': '16½', note: 'it’s' })];
		expect(read(encodeWindows(write(rows, mm, { delimiter: ';' }))).rows[0]!.typed).toEqual(rows[0]!.typed);
	});
});

test('no file makes it throw', () =>
	fc.assert(
		fc.property(
			fc.oneof(
				fc.string({ unit: 'binary' }),
				fc.string({
					unit: fc.constantFrom('title', 'side', ',', ';', '"', '\n', '\r', 'x', "'", '(mm)'),
					maxLength: 30,
				}),
			),
			(text) => {
				const rows = readRows(text, mm, makeId);
				if ('problem' in rows) expect(rows.problem).toMatch(/^line \d+, column .+: ./s);
				else expect(rows.lines).toHaveLength(rows.rows.length);
			},
		),
		{ numRuns: runs(300, 15_000) },
	));

test('a text that is a size’s name in one column and a number in another is written as each', () => {
	const settings = settingsOf('mm', { sizes: [{ name: '300', width: 300, height: 200 }] });
	const units = { mount: 'cm', 'picture width': 'cm' } as const;
	const rows = [row({ 'picture width': '300', mount: '300' }, { units }), row({ 'picture width': '90' })];
	const file = write(rows, settings);
	expect(columnOf(file, /^picture width/)).toEqual(['picture width (mm)', '300 cm', '90']);
	expect(columnOf(file, /^mount($| \()/)).toEqual(['mount', '300', '']);
});

test('of a long show no piece takes long, those of its header neither', () => {
	let looks = 0;
	const rows = Array.from({ length: 1000 }, (_, place): Row => {
		const typed = { 'picture width': `${300 + (place % 9)}`, top: '70 mm' };
		return {
			...{ id: `r${place}`, order: place },
			get typed() {
				looks++;
				return typed;
			},
		};
	});
	const { settings } = readSettings({});
	const results = rows.map((row) => judgeRow(row, settings));
	const bench = orderBench(rows, results, settings);
	looks = 0;
	let most = 0;
	const pieces: string[] = [];
	for (const piece of writingRows({ rows, results, bench, settings })) {
		pieces.push(piece);
		most = Math.max(most, looks);
		looks = 0;
	}
	expect(pieces.join('')).toBe(writeRows({ rows, results, bench, settings }));
	expect(most).toBeLessThan(rows.length);
});
