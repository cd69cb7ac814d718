import { expect, test } from 'vitest';
import exampleRows from '../../../shared/samples/example.csv?raw';
import exampleShow from '../../../shared/samples/example.evenhang.json?raw';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readRows } from '../../../src/files/csv.ts';
import { readShowFile } from '../../../src/files/showFile.ts';

const show = readShowFile(exampleShow);
if ('problem' in show) throw new Error(show.problem);
const { rows, settings: typed } = show.value;
const { settings, problems } = readSettings(typed);

/** The codes that a row's note names in brackets, sorted. */
const codesOfNote = ({ typed: { note = '' } }: Row) =>
	(/\(([a-z, -]+)\)$/.exec(note)?.[1] ?? '')
		.split(', ')
		.filter((code) => code !== '')
		.sort();

test('the example is thirty prints by two makers, and its settings are read', () => {
	expect(problems).toEqual([]);
	expect(rows).toHaveLength(30);
	expect(new Set(rows.map(({ typed: { maker } }) => maker)).size).toBe(2);
});

test.each(rows)('print $typed.number, $typed.title, is told what its note says', (row) => {
	const codes = judgeRow(row, settings).findings.map(({ code }) => code);
	expect([...new Set(codes)].sort()).toEqual(codesOfNote(row));
});

test('most of its rows are quiet, and a few hold the usual slips', () => {
	const quiet = rows.filter((row) => judgeRow(row, settings).findings.length === 0);
	expect(quiet.length).toBeGreaterThanOrEqual(20);
	expect(quiet.length).toBeLessThanOrEqual(25);
});

test('the file of rows has the same rows as the show file', () => {
	const read = readRows(exampleRows, settings, (place) => `example-${String(place).padStart(2, '0')}`);
	expect(read).toMatchObject({ rows, notes: [] });
});
