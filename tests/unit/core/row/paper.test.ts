import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { isSame, type Length, length, mm, sameWithin, toMm } from '../../../../src/core/length/length.ts';
import { type Cells, type SizeKey, sizeKeys } from '../../../../src/core/row/cells.ts';
import { hingeCount } from '../../../../src/core/row/hinges.ts';
import { layHinges } from '../../../../src/core/row/layHinges.ts';
import { isHeld, printableSize, wayOf } from '../../../../src/core/row/paper.ts';
import { pictureOnPaper } from '../../../../src/core/row/paperPlace.ts';
import { readCells } from '../../../../src/core/row/readCells.ts';
import { solvedKeys } from '../../../../src/core/row/solvedRow.ts';
import { solveRow } from '../../../../src/core/row/solveRow.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Settings, TypedSettings } from '../../../../src/core/settings/settings.ts';
import { codesOf, rowOf, wideShow } from '../findings/rowOf.ts';
import { coarsened, randomPapered, randomSettings } from './randomRows.ts';
import { referenceRow } from './referenceRow.ts';
import { runs } from '../../../soak.ts';

const rows = fc.sample(fc.tuple(randomPapered, randomSettings), {
	seed: fc.readConfigureGlobal().seed ?? 0,
	numRuns: runs(200, 20_000),
});
const solutions = rows.map(([cells, settings]) => solveRow(cells, settings));

function sameByBoth(cells: Cells, settings: Settings) {
	const { solved, width, height } = solveRow(cells, settings);
	const second = referenceRow(cells, settings);
	const figures = (of: (key: (typeof solvedKeys)[number]) => bigint | Length | undefined) =>
		Object.fromEntries(solvedKeys.map((key) => [key, of(key) === undefined ? null : Number(of(key))]));
	expect({ ...figures((key) => solved[key]), width, height }, JSON.stringify({ cells, settings })).toEqual({
		...figures((key) => second.solved[key]),
		width: second.width,
		height: second.height,
	});
}

test('a second program works out papers and floats the same, to the last unit', () =>
	rows.forEach(([cells, settings]) => sameByBoth(cells, settings)));

test('and where sums, squares and ties happen', () =>
	rows.slice(0, rows.length / 2).forEach((row) => sameByBoth(...coarsened(row, 50))));

test('the rows that are tried meet papers, rolls and floats of every kind', () => {
	const bound = solutions.filter(({ boundByPaper }) => boundByPaper);
	expect(bound.length * 40).toBeGreaterThan(rows.length);
	expect(bound.filter(({ boundByPaper }) => boundByPaper!.sides.length === 2).length).toBeGreaterThan(0);
	const floats = rows.filter(([{ isFloat }]) => isFloat);
	expect(floats.filter(([{ paper }]) => paper && paper.height === undefined).length).toBeGreaterThan(5);
});

/** The row without typed cells that say what it shows anyway: on the paper that can be what without it would be more. */
function withoutShown(cells: Cells, settings: Settings): Cells {
	for (const key of ['side', 'top', 'bottom', 'windowWidth', 'windowHeight'] as const) {
		const blank = { ...cells, [key]: undefined };
		if (cells[key] === undefined || !isShown(cells[key], solveRow(blank, settings).solved[key])) continue;
		return withoutShown(blank, settings);
	}
	return cells;
}

const isShown = (typed: Length, shown: Length | undefined) => shown !== undefined && isSame(typed, shown);

test('paper never makes a picture larger, nor changes one that it holds', () =>
	rows.forEach(([row, settings], place) => {
		if (row.isFloat || !row.paper) return;
		const cells = withoutShown(row, settings);
		const solution = cells === row ? solutions[place]! : solveRow(cells, settings);
		const without = solveRow({ ...cells, paper: undefined }, settings);
		const { pictureWidth: width, pictureHeight: height } = without.solved;
		const picture = width && height ? { width, height } : undefined;
		const printable = picture && printableSize(row.paper, wayOf(picture), without.cover, settings);
		const said = () => `row ${place}: ${JSON.stringify({ cells: row, settings })}`;
		if (!picture || (printable && isHeld(picture, printable))) expect(solution, said()).toEqual(without);
		if (solution.boundByPaper === undefined) return;
		expect(solution.solved.pictureWidth, said()).toBeLessThanOrEqual(picture!.width + sameWithin);
		expect(solution.solved.pictureHeight, said()).toBeLessThanOrEqual(picture!.height + sameWithin);
	}));

