import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isSame, type Length, length, sameWithin, toMm } from '../../../../src/core/length/length.ts';
import { type Cells, type SizeKey, sizeKeys } from '../../../../src/core/row/cells.ts';
import { solveRow } from '../../../../src/core/row/solveRow.ts';
import { readCells } from '../../../../src/core/row/readCells.ts';
import type { Solution } from '../../../../src/core/row/solution.ts';
import type { Settings } from '../../../../src/core/settings/settings.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { rowOf, wideShow } from '../findings/rowOf.ts';
import { randomCells, randomSettings } from './randomRows.ts';
import { runs } from '../../../soak.ts';

/** Rows tried for each property, more in `npm run soak`. They are made once, for making them takes longest. */
const rows = fc.sample(fc.tuple(randomCells, randomSettings), {
	seed: fc.readConfigureGlobal().seed ?? 0,
	numRuns: runs(1000, 40_000),
});
const solutions = rows.map(([cells, settings]) => solveRow(cells, settings));

/** Checks every row; the row that fails stands in the message. */
function forRows(check: (cells: Cells, settings: Settings, solution: Solution) => void) {
	rows.forEach(([cells, settings], place) => {
		try {
			check(cells, settings, solutions[place]!);
		} catch (cause) {
			throw new Error(`row ${place}: ${JSON.stringify({ cells, settings })}`, { cause });
		}
	});
}

const example = readSettings(wideShow).settings;

const fits = ({ width, height }: Solution) => width === 'fits' && height === 'fits';

/** A result as it would be typed: rounded to 1 nm. */
const typedAs = (value: Length): Length => length(Math.round(value / 10) * 10);

function sameSizes(is: Solution, should: Solution, within = sameWithin) {
	for (const key of sizeKeys) {
		const [a, b] = [is.solved[key], should.solved[key]];
		expect(a === undefined ? undefined : Math.abs(a - b!) <= within, `${key}: ${a} and ${b}`).toBe(
			b === undefined ? undefined : true,
		);
	}
}

const hasSameSizes = (is: Solution, should: Solution) =>
	sizeKeys.every((key) => {
		const [a, b] = [is.solved[key], should.solved[key]];
		return a === undefined || b === undefined ? a === b : isSame(a, b);
	});

test('mount = borders + window on both axes, to the last unit', () =>
	forRows((cells, _, { solved, width, height }) => {
		const slack = (keys: SizeKey[]) => (keys.every((key) => cells[key] !== undefined) ? sameWithin : 0);
		if (width === 'fits')
			expect(Math.abs(solved.mountWidth! - 2 * solved.side! - solved.windowWidth!)).toBeLessThanOrEqual(
				slack(['side', 'windowWidth']),
			);
		if (height === 'fits')
			expect(Math.abs(solved.mountHeight! - solved.top! - solved.bottom! - solved.windowHeight!)).toBeLessThanOrEqual(
				slack(['top', 'bottom', 'windowHeight']),
			);
	}));

test('typed cells are unchanged', () =>
	forRows((cells, _, { solved }) => {
		for (const key of sizeKeys) if (cells[key] !== undefined) expect(solved[key], key).toBe(cells[key]);
	}));

test('sizes and borders that come out are above zero', () =>
	forRows((_, __, { solved, width, height }) => {
		if (width === 'fits')
			for (const key of ['mountWidth', 'windowWidth', 'pictureWidth', 'side'] as const)
				expect(solved[key], key).toBeGreaterThan(0);
		if (height === 'fits')
			for (const key of ['mountHeight', 'windowHeight', 'pictureHeight', 'top', 'bottom'] as const)
				expect(solved[key], key).toBeGreaterThan(0);
	}));

test('all nine results typed in give the same nine', () =>
	forRows((cells, settings, solution) => {
		if (!fits(solution)) return;
		const nine = Object.fromEntries(sizeKeys.map((key) => [key, typedAs(solution.solved[key]!)]));
		const typed = { ...cells, ...nine, overlap: undefined, reveal: undefined, signingSpace: undefined };
		sameSizes(solveRow(typed, settings), solution);
	}));

