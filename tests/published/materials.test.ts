import { expect, test } from 'vitest';
import { inches, mm, toInches, toMm } from '../../src/core/length/length.ts';
import { faceOpening, stackThickness, usualBoardThickness } from '../../src/core/row/stack.ts';
import { solveRow } from '../../src/core/row/solveRow.ts';
import { workOut } from '../../src/core/row/workOut.ts';
import { blankCells } from '../../src/core/row/cells.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../src/core/show/row.ts';
import type { TypedSettings } from '../../src/core/settings/settings.ts';
import { cases } from '../../shared/check-values/materials.json' with { type: 'json' };

const row = (typed: Typed): Row => ({ id: 'row', order: 1, typed });
const settingsOf = (typed: TypedSettings) => readSettings(typed).settings;
const codes = (typed: Typed, show: TypedSettings) =>
	judgeRow(row(typed), settingsOf(show)).findings.map(({ code }) => code);

test(`board of which no thickness is known is 4-ply (${cases.boardMm.source})`, () => {
	expect(toMm(usualBoardThickness)).toBeGreaterThanOrEqual(cases.boardMm.least);
	expect(toMm(usualBoardThickness)).toBeLessThanOrEqual(cases.boardMm.greatest);
});

const board = (thicknessMm: number) => ({
	name: `${thicknessMm} mm`,
	width: 1000,
	height: 800,
	thickness: thicknessMm,
});

test.each([cases.stackPasses, cases.stackFails])('a stack of $totalMm mm ($source)', ({ undermountMm, totalMm }) => {
	const boards = [board(1.4), ...(undermountMm === 1.4 ? [] : [board(undermountMm)])];
	const show = { boards, undermount: `${undermountMm} mm`, limits: { thickness: cases.thicknessRuleMm.greatest } };
	const typed = { shape: '3:2', board: '1.4 mm' };
	expect(toMm(stackThickness(workOut(row(typed), settingsOf(show)), settingsOf(show)))).toBeCloseTo(totalMm, 9);
	expect(codes(typed, show).includes('too-thick')).toBe(totalMm > cases.thicknessRuleMm.greatest);
});

test(`the face of a bevelled window is larger than its sight edge (${cases.bevel.source})`, () => {
	const { thicknessMm, sightMm, faceMm } = cases.bevel;
	expect(sightMm.map((sight) => toMm(faceOpening(mm(sight), mm(thicknessMm))))).toEqual(faceMm);
});

test.each([
	[cases.clearanceMm.least, true],
	[cases.clearanceMm.greatest, true],
	[cases.clearanceMm.greatest + 1, false],
	[-1, false],
])(`a rebate with %s mm of play a side is the mount's frame: %s (${cases.clearanceMm.source})`, (playMm, isFrame) => {
	const show = settingsOf({
		frames: [{ name: 'Plain', rebateWidth: 500 + 2 * playMm, rebateHeight: 400 + 2 * playMm }],
	});
	expect(workOut(row({ shape: '3:2' }), show).frame.frame !== undefined).toBe(isFrame);
});

test(`bottom to top as 4 to 3 (${cases.threeToFour.source})`, () => {
	const { top, bottom } = cases.threeToFour;
	const weight = { kind: 'share', numerator: bottom - top, denominator: top } as const;
	const cells = {
		...blankCells,
		windowWidth: mm(220),
		windowHeight: mm(290),
		mountWidth: mm(400),
		mountHeight: mm(500),
		bottomWeight: weight,
	};
	const { solved } = solveRow(cells, settingsOf({ ruler: '0.5 mm' }));
	expect(solved.bottom! / solved.top!).toBeCloseTo(bottom / top, 9);
});

test(`the optical centre (${cases.opticalCentre.source})`, () => {
	const { mount, window, top } = cases.opticalCentre;
	const [mountWidth, mountHeight] = mount.map(inches);
	const [windowWidth, windowHeight] = window.map(inches);
	const cells = {
		...blankCells,
		mountWidth: mountWidth!,
		mountHeight: mountHeight!,
		windowWidth: windowWidth!,
		windowHeight: windowHeight!,
		bottomWeight: { kind: 'optical centre' } as const,
	};
	expect(toInches(solveRow(cells, settingsOf({ unit: 'in', ruler: '1/32 in' })).solved.top!)).toBe(top);
});

test.each([
	['502 x 398 mm', false],
	['400 x 500 mm', false],
	['503 x 400 mm', true],
])(`a mount of %s breaks the rule: %s (${cases.sizeRule.source})`, (mount, isOver) => {
	const { exact, within } = cases.sizeRule;
	expect(codes({ shape: '3:2', mount }, { limits: { exact, within } }).includes('over-limit')).toBe(isOver);
});

test.each([
	['20 x 16 in', '2', false, false],
	['20 x 16 in', '1 15/16', false, true],
	['20 1/8 x 16 in', '2', true, false],
])(`a mount of %s with borders of %s in (${cases.borderRule.source})`, (mount, border, isOver, isThin) => {
	const { largest, leastBorder } = cases.borderRule;
	const found = codes({ mount, side: border, top: border }, { unit: 'in', limits: { largest }, leastBorder });
	expect([found.includes('over-limit'), found.includes('thin-border')]).toEqual([isOver, isThin]);
});
