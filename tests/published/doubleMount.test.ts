import { describe, expect, test } from 'vitest';
import { cases } from '../../shared/check-values/doubleMount.json' with { type: 'json' };
import { orderBench } from '../../src/core/bench/orderBench.ts';
import { inches, toInches } from '../../src/core/length/length.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { jobsOf } from '../../src/core/sheets/jobsOf.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';

describe.each(cases)('a double mount with $outerGuideIn in and $innerGuideIn in ($source)', (published) => {
	const [width, height] = published.outerIn as [number, number];
	const { settings } = readSettings({ unit: 'in', boards: [{ name: 'Chalk', width: '40 in', height: '32 in' }] });
	const border = `${published.outerGuideIn}`;
	const typed = {
		...{ 'mount width': `${width}`, 'mount height': `${height}`, side: border, top: border, bottom: border },
		'inner mount': `${published.shownIn}`,
	};
	const rows = [{ id: 'r1', order: 1, typed }];
	const results = rows.map((row) => judgeRow(row, settings));

	test('the outer window first, then the inner one from the same edges', () => {
		const { steps } = orderBench(rows, results, settings);
		expect(steps.map(({ guide, cuts }) => [toInches(guide), cuts.map(({ part }) => part)])).toEqual([
			[published.outerGuideIn, Array(4).fill('mount')],
			[published.innerGuideIn, Array(4).fill('inner mount')],
		]);
	});

	test('the inner blank is smaller', () => {
		const blank = jobsOf(rows, results, settings).jobs[0]!.blanks.find(({ part }) => part === 'inner mount')!;
		const [innerWidth, innerHeight] = published.innerBlankIn as [number, number];
		expect([blank.width, blank.height]).toEqual([inches(innerWidth), inches(innerHeight)]);
	});
});