test('typing the side that a row shows leaves every size', () =>
	forRows((cells, settings, solution) => {
		const { side } = solution.solved;
		if (side === undefined || cells.side !== undefined) return;
		sameSizes(solveRow({ ...cells, side: typedAs(side) }, settings), solution);
	}));

// With a border typed already, the same typed cells can come from two rows that show different sizes: side 20 typed where
// window 160 shows, and window 160 typed where side 20 shows. The side is then taken for the one that was shown.
const hasBorder = ({ side, top, bottom }: Cells) => side !== undefined || top !== undefined || bottom !== undefined;

test.each([
	['windowWidth', 'windowHeight'],
	['windowHeight', 'windowWidth'],
] as const)('typing the %s that a row shows leaves every size', (key, other) =>
	forRows((cells, settings, solution) => {
		const shown = solution.solved[key];
		if (shown === undefined || cells[key] !== undefined || hasBorder(cells)) return;
		const is = solveRow({ ...cells, [key]: typedAs(shown) }, settings);
		if (hasSameSizes(is, solution)) return;
		// So can a window's width and height: this one typed and the other shown, or the other way round.
		const typed = cells[other];
		const twin = solveRow({ ...cells, [key]: typedAs(shown), [other]: undefined }, settings);
		const isTwin = typed !== undefined && twin.solved[other] !== undefined && isSame(twin.solved[other], typed);
		sameSizes(is, isTwin ? twin : solution);
	}),
);

test('typing all three borders that a row shows leaves every size', () =>
	forRows((cells, settings, solution) => {
		if (!fits(solution) || hasBorder(cells)) return;
		const { side, top, bottom } = solution.solved;
		const typed = { side: typedAs(side!), top: typedAs(top!), bottom: typedAs(bottom!) };
		sameSizes(solveRow({ ...cells, ...typed }, settings), solution);
	}));

test('a window never covers less, or reveals less, than asked of a typed picture', () =>
	forRows((cells, _, { solved, cover, width, height }) => {
		if (width === 'fits' && cells.pictureWidth !== undefined && !cover.width.isStated) {
			if (cover.reveal === undefined) expect(solved.overlapSide! + sameWithin).toBeGreaterThanOrEqual(cover.overlap);
			else expect(0 - solved.overlapSide! + sameWithin).toBeGreaterThanOrEqual(cover.reveal);
		}
		if (height === 'fits' && cells.pictureHeight !== undefined && !cover.height.isStated) {
			if (cover.reveal === undefined) expect(solved.overlapTop! + sameWithin).toBeGreaterThanOrEqual(cover.overlap);
			else expect(0 - solved.overlapTop! + sameWithin).toBeGreaterThanOrEqual(cover.reveal);
			if (cover.signingSpace > 0)
				expect(0 - solved.overlapBottom! + sameWithin).toBeGreaterThanOrEqual(cover.signingSpace);
		}
	}));

test('a typed border that is nearly what is shown leaves the sum exact', () => {
	const show = { ...wideShow, border: '30 mm', bottomWeight: '33.3333 %', overlap: '1 mm', reveal: '1.5875 mm' };
	const { settings } = readSettings(show);
	const row = rowOf('mount 200 x 316, window height 53, picture width 50, side 20, bottom 149.999963');
	const { solved } = solveRow(readCells(row, settings).cells, settings);
	expect(solved.mountHeight).toBe(solved.top! + solved.windowHeight! + solved.bottom!);
});

