import { expect, test } from 'vitest';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import { stepOfBorder } from '../../../../src/core/bench/stepOfBorder.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

test('two prints of one border in boards of two thicknesses are cut in two steps, and each is told its own', () => {
	const { settings } = readSettings({
		mountSize: '600 x 450 mm',
		border: '70 mm',
		boards: [
			{ name: 'Thin', width: 1200, height: 900, thickness: 1 },
			{ name: 'Thick', width: 1200, height: 900, thickness: 2 },
		],
	});
	const rows = ['Thick', 'Thin'].map((board, place) => ({ id: board, order: place, typed: { shape: '3:2', board } }));
	const results = rows.map((row) => judgeRow(row, settings));
	const { steps, stepsOfRows } = orderBench(rows, results, settings);
	for (const [place, { solved }] of results.entries()) {
		const own = stepsOfRows[place]!;
		expect(own.map((number) => steps[number - 1]!.border)).toContain(solved.top);
		for (const border of [solved.side!, solved.top!, solved.bottom!])
			expect(own).toContain(stepOfBorder(steps, own, border));
	}
	const [thick, thin] = results.map(({ solved }, place) => stepOfBorder(steps, stepsOfRows[place]!, solved.side!));
	expect(thick).not.toBe(thin);
	expect(stepOfBorder(steps, [], results[0]!.solved.side!)).toBeUndefined();
});
