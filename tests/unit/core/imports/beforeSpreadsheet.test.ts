import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';

const { settings } = readSettings({ unit: 'mm' });
const found = (column: ColumnName, text: string) =>
	judgeRow({ id: 'a', order: 1, typed: { shape: '3:2', [column]: text } }, settings).findings.find(
		({ code, cells }) => code === 'not-read' && cells.includes(column),
	);

test.each<[column: ColumnName, text: string, level: string, offered: readonly string[]]>([
	['edition', '12-Mar', 'look', ['3/12']],
	['edition', '3. Dez', 'look', ['3/12']],
	['edition', '20.02.2026', 'look', ['2/20']],
	['edition', 'Mrz 25', 'look', ['3/25']],
	['edition', '01.03.2025', 'look', ['1/3', '3/25']],
	['edition', 'Aug-30', 'look', ['8/30']],
	['edition', '46093', 'look', ['3/12']],
	['shape', '03:02:00', 'stop', ['3:2']],
	['shape', '16:09:00', 'stop', ['16:9']],
	['shape', '1. Mai', 'stop', ['1.5', '1/5', '5/1']],
	['shape', '2026-03-02', 'stop', ['2.3', '2/3', '3/2', '3.2']],
	['picture width', '13. Mai', 'stop', ['13.5', '5/13', '5.13']],
	['picture width', '4,5E+02', 'stop', ['450']],
])('%s %j without a value before it: %s, offers %j', (column, text, level, offered) => {
	const finding = found(column, text);
	expect([finding?.level, finding?.message]).toEqual([level, expect.stringContaining('spreadsheet')]);
	const mends = finding?.mends.map(({ label }) => label.replace(/^Set [\w ]+ to /, '')) ?? [];
	expect(mends.filter((mend) => offered.includes(mend))).toEqual(mends);
	expect(mends[0]).toBe(offered[0]);
});

test.each<[column: ColumnName, text: string]>([
	['edition', '3/12'],
	['edition', 'AP 1/2'],
	['edition', 'unique'],
	['edition', 'edition of 12'],
	['edition', '12'],
	['shape', '03:02'],
	['picture width', '450'],
])('nothing of the kind is said of %s %j', (column, text) => {
	expect(found(column, text)).toBeUndefined();
});
