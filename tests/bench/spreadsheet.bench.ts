import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { bench, describe, expect } from 'vitest';
import { initSync, Model } from '@ironcalc/wasm';
import { toMm } from '../../src/core/length/length.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { Row } from '../../src/core/show/row.ts';

/**
 * One default of the show changes, and every row follows: our rows, with all rules and findings, beside a general-purpose
 * spreadsheet engine that does the arithmetic of one kind of row alone (typed picture, the show's mount), as formulas.
 */
const rowCount = 10_000;

const pictures = Array.from({ length: rowCount }, (_, i) => ({ widthMm: 380 + (i % 97), heightMm: 250 + (i % 61) }));
const rows: readonly Row[] = pictures.map(({ widthMm, heightMm }, order) => ({
	id: `row ${order}`,
	order,
	typed: { 'picture width': `${widthMm}`, 'picture height': `${heightMm}` },
}));
const settingsOf = (overlapMm: number) =>
	readSettings({ mountSize: '600 x 450 mm', border: '70 mm', bottomWeight: '12 %', overlap: overlapMm }).settings;

initSync({ module: await readFile(createRequire(import.meta.url).resolve('@ironcalc/wasm/wasm_bg.wasm')) });
const model = new Model('bench', 'en', 'UTC', 'en');

/** The show's settings stand in column N: mount width and height, overlap, bottom weight, ruler, tolerance, smallest border. */
const [width, height, overlap, weight, ruler, tolerance, least] = ['N1', 'N2', 'N3', 'N4', 'N5', 'N6', 'N7'].map(
	(cell) => `$${cell[0]}$${cell[1]}`,
);
const formulas = (row: number): string[] => [
	`=CEILING((${width}-(A${row}-2*${overlap}))/2,${ruler})`, // C: side
	`=ROUND((${height}-(B${row}-2*${overlap}))/(2+${weight})/${ruler},0)*${ruler}`, // D: top
	`=CEILING(${height}-(B${row}-2*${overlap})-D${row},${ruler})`, // E: bottom
	`=${width}-2*C${row}`, // F: window width
	`=${height}-D${row}-E${row}`, // G: window height
	`=(A${row}-F${row})/2`, // H: overlap at the sides
	`=(B${row}-G${row})/2`, // I: overlap at the top
	`=IF(ABS(C${row}-D${row})>${tolerance}*MIN(C${row},D${row}),"uneven","")`,
	`=IF(MIN(C${row},D${row},E${row})<${least},"thin-border","")`,
	`=IF(E${row}<D${row},"top-heavy","")`,
];
model.pauseEvaluation();
[600, 450, 3, 0.12, 1, 0.15, 40].forEach((value, i) => {
	model.setUserInput(0, i + 1, 14, `${value}`);
});
pictures.forEach(({ widthMm, heightMm }, i) => {
	[`${widthMm}`, `${heightMm}`, ...formulas(i + 1)].forEach((input, column) => {
		model.setUserInput(0, i + 1, column + 1, input);
	});
});
model.resumeEvaluation();
model.evaluate();

// Both say the same, or the comparison is of nothing.
for (const place of [0, 1, 777, 9999]) {
	const { solved } = judgeRow(rows[place]!, settingsOf(3));
	const cells = ['side', 'top', 'bottom', 'windowWidth', 'windowHeight'] as const;
	expect(cells.map((_, i) => Number(model.getFormattedCellValue(0, place + 1, 3 + i)))).toEqual(
		cells.map((key) => toMm(solved[key]!)),
	);
}

describe(`the overlap of the show changes, ${rowCount} rows follow`, () => {
	let turn = 0;
	const fewTimes = { iterations: 5, time: 0, warmupIterations: 1, warmupTime: 0 };

	const judgeAll = () => {
		const settings = settingsOf(3 + (turn++ % 2));
		for (const row of rows) judgeRow(row, settings);
	};
	bench('rows with all rules and findings', judgeAll, fewTimes);

	const evaluateAll = () => {
		model.setUserInput(0, 3, 14, `${3 + (turn++ % 2)}`);
		model.evaluate();
	};
	bench('spreadsheet engine, the arithmetic of these rows alone', evaluateAll, fewTimes);
});
