import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BenchStep } from '../../../../src/core/bench/benchPlan.ts';
import { leadMm, lineMm, linesOf, onPages, stepHeadMm, stepsOnPages } from '../../../../src/core/bench/paper.ts';
import { paperRoom, papers } from '../../../../src/core/values/papers.ts';
import { type Length, mm } from '../../../../src/core/length/length.ts';

const stepOf = (lines: number, stop?: Length): BenchStep => ({
	guide: mm(70),
	start: stop,
	end: stop,
	border: mm(70),
	thickness: undefined,
	isTaped: false,
	cuts: Array.from({ length: lines }, (_, index) => ({ row: index + 1, copy: 1, part: 'mount', side: 'top' })),
});

test('every line comes once, no page is too full, and only a step longer than a page is parted', () =>
	fc.assert(
		fc.property(
			fc.array(fc.integer({ min: 1, max: 90 }), { maxLength: 20 }),
			fc.constantFrom('A4', 'Letter'),
			fc.constantFrom(undefined, mm(68)),
			(sizes, paper, stop) => {
				const steps = sizes.map((lines) => stepOf(lines, stop));
				const pages = stepsOnPages(steps, paper);
				const { margin, head, foot } = paperRoom;
				const room = papers[paper].heightMm - 2 * margin - head - foot;
				for (const [at, page] of pages.entries()) {
					const height = page.reduce((sum, { lines, step }) => sum + stepHeadMm(step) + lines.length * lineMm, 0);
					expect(height).toBeLessThanOrEqual(room - (at === 0 ? leadMm : 0));
				}
				const shown = pages.flat();
				expect(
					steps.map((_, place) => shown.filter(({ number }) => number === place + 1).flatMap(({ lines }) => lines)),
				).toEqual(steps.map(linesOf));
				for (const { number, isContinued } of shown)
					if (isContinued)
						expect(stepHeadMm(steps[number - 1]!) + sizes[number - 1]! * lineMm).toBeGreaterThan(
							room - (number === 1 ? leadMm : 0),
						);
			},
		),
	));

test('a line names the sides and copies of one row', () => {
	const cut = (copy: number, side: 'left' | 'right') => ({ row: 3, copy, part: 'mount', side }) as const;
	expect(linesOf({ ...stepOf(0), cuts: [cut(1, 'left'), cut(1, 'right'), cut(2, 'left'), cut(2, 'right')] })).toEqual([
		{ row: 3, part: 'mount', sides: ['left', 'right'], copies: 2 },
	]);
	expect(onPages([1, 2, 3, 4, 5], 2)).toEqual([[1, 2], [3, 4], [5]]);
});
