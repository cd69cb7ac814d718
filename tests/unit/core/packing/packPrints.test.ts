import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../../../src/core/length/length.ts';
import { type BoxLimits, fillBoxes } from '../../../../src/core/packing/fillBoxes.ts';
import { mostGrams, packPrints } from '../../../../src/core/packing/packPrints.ts';
import { areLike, gramsOf, type Pair, pairUp } from '../../../../src/core/packing/pairUp.ts';
import { printsToPack, type ToPack } from '../../../../src/core/packing/toPack.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { runs } from '../../../soak.ts';
import { rowOf } from '../findings/rowOf.ts';

const profile = { moulding: 20, lip: 6, depth: 20 };
const frames = [
	{ name: 'Oak', rebateWidth: 500, rebateHeight: 400, ...profile, weight: '0.5 kg' },
	{ name: 'Ash', rebateWidth: 700, rebateHeight: 500, ...profile, weight: '0.5 kg' },
	{ name: 'Plain', rebateWidth: 700, rebateHeight: 500, ...profile },
	{ name: 'Lead', rebateWidth: 500, rebateHeight: 400, ...profile, weight: '20 kg' },
	{ name: 'Bare', rebateWidth: 500, rebateHeight: 400 },
];
const show: TypedSettings = { unit: 'mm', frames };

function planOf(lines: readonly string[], more: TypedSettings = {}) {
	const { settings, problems } = readSettings({ ...show, ...more });
	expect(problems).toEqual([]);
	return packPrints(
		lines.map((line) => workOut(rowOf(line), settings)),
		settings,
	);
}
const wordsOf = ({ boxes }: ReturnType<typeof planOf>) =>
	boxes.map(({ pairs, inside }) => {
		const prints = pairs.map((pair) => pair.map(({ place, copy }) => `${place + 1}.${copy}`).join('+'));
		return `${prints.join(' ')} in ${toMm(inside.long)} x ${toMm(inside.short)}`;
	});

describe('a show is packed', () => {
	// Rebate and twice what the face shows past the lip: 500 + 2 · 14 = 528, 400 + 28 = 428; padding 2 · 50.
	test('each copy with its like, the largest first', () =>
		expect(wordsOf(planOf(['mount 500 x 400, frame Oak, copies 3', 'mount 700 x 500, frame Ash']))).toEqual([
			'2.1 1.1+1.2 1.3 in 828 x 628',
		]));

	test('as many in a box as the show says, turned prints beside upright ones', () =>
		expect(
			wordsOf(planOf(['mount 500 x 400, frame Oak, copies 3', 'mount 400 x 500, frame Oak'], { packing: { most: 2 } })),
		).toEqual(['1.1+1.2 in 628 x 528', '1.3+2.1 in 628 x 528']));

	test('one by one where a box holds one', () =>
		expect(planOf(['mount 500 x 400, frame Oak, copies 3'], { packing: 1 }).boxes).toHaveLength(3));

	test('a print over 20 kg by itself has a box of its own', () => {
		// The moulding alone: 2 · (528 + 428) mm · 20 kg/m = 38.24 kg.
		const { boxes } = planOf(['mount 500 x 400, frame Lead', 'mount 500 x 400, frame Oak']);
		expect(boxes.map(({ isHeavy, pairs }) => [isHeavy, pairs.flat().map(({ place }) => place)])).toEqual([
			[true, [0]],
			[false, [1]],
		]);
		expect(boxes[0]!.grams).toBeGreaterThan(38_240);
	});

	test('what is not known is named: weights, sizes, and what has no frame', () => {
		const { boxes, unmeasured, flat } = planOf([
			'mount 700 x 500, frame Plain',
			'mount 500 x 400, frame Bare, copies 2',
			'mount 500 x 400, frame Elm',
			'mount 300 x 200, frame none, copies 4',
		]);
		expect(boxes.map(({ grams, unweighed }) => [grams, unweighed.length])).toEqual([[0, 1]]);
		expect(unmeasured).toEqual([
			{ place: 1, copies: 2 },
			{ place: 2, copies: 1 },
		]);
		expect(flat).toEqual([{ place: 3, copies: 4, size: { width: mm(300), height: mm(200) } }]);
	});

	test('what was fetched by whoever bought it is not packed', () => {
		const { boxes, collected } = planOf([
			'mount 500 x 400, frame Oak, copies 2, stage collected',
			'mount 500 x 400, frame Oak, stage sold',
		]);
		expect(boxes.flatMap(({ pairs }) => pairs.flat().map(({ place }) => place))).toEqual([1]);
		expect(collected).toEqual([{ place: 0, copies: 2 }]);
	});

	test('weights go up to whole grams, so that a box is never over its limit', () => {
		const { settings } = readSettings(show);
		const row = workOut(rowOf('mount 500 x 400, frame Oak'), settings);
		const { framed } = printsToPack([{ ...row, framed: { ...row.framed, weightKg: 1.2341 } }]);
		expect(framed.map(({ grams }) => grams)).toEqual([1235]);
	});

	test('a row in which nothing is typed is no print', () => {
		const { settings } = readSettings(show);
		expect(printsToPack([workOut({ id: 'a', order: 1, typed: {} }, settings)])).toEqual({
			...{ framed: [], unmeasured: [], flat: [], collected: [] },
		});
	});
});