test('margins and picture sum to the paper, to the last unit', () =>
	rows.forEach(([cells, settings], place) => {
		const { solved } = solutions[place]!;
		const on = pictureOnPaper(cells, solutions[place]!, settings);
		if (!on) return;
		expect(on.left + solved.pictureWidth! + on.right).toBe(on.paper.width);
		expect(on.top + solved.pictureHeight! + on.bottom).toBe(on.paper.height);
		if (cells.marginLeft === undefined) expect(Math.abs(on.left - on.right)).toBeLessThanOrEqual(1);
		else expect(on.left).toBe(cells.marginLeft);
		if (cells.marginTop !== undefined) expect(on.top).toBe(cells.marginTop);
	}));

test('typing the side, top or bottom that is shown changes nothing', () =>
	rows.forEach(([cells, settings], place) => {
		const { solved } = solutions[place]!;
		for (const key of ['side', 'top', 'bottom'] as const) {
			// Beside another typed border, which of the two is left out decides.
			if ([cells.side, cells.top, cells.bottom].some((border) => border !== undefined)) continue;
			if (solved[key] === undefined) continue;
			const typed = length(Math.round(solved[key] / 10) * 10);
			const again = solveRow({ ...cells, [key]: typed }, settings).solved;
			for (const other of sizeKeys)
				expect(
					again[other] === undefined || Math.abs(again[other] - solved[other]!) <= sameWithin,
					`${key}: ${other}, row ${place}`,
				).toBe(true);
		}
	}));

const papers = [
	{ name: 'Rag', width: 329, height: 483, margin: 5 },
	{ name: 'Small', width: 210, height: 297, margin: 3 },
	{ name: 'Roll', width: 432, roll: '15 m', margin: 3 },
];
const show: TypedSettings = { ...wideShow, papers };
const rowIn = (line: string, settings: TypedSettings = show) => workOut(rowOf(line), readSettings(settings).settings);
const mmOf = (value: Length | undefined) => (value === undefined ? undefined : Number(toMm(value).toFixed(4)));
const nineOf = (line: string, settings?: TypedSettings) => {
	const { solved } = rowIn(line, settings);
	return Object.fromEntries(sizeKeys.map((key): [SizeKey, number | undefined] => [key, mmOf(solved[key])]));
};

