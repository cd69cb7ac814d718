import { describe, expect, test } from 'vitest';
import { isSameShow } from '../../../src/app/backupStandings.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { noFilter } from '../../../src/core/grid/filter.ts';
import { answers } from '../../../src/core/grid/filterRows.ts';
import type { Exchange } from '../../../src/core/merge/exchange.ts';
import { mergePrints } from '../../../src/core/merge/mergePrints.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { countPrints, isBlankRow, printsOf } from '../../../src/core/show/blankRow.ts';
import { columns } from '../../../src/core/show/columns.ts';
import { backupOf } from '../../../src/files/backupFile.ts';
import { writeShowFile } from '../../../src/files/showFile.ts';
import { filterChoices } from '../../../src/ui/grid/filterChoices.ts';
import { writeRows } from '../../../src/files/writeRows.ts';

const { settings } = readSettings({});
const rows = [
	{ id: 'a', order: 1, typed: { title: 'Low water' } },
	{ id: 'b', order: 2, typed: {} },
	{ id: 'c', order: 3, typed: {}, extra: { lender: 'Ilse Tarnow' } },
	{ id: 'd', order: 4, typed: {}, extra: {} },
];

test('a row in which nothing is typed, and with which nothing came, is no print', () => {
	expect(rows.map(isBlankRow)).toEqual([false, true, false, true]);
	expect(countPrints(rows)).toBe(2);
});

test.each([true, false])('it is not written, with ids %s; those after it keep their results', (hasIds) => {
	const results = rows.map((row) => judgeRow(row, settings));
	const text = writeRows({ rows, results, settings, bench: orderBench(rows, results, settings) }, { hasIds });
	const [, first, second, ...others] = text.trim().split('\r\n');
	expect([first, second?.endsWith('Ilse Tarnow'), others]).toEqual([expect.stringContaining('Low water'), true, []]);
});

describe('wherever prints are counted, compared, offered or given out, it is none', () => {
	const show = { name: 'Spring', settings: {}, rows };
	const results = rows.map((row) => judgeRow(row, settings));

	test('a show file and a backup leave it out, and a backup is the same as the show that has it', () => {
		const ids = (text: string) => (JSON.parse(text) as { rows: { id: string }[] }).rows.map(({ id }) => id);
		expect(ids(writeShowFile(show))).toEqual(['a', 'c']);
		const kept = { id: 's', ...show };
		const [backed] = JSON.parse(JSON.stringify(backupOf([{ show: kept, isArchived: false }])['shows'])) as [
			{ rows: { id: string }[] },
		];
		expect(backed.rows.map(({ id }) => id)).toEqual(['a', 'c']);
		expect(isSameShow(kept, { ...kept, rows: printsOf(rows) })).toBe(true);
		expect(isSameShow(kept, { ...kept, rows: rows.slice(0, 1) })).toBe(false);
	});

	test('filters do not offer the mount that the show would give it, nor find it', () => {
		const untyped = rows.slice(1, 2);
		expect(filterChoices(untyped, results.slice(1, 2), settings).mounts).toEqual([]);
		const source = { row: untyped[0]!, result: results[1]!, settings, cut: 'not cut' as const };
		expect(answers({ ...noFilter, check: 'none' }, source)).toBe(false);
		expect(answers(noFilter, source), 'nothing is left out where nothing is asked').toBe(true);
	});

	test('a list that comes back without it has removed nothing, and one that brings it adds nothing', () => {
		const given = {
			...{ id: 'x', direction: 'given', fileName: 'rows.csv', at: 1, unit: 'mm', rows },
		} as const satisfies Exchange;
		const names = columns.map(({ name }) => name);
		const makeId = () => 'made';
		const back = mergePrints(rows, { rows: rows.slice(0, 1), columns: names }, [given], settings, makeId);
		expect(back.rows.map(({ kind, id }) => [kind, id])).toEqual([['removed there', 'c']]);
		expect(mergePrints(rows, { rows: rows.slice(0, 1), columns: names }, [], settings, makeId).onlyHere).toBe(1);
		const brought = mergePrints(rows.slice(0, 1), { rows, columns: names }, [], settings, makeId);
		expect(brought.rows.map(({ kind, id }) => [kind, id])).toEqual([['added', 'c']]);
	});
});
