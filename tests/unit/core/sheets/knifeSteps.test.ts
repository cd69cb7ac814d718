import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { CutSheet, KnifeCut, Rectangle } from '../../../../src/core/show/cutSheet.ts';
import { knifeSteps, leastSettings } from '../../../../src/core/sheets/knifeSteps.ts';
import { runs } from '../../../soak.ts';

const stock: CutSheet['stock'] = {
	...{ board: 'Chalk', kind: 'sheet', width: mm(1200), height: mm(900), trim: mm(0) },
	...{ grain: undefined, price: undefined, pack: 1, count: undefined },
};
const sheetOf = (id: string, cuts: readonly KnifeCut[]): CutSheet => ({
	...{ id, stock, blanks: [], cuts, offcuts: [], made: [], isSpoilt: false },
});
const whole: Rectangle = { x: mm(0), y: mm(0), width: mm(1200), height: mm(900) };

/** A sheet cut along random lines, each through a piece that a cut before it left. */
const sheet = (id: string) =>
	fc
		.array(fc.record({ piece: fc.nat(9), isAcross: fc.boolean(), share: fc.integer({ min: 1, max: 5 }) }), {
			maxLength: 8,
		})
		.map((lines) => {
			const pieces: Rectangle[] = [whole];
			const cuts: KnifeCut[] = [];
			for (const line of lines) {
				const [piece] = pieces.splice(line.piece % pieces.length, 1) as [Rectangle];
				const side = line.isAcross ? piece.width : piece.height;
				const at = mm(50 * line.share);
				if (at >= side) {
					pieces.push(piece);
					continue;
				}
				cuts.push({ piece, across: line.isAcross ? 'width' : 'height', at });
				const other = { ...piece };
				pieces.push(
					line.isAcross ? { ...piece, width: at } : { ...piece, height: at },
					line.isAcross
						? { ...other, x: mm(piece.x / 1e7 + 50 * line.share), width: mm((piece.width - at) / 1e7) }
						: { ...other, y: mm(piece.y / 1e7 + 50 * line.share), height: mm((piece.height - at) / 1e7) },
				);
			}
			return sheetOf(id, cuts);
		});

const isWithin = (a: Rectangle, b: Rectangle) =>
	a.x >= b.x && a.y >= b.y && a.x + a.width <= b.x + b.width && a.y + a.height <= b.y + b.height;

test('every cut comes once, at its measure, and no piece is cut before it is cut out', () =>
	fc.assert(
		fc.property(fc.tuple(sheet('a'), sheet('b'), sheet('c')), (sheets) => {
			const steps = knifeSteps(sheets);
			const order = steps.flatMap(({ measure, sheets: own }) =>
				own.flatMap(({ sheet: { id, cuts }, places }) =>
					places.map((place) => ({ id, place, cut: cuts[place]!, measure })),
				),
			);
			for (const { cut, measure } of order) expect(cut.at).toBe(measure);
			expect(order.map(({ id, place }) => `${id}${place}`).sort()).toEqual(
				sheets.flatMap(({ id, cuts }) => cuts.map((_, place) => `${id}${place}`)).sort(),
			);
			order.forEach((one, at) => {
				const later = order.slice(at + 1).filter((other) => other.id === one.id && other.place < one.place);
				for (const { cut } of later) expect(isWithin(one.cut.piece, cut.piece)).toBe(false);
			});
			expect(steps.length).toBeGreaterThanOrEqual(leastSettings(sheets));
			steps.forEach(({ measure }, place) => expect(steps[place + 1]?.measure).not.toBe(measure));
		}),
		{ numRuns: runs(100, 5000) },
	));

test('a measure is set once where the order of the cuts allows, the one with most cuts first', () => {
	const strip = { ...whole, width: mm(550) };
	const cuts: readonly KnifeCut[] = [
		{ piece: whole, across: 'width', at: mm(550) },
		{ piece: strip, across: 'height', at: mm(420) },
		{ piece: { ...strip, y: mm(420), height: mm(480) }, across: 'height', at: mm(420) },
	];
	const steps = knifeSteps([sheetOf('a', cuts), sheetOf('b', cuts)]);
	expect(steps.map(({ measure, sheets }) => [measure, sheets.map(({ places }) => places)])).toEqual([
		[mm(550), [[0], [0]]],
		[
			mm(420),
			[
				[1, 2],
				[1, 2],
			],
		],
	]);
	expect(leastSettings([sheetOf('a', cuts)])).toBe(2);
});