describe('a picture is no larger than its paper', () => {
	// 483 − 2 · 5 = 473 and 329 − 10 = 319; 297 − 6 = 291 and 210 − 6 = 204, reckoned by hand.
	test.each<[string, readonly [number, number]]>([
		['shape 3:2, paper Rag', [462, 308]], // as the mount has it: the paper holds it
		['shape 3:2, paper Small', [291, 194]], // 308 : 204 is less than 462 : 291
		['shape 5:4, paper Small', [255, 204]],
		['shape 4:5, paper Small', [204, 255]],
		['shape 3:2, paper A4', [297, 198]], // no margin is known
		['paper Small', [291, 204]], // without a shape, each side that is too large
		['shape 3:2, paper Small, reveal 6', [275, 183.3333]], // 297 − 2 · (6 + 5)
		['shape 5:4, paper Small, signing space 20', [200, 160]], // 210 − 2 · (20 + 5) above and below
		['shape 3:2, paper Small, picture width 400', [400, 266.6667]], // typed, and told
		['shape 3:2, paper Small, window width 394', [400.5, 267]], // the smallest of the shape that covers 394 × 261
	])('%s: %j', (line, picture) => {
		const { pictureWidth, pictureHeight } = nineOf(line);
		expect([pictureWidth, pictureHeight]).toEqual(picture);
	});

	// The narrower a window, the further above the middle its optical centre: over a typed bottom the top shrinks, and the
	// window would grow. Without the paper 4 · 600 / (600 + 460) − 1 = 1.264 and 150 / 1.264 = 118.7, so 119 above; with the
	// paper’s 250, 81 above and a picture 225 high, more than the paper holds.
	test.each<[string, TypedSettings, object]>([
		[
			'bottom 150, bottom weight optical centre, paper 250 x 210',
			show,
			{ pictureWidth: 250, pictureHeight: 187, side: 178, top: 119, bottom: 150 },
		],
		[
			'bottom 85, bottom weight optical centre, signing space 24.1, overlap 5, paper 219 x 153',
			{ ...show, mountSize: '448.9 x 240.9 mm', border: '75 mm' },
			{ pictureWidth: 219, pictureHeight: 75.8, side: 120, top: 61, bottom: 85 },
		],
	])('which makes no side larger: %s', (line, settings, held) => {
		const { pictureHeight, top, bottom } = nineOf(line.replace(/, paper .*/, ''), settings);
		expect({ pictureHeight, top, bottom }).toEqual(
			Object.fromEntries(['pictureHeight', 'top', 'bottom'].map((key) => [key, held[key as keyof typeof held]])),
		);
		expect(nineOf(line, settings)).toMatchObject(held);
		sameByBoth(readCells(rowOf(line), readSettings(settings).settings).cells, readSettings(settings).settings);
		expect(codesOf(line, settings)).toContain('paper-bounds');
	});

	test('and a typed top that the row shows on it changes nothing, though without it the picture would be smaller', () => {
		expect(nineOf('shape 3:2, paper Small')).toMatchObject({ top: 124, pictureWidth: 291, pictureHeight: 194 });
		expect(nineOf('shape 3:2, paper Small, top 124')).toEqual(nineOf('shape 3:2, paper Small'));
		expect(nineOf('shape 3:2, top 124')).toMatchObject({ top: 124, bottom: 139, pictureWidth: 290, side: 158 });
	});

	test('one whose sides differ by less than a micrometre is square, and lies as it is given', () => {
		const line = 'mount fit, mount height 550, shape 34:3, paper 150.000014 x 150.000027';
		const both = { ...show, bottomWeight: '58%' };
		const { settings } = readSettings(both);
		const { cells } = readCells(rowOf(line), settings);
		expect(solveRow(cells, settings).solved.pictureWidth).toBe(cells.paper!.width);
		expect(cells.paper!.width).toBeLessThan(cells.paper!.height!);
		sameByBoth(cells, settings);
	});

	test('a roll holds what its width holds', () => {
		const wide = { ...show, mountSize: '900 x 700 mm' };
		expect(nineOf('shape 4:3, paper Roll', wide)).toMatchObject({ pictureWidth: 568, pictureHeight: 426 });
		expect(nineOf('shape 3:4, paper Roll', wide)).toMatchObject({ pictureWidth: 426, pictureHeight: 568 });
		const on = rowIn('shape 4:3, paper Roll', wide).onPaper!;
		expect([on.paper.width, on.paper.height].map(mmOf)).toEqual([574, 432]);
		expect([on.left, on.top, on.right, on.bottom].map(mmOf)).toEqual([3, 3, 3, 3]);
	});

	test('it is told, and what is typed on paper that does not hold it', () => {
		expect(codesOf('shape 3:2, paper Small', show)).toContain('paper-bounds');
		expect(codesOf('shape 3:2, paper Rag', show)).not.toContain('paper-bounds');
		expect(codesOf('picture 475 x 310, paper Rag', show)).toContain('paper-margin');
		expect(codesOf('picture 473 x 310, paper Rag', show)).not.toContain('paper-margin');
		expect(codesOf('picture 200 x 150, paper Small, margin left 2', show)).toContain('paper-margin');
		expect(codesOf('picture 200 x 150, paper Small, margin left 95', show)).toContain('paper-margin'); // 2 on the right
		expect(codesOf('picture 200 x 150, paper Small, margin left 20', show)).not.toContain('paper-margin');
		expect(codesOf('picture 200 x 150, paper Small, margin left 100', show)).toContain('paper-short');
	});

	test('the picture lies where its margins say, and the paper with it', () => {
		const { onPaper, place } = rowIn('picture 300 x 200, paper Rag, margin left 10, margin top 20');
		expect([onPaper!.left, onPaper!.top, onPaper!.right, onPaper!.bottom].map(mmOf)).toEqual([10, 20, 173, 109]);
		// The window of 294 is 153 from the left; the picture 3 further out, the paper 10 more.
		expect(mmOf(place!.from.left)).toBe(153 - 3 - 10);
		expect(mmOf(place!.from.right)).toBe(153 - 3 - 173);
	});

	test('a mend moves the picture on its paper where that is enough', () => {
		const row = rowOf('picture 420 x 280, signing space 12, paper 440 x 300');
		const told = resultIn(row, show).find(({ code }) => code === 'paper-short');
		expect(told?.mends.some(({ change }) => 'margin top' in change)).toBe(true);
	});
});

function resultIn(row: ReturnType<typeof rowOf>, settings: TypedSettings) {
	return judgeRow(row, readSettings(settings).settings).findings;
}

