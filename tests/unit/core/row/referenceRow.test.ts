import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Length, length } from '../../../../src/core/length/length.ts';
import { type Cells, sizeKeys } from '../../../../src/core/row/cells.ts';
import { solvedKeys } from '../../../../src/core/row/solvedRow.ts';
import { solveRow } from '../../../../src/core/row/solveRow.ts';
import type { Settings } from '../../../../src/core/settings/settings.ts';
import { coarsened, crowded, randomCells, randomSettings } from './randomRows.ts';
import { referenceRow } from './referenceRow.ts';
import { runs } from '../../../soak.ts';

const rows = fc.sample(fc.tuple(randomCells, randomSettings), {
	seed: fc.readConfigureGlobal().seed ?? 0,
	numRuns: runs(100, 10_000),
});

/** A row as both programs work it out, so that a difference is seen at a glance. */
const byBoth = (cells: Cells, settings: Settings) => {
	const { solved, width, height } = solveRow(cells, settings);
	const second = referenceRow(cells, settings);
	const figures = (figure: (key: (typeof solvedKeys)[number]) => bigint | Length | undefined) =>
		Object.fromEntries(solvedKeys.map((key) => [key, figure(key) === undefined ? null : Number(figure(key))]));
	return [
		{ ...figures((key) => solved[key]), width, height },
		{ ...figures((key) => second.solved[key]), width: second.width, height: second.height },
	] as const;
};

const sameByBoth = (cells: Cells, settings: Settings) => {
	const [first, second] = byBoth(cells, settings);
	expect(first, JSON.stringify({ cells, settings })).toEqual(second);
};

test('a second program for the same rules, in exact fractions, gives the same to the last unit', () =>
	rows.forEach(([cells, settings]) => sameByBoth(cells, settings)));

test.each([5, 100])('and where sums, squares and ties happen, sizes being multiples of %i mm', (step) =>
	rows.slice(0, rows.length / 3).forEach((row) => sameByBoth(...coarsened(row, step))),
);

test('and where there is room for next to no borders', () => rows.forEach((row) => sameByBoth(...crowded(row))));

test('and where results are typed in', () =>
	rows.slice(0, rows.length / 3).forEach((row, place) => {
		const [cells, settings] = coarsened(row, 5);
		const { solved } = solveRow(cells, settings);
		const shown = sizeKeys.filter((key, i) => solved[key] !== undefined && (place + i) % 3 === 0);
		const typed = shown.map((key): [string, Length] => [key, length(Math.round(solved[key]! / 10) * 10)]);
		const [first, second] = byBoth({ ...cells, ...Object.fromEntries(typed) }, settings);
		const isNear = (a: unknown, b: unknown) =>
			typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 10 : a === b;
		for (const key of Object.keys(first) as (keyof typeof first)[])
			expect(isNear(first[key], second[key]), `${key}: ${first[key]} and ${second[key]}, row ${place}`).toBe(true);
	}));
