import { describe, expect, test } from 'vitest';
import { toInches, toMm } from '../../src/core/length/length.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../src/core/settings/settings.ts';
import { jobsOf } from '../../src/core/sheets/jobsOf.ts';
import { packBoards } from '../../src/core/sheets/packBoards.ts';
import type { Typed } from '../../src/core/show/row.ts';
import { planSticks } from '../../src/core/sticks/planSticks.ts';
import { stickJobsOf } from '../../src/core/sticks/stickJobsOf.ts';
import { cases } from '../../shared/check-values/sticks.json' with { type: 'json' };

function showOf(typed: Typed, show: TypedSettings) {
	const { settings, problems } = readSettings(show);
	expect(problems).toEqual([]);
	const rows = [{ id: 'r', order: 1, typed }];
	const results = rows.map((row) => judgeRow(row, settings));
	return { rows, results, settings };
}

function planned(typed: Typed, show: TypedSettings) {
	const { rows, results, settings } = showOf(typed, show);
	const [job] = stickJobsOf(rows, results, settings);
	return { job: job!, plan: planSticks(job!, { secondsLeft: () => 10 }) };
}

const frame = { name: 'Plain', depth: 60 };
/** The sources count the moulding from the rebate: with a lip its face is so much wider. */
const lipMm = 5;
const lipIn = 0.25;

describe('legs of a made frame', () => {
	test(cases.byLength.source, () => {
		const { insideMm, mouldingMm, toleranceMm, totalMm, stickMm, sticks } = cases.byLength;
		const { job, plan } = planned(
			{ mount: `${insideMm.join(' x ')} mm`, shape: '3:4', frame: 'Plain' },
			{
				frames: [{ ...frame, moulding: mouldingMm + lipMm, lip: lipMm, clearance: 0, stick: stickMm }],
				saw: toleranceMm / 4,
				border: 30,
				leastBorder: 0,
			},
		);
		expect(job.legs.reduce((sum, { length }) => sum + toMm(length) + toMm(job.saw), 0)).toBeCloseTo(totalMm, 6);
		expect([plan.sticks.length, plan.proven]).toEqual([sticks, true]);
	});
	test(cases.cutList.source, () => {
		const { insideIn, mouldingIn, eachIn, railsIn, perStickIn, stickIn, sticks } = cases.cutList;
		const { job, plan } = planned(
			{ mount: `${insideIn.join(' x ')} in`, shape: '4:5', frame: 'Plain' },
			{
				unit: 'in',
				frames: [
					{ ...frame, moulding: `${mouldingIn + lipIn} in`, lip: `${lipIn} in`, clearance: 0, stick: `${stickIn} in` },
				],
				saw: eachIn,
			},
		);
		expect([...new Set(job.legs.map(({ length }) => toInches(length)))]).toEqual(railsIn);
		expect(plan.sticks).toHaveLength(sticks);
		for (const { rest } of plan.sticks) expect(stickIn - toInches(rest)).toBeCloseTo(perStickIn, 9);
	});
	test.each(cases.unitedInches.rows)(
		`$unitedInches united inches in $mouldingIn in: ${cases.unitedInches.source}`,
		({ insideIn, unitedInches, mouldingIn, feet }) => {
			const { job } = planned(
				{ mount: `${insideIn.join(' x ')} in`, shape: '4:5', frame: 'Plain' },
				{
					unit: 'in',
					frames: [
						{ ...frame, moulding: `${mouldingIn + lipIn} in`, lip: `${lipIn} in`, clearance: 0, stick: '10 ft' },
					],
					saw: cases.unitedInches.eachIn,
				},
			);
			expect(insideIn.reduce((sum, side) => sum + side, 0)).toBe(unitedInches);
			const inches = job.legs.reduce((sum, { length }) => sum + toInches(length) + toInches(job.saw), 0);
			expect(Math.round((inches / 12) * 10) / 10).toBe(feet);
		},
	);
	test(cases.outer.source, () => {
		const { insideIn, mouldingIn, lip, outerIn } = cases.outer;
		const { job } = planned(
			{ mount: `${insideIn} x ${insideIn} in`, shape: '1', frame: 'Plain' },
			{
				unit: 'in',
				frames: [{ ...frame, moulding: `${mouldingIn} in`, lip, clearance: 0, stick: '8 ft' }],
				border: '1 in',
				leastBorder: 0,
			},
		);
		expect(new Set(job.legs.map(({ length }) => toInches(length)))).toEqual(new Set([outerIn]));
	});
});

test.each(Object.entries({ mm: cases.yield.metric, in: cases.yield.inch }))(
	`in %s: ${cases.yield.source}`,
	(unit, { sheet, blank, pieces }) => {
		const [width, height] = sheet.map((side) => `${side} ${unit}`);
		for (const material of ['glazing', 'backing'] as const) {
			const { rows, results, settings } = showOf(
				{
					mount: `${blank.join(' x ')} ${unit}`,
					shape: '4:5',
					copies: `${pieces}`,
					[material]: 'Sheet',
					frame: 'none',
				},
				{ unit, [material]: [{ name: 'Sheet', width, height }] },
			);
			const jobs = jobsOf(rows, results, settings).jobs.filter((job) => job.material === material);
			const [plan] = packBoards(jobs, { secondsLeft: () => 1 });
			expect([plan!.count, plan!.layouts[0]!.blanks.length]).toEqual([1, pieces]);
		}
	},
);