describe('a float', () => {
	test.each<[string, object]>([
		// 600 − 483 = 117 halves to 58½; 450 − 329 = 121 is shared as 57 and 64 (12 % more, to the ruler)
		['mounting float, paper Rag, shape 3:2', { mountWidth: 600, side: 58.5, top: 57, bottom: 64, pictureWidth: 473 }],
		['mounting float, paper Rag, picture 300 x 200', { side: 58.5, top: 57, pictureWidth: 300, pictureHeight: 200 }],
		['mounting float, picture 300 x 200', { side: 150, top: 118, bottom: 132, pictureWidth: 300 }],
		['mounting float, paper Small, mount fit, shape 3:2', { mountWidth: 437, mountHeight: 358, side: 70, top: 70 }],
		['mounting float, shape 3:2', { side: 74, top: 70, bottom: 78, pictureWidth: 452 }],
		// 329 high in a mount of 300: the axis has no results, though the picture would follow from the paper
		['mounting float, paper Rag, shape 3:2, mount 600 x 300', { pictureWidth: 473, pictureHeight: undefined }],
		['mounting float, paper Rag, mount 600 x 300, picture 300 x 200', { pictureWidth: 300, pictureHeight: 200 }],
		['mounting float, paper Rag', { mountWidth: 450, mountHeight: 600, side: 60.5, pictureWidth: undefined }],
		['mounting float, picture 300 x 200, reveal 9, overlap 4, inner mount 5, window 20 x 30', { side: 150 }],
		['mount none, mounting float, picture 300 x 200', { mountWidth: undefined, pictureWidth: 300 }],
		['mounting Window, picture 456 x 306', { windowWidth: 450 }],
	])('%s: %j', (line, expected) => {
		expect(nineOf(line)).toMatchObject(expected);
	});

	test('has no window, one blank of its board, and wants its paper and a spacer', () => {
		const { solved, framed } = rowIn('mounting float, picture 300 x 200, frame none, board Chalk');
		expect([solved.windowWidth, solved.windowHeight, solved.overlapSide]).toEqual([undefined, undefined, undefined]);
		expect(framed.layers.map(({ what }) => what)).toEqual(['print', 'undermount']);
		const codes = codesOf('mounting float, picture 300 x 200', show);
		expect(codes).toContain('needs-paper');
		expect(codes).toContain('touches-glass');
		expect(codesOf('mounting float, picture 300 x 200, paper Rag, spacer 5', show)).toEqual(
			expect.not.arrayContaining(['needs-paper', 'touches-glass']),
		);
		expect(codesOf('mounting float, paper Rag', show)).toContain('needs-size');
	});

	test.each([
		'picture 300 x 200',
		'picture 300 x 200, paper Rag, spacer 5',
		'paper Rag',
		'picture 300 x 200, overlap 4',
	])('needs a board to lie on: without a mount, %s is a print in a frame', (line) => {
		const [float, plain] = [`mount none, mounting float, ${line}`, `mount none, ${line}`];
		expect(rowIn(float)).toEqual(rowIn(plain));
		expect(codesOf(float, show)).toEqual(codesOf(plain, show));
	});
});

describe('hinges', () => {
	test.each<[number, number]>([
		[100, 2],
		[500, 2],
		[500.1, 3],
		[800, 3],
		[801, 4],
		[1100, 4],
	])('of paper %s mm wide: %i', (width, count) => expect(hingeCount(mm(width), 'mm')).toBe(count));

	test('stand at (i − ½)/n of the paper’s width, from the undermount’s left edge', () => {
		const wide = { ...show, mountSize: '900 x 700 mm', papers: [{ name: 'Long', width: 760, height: 500 }] };
		const row = rowIn('picture 700 x 450, paper Long', wide);
		const { place } = row;
		const left = mmOf(place!.from.left)!;
		expect(layHinges(row, readSettings(wide).settings)!.at.map(mmOf)).toEqual(
			[1, 3, 5].map((of) => Number((left + (760 * of) / 6).toFixed(4))),
		);
		expect(rowIn('picture 600 x 400, mount none, frame none').hinges).toEqual({ count: 3 });
	});
});

test('the mount that a frame takes fits it by the clearance, down to the ruler', () => {
	fc.assert(
		fc.property(
			fc.integer({ min: 100_000, max: 900_000 }),
			fc.integer({ min: 0, max: 8000 }),
			fc.constantFrom('1 mm', '0.5 mm', '1/16 in'),
			(rebate, clearance, ruler) => {
				const { frames, ruler: step } = readSettings({
					ruler,
					frames: [{ name: 'F', rebateWidth: rebate / 1000, rebateHeight: 500, clearance: clearance / 1000 }],
				}).settings;
				const left = frames[0]!.size!.rebate.width - frames[0]!.size!.takes.width - frames[0]!.clearance;
				expect(left).toBeGreaterThanOrEqual(-sameWithin);
				expect(left).toBeLessThan(step);
			},
		),
		{ numRuns: runs(200, 20_000) },
	);
});