test('a typed window that is nearly what is shown leaves the sums exact', () => {
	const { settings } = readSettings({
		...wideShow,
		mountSize: '200.000017 x 207',
		border: '52.3875 mm',
		overlap: '1 mm',
	});
	const solvedOf = (line: string) => solveRow(readCells(rowOf(line), settings).cells, settings).solved;
	const wide = solvedOf('window 56 x 130, picture width 57, overlap 0');
	expect(wide.windowWidth).toBe(length(560_000_000));
	expect(wide.mountWidth).toBe(2 * wide.side! + wide.windowWidth!);
	// What is tried beside it, between two typed sizes, may be a mount that no two sides divide to the last unit.
	const odd = {
		...readCells(rowOf('window 56 x 130, picture width 57, overlap 0'), settings).cells,
		mountWidth: length(2_000_000_171),
	};
	expect(solveRow(odd, settings).solved.windowWidth).toBe(length(560_000_000));
	const tall = solvedOf('mount 250 x 303, window 50.000019 x 200, picture width 52.3875, side 99');
	expect(tall.pictureHeight! - tall.windowHeight!).toBe(tall.overlapTop! + tall.overlapBottom!);
	const low = solvedOf('mount 303 x 250, window 453 x 50.000019, picture height 52.3875, bottom 57, side 144');
	expect(low.pictureHeight! - low.windowHeight!).toBe(low.overlapTop! + low.overlapBottom!);
});

test('left and right are one border, and what is covered adds up', () =>
	forRows((cells, _, { solved }) => {
		const { pictureWidth, windowWidth, overlapSide, pictureHeight, windowHeight, overlapTop, overlapBottom } = solved;
		const inner = 2 * (cells.innerMount ?? 0);
		if (overlapSide !== undefined) expect(isSame(pictureWidth! - (windowWidth! - inner), 2 * overlapSide)).toBe(true);
		if (overlapTop !== undefined) expect(pictureHeight! - (windowHeight! - inner)).toBe(overlapTop + overlapBottom!);
	}));

const shownBy = (line: string) => {
	const solution = solveRow(readCells(rowOf(line), example).cells, example);
	const figures = (Object.entries(solution.solved) as [string, Length | undefined][]).map(
		([key, value]): [string, number | undefined] => [key, value && toMm(value)],
	);
	return { ...Object.fromEntries(figures), width: solution.width, height: solution.height } as Record<string, unknown>;
};

// Each was found by comparing with a second program for the same rules, in exact fractions.
test.each([
	[
		'a named size lies as a typed side says, where the other axis is in conflict',
		'mount 400 x 500, mount height 400, picture height 373, top 101, bottom 67',
		{ mountWidth: 500, windowWidth: 298, height: 'conflict' },
	],
	[
		'a named size lies as a typed side in conflict says',
		'mount 500 x 400, mount width 400, window width 250, side 70, picture 300 x 200',
		{ mountHeight: 500, top: 144, bottom: 162, width: 'conflict' },
	],
	[
		'a named size is turned where only the other way has room',
		'mount 400 x 500, picture 480 x 470, window width 460, overlap 3',
		{ mountHeight: 500, top: 17, bottom: 19, width: 'conflict', height: 'fits' },
	],
	[
		'a named size without room keeps to the typed side',
		'mount 600 x 450, mount width 600, picture 183 x 519',
		{ mountWidth: 600, side: 212, mountHeight: 450, height: 'does not fit' },
	],
	[
		'the optical centre of a window that does not fit is none',
		'mount width 60, mount height 450, bottom weight optical centre',
		{ width: 'does not fit', top: 70, bottom: 70 },
	],
	[
		'an axis in conflict tells no overlap',
		'picture width 300, window width 290, overlap 3',
		{ overlapSide: undefined, width: 'conflict' },
	],
	[
		'a typed side under one graduation does not turn the show’s mount away',
		'side 0.5',
		{ mountWidth: 600, windowWidth: 599 },
	],
	[
		'a blank top is not rounded over a typed bottom, with the mount open too',
		'bottom 60.3, mount fit, bottom weight 0',
		{ top: 60, bottom: 60.3, height: 'open' },
	],
	[
		'a top that only rounding down would leave at nothing is not shown, with the mount open too',
		'bottom 0.5, mount fit, bottom weight 0',
		{ top: undefined, bottom: 0.5, height: 'open' },
	],
])('%s', (_, line, expected) => expect(shownBy(line)).toMatchObject(expected));
