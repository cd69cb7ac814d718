import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { type ColumnName, isColumnName } from '../../../../src/core/show/columns.ts';
import type { CellTexts, Row } from '../../../../src/core/show/row.ts';

/** Mount 600 × 450 mm, border 70 mm, bottom weight 12 %, overlap 3 mm, ruler 1 mm. */
export const wideShow: TypedSettings = {
	unit: 'mm',
	mountSize: '600 x 450 mm',
	border: '70 mm',
	bottomWeight: '12 %',
	overlap: '3 mm',
	ruler: '1 mm',
};

/**
 * A row in one line: `picture 456 x 306, side 80, mount fit`. A size of two lengths goes into the width and height cells
 * of its name; `paper` and `mount` are cells of their own.
 */
export function rowOf(line: string): Row {
	const typed: Partial<Record<ColumnName, string>> = {};
	for (const part of line.split(',').map((text) => text.trim())) {
		if (part === '') continue;
		const pair = /^(picture|window|sheet) (.+?) x (.+)$/.exec(part);
		if (pair) {
			typed[`${pair[1]} width` as ColumnName] = pair[2]!;
			typed[`${pair[1]} height` as ColumnName] = pair[3]!;
			continue;
		}
		const words = part.split(' ');
		const two = words.slice(0, 2).join(' ');
		const column = isColumnName(two) ? two : words[0]!;
		if (!isColumnName(column)) throw new TypeError(`no column in “${part}”`);
		typed[column] = part.slice(column.length).trim();
	}
	return { id: 'row', order: 1, typed };
}

/** What a row is told, in a show. */
export const resultOf = (row: Row, show: TypedSettings = wideShow) => judgeRow(row, readSettings(show).settings);

/** The codes that a row is told. */
export const codesOf = (line: string, show?: TypedSettings) =>
	resultOf(rowOf(line), show).findings.map(({ code }) => code);

/** The row with some cells typed, or cleared. */
export function withChange(row: Row, change: CellTexts): Row {
	const typed = Object.entries({ ...row.typed, ...change }).filter(([, text]) => text !== '');
	return { ...row, typed: Object.fromEntries(typed) };
}
