import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { readRows, type RowsOfFile, writeRows } from '../../../src/files/csv.ts';
import { rowsOfFile } from './rowsOfFile.ts';

// `csv-spectrum`, a set of delimited files with what a reader has to find in them (BSD-2-Clause).
const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum'));
const names = readdirSync(join(folder, 'csvs')).map((file) => file.replace(/\.csv$/, ''));
const { settings } = readSettings({});

/** The rows of a file of the set, whose headers are none of ours: its first column is said to be titles. */
function read(file: Uint8Array | string, first: string): RowsOfFile {
	const rows = rowsOfFile(file, settings, (place) => `row ${place}`, { matching: { [first]: 'title' } });
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}

/**
 * What has to be found. Of one file the set gives its row alone, with another phone number than stands in the file: there
 * the number is the file's.
 */
function expectedOf(name: string): Record<string, string>[] {
	const said = JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8')) as
		| Record<string, string>
		| Record<string, string>[];
	return Array.isArray(said) ? said : [{ ...said, 'Contact Phone Number': '2095257564' }];
}

const cellsOf = ({ rows }: RowsOfFile, first: string) =>
	rows.map(({ typed, extra }) => ({ [first]: typed.title ?? '', ...extra }));

test('the set is there', () => expect(names.length).toBeGreaterThan(10));

test.each(names)('%s is read as the set says, and the same when it has been written', (name) => {
	const bytes = readFileSync(join(folder, 'csvs', `${name}.csv`));
	const expected = expectedOf(name);
	const first = Object.keys(expected[0]!)[0]!;
	const rows = read(bytes, first);
	expect(cellsOf(rows, first)).toEqual(expected);
	const results = rows.rows.map((row) => judgeRow(row, settings));
	const bench = orderBench(rows.rows, results, settings);
	const written = writeRows({ rows: rows.rows, results, settings, bench });
	const again = readRows(written, settings, (place) => `row ${place}`);
	if ('problem' in again) throw new Error(again.problem);
	expect(cellsOf(again, first)).toEqual(expected);
});