const print = (place: number, long: number, short: number, grams?: number, face = 20): ToPack => ({
	...{ place, copy: 1, copies: 1, long: mm(Math.max(long, short)), short: mm(Math.min(long, short)) },
	...{ face: mm(face), grams, isAbout: false },
});
const placesOf = (pairs: readonly Pair[]) => pairs.map((pair) => pair.map(({ place }) => place));

describe('pairs', () => {
	test('the same size first, though another like one comes before it', () =>
		expect(placesOf(pairUp([print(0, 510, 400), print(1, 505, 400), print(2, 505, 400)], mostGrams))).toEqual([
			[0],
			[1, 2],
		]));
	test('like ones: the face of the narrower frame apart at most', () => {
		expect(placesOf(pairUp([print(0, 520, 400), print(1, 500, 400)], mostGrams))).toEqual([[0, 1]]);
		expect(placesOf(pairUp([print(0, 520.1, 400), print(1, 500, 400)], mostGrams))).toEqual([[0], [1]]);
		expect(placesOf(pairUp([print(0, 515, 400), print(1, 500, 400, 1, 10)], mostGrams))).toEqual([[0], [1]]);
	});
	test('none that is too heavy for a box', () =>
		expect(placesOf(pairUp([print(0, 500, 400, 11_000), print(1, 500, 400, 9001)], mostGrams))).toEqual([[0], [1]]));
});

const prints = fc
	.array(
		fc.tuple(
			fc.constantFrom(400, 410, 428, 500, 700),
			fc.constantFrom(300, 310, 400),
			fc.option(fc.integer({ min: 200, max: 23_000 }), { nil: undefined, freq: 6 }),
			fc.constantFrom(8, 20),
		),
		{ maxLength: 40 },
	)
	.map((list) => list.map(([long, short, grams, face], place) => print(place, long, short, grams, face)));
const limits = fc.record({ most: fc.integer({ min: 2, max: 8 }), mostGrams: fc.constant(mostGrams) });

test('every print is in one box, pairs are alike, limits are kept, and the same show is packed the same way', () =>
	fc.assert(
		fc.property(prints, limits, (list, most) => {
			const { boxes, least } = fillBoxes(pairUp(list, mostGrams), most);
			const packed = boxes.flat(2).map(({ place }) => place);
			expect(packed.toSorted((one, other) => one - other)).toEqual(list.map(({ place }) => place));
			for (const pair of boxes.flat()) if (pair.length === 2) expect(areLike(...pair)).toBe(true);
			for (const box of boxes) {
				const inBox = box.flat();
				expect(inBox.length).toBeLessThanOrEqual(most.most);
				if (inBox.length > 1) expect(gramsOf(inBox)).toBeLessThanOrEqual(mostGrams);
			}
			expect(least).toBeLessThanOrEqual(boxes.length);
			expect(fillBoxes(pairUp(list.toReversed(), mostGrams), most)).toEqual({ boxes, least });
		}),
		{ numRuns: runs(200, 20_000) },
	));

/** The fewest boxes, by trying every way. */
function fewest(pairs: readonly Pair[], { most, mostGrams: limit }: BoxLimits): number {
	const boxes: Pair[][] = [];
	const put = (at: number): number => {
		const pair = pairs[at];
		if (pair === undefined) return boxes.length;
		let best = Infinity;
		for (const box of boxes) {
			box.push(pair);
			if (box.flat().length <= most && gramsOf(box.flat()) <= limit) best = Math.min(best, put(at + 1));
			box.pop();
		}
		boxes.push([pair]);
		best = Math.min(best, put(at + 1));
		boxes.pop();
		return best;
	};
	return put(0);
}

test('boxes are as few as these pairs allow', () =>
	fc.assert(
		fc.property(prints, limits, (list, most) => {
			const pairs = pairUp(list, mostGrams).slice(0, 7);
			const { boxes, least } = fillBoxes(pairs, most);
			expect([boxes.length, least]).toEqual([fewest(pairs, most), fewest(pairs, most)]);
		}),
		{ numRuns: runs(200, 5000) },
	));
