import { randomNumbers } from '../../../../src/core/sheets/randomNumbers.ts';
import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';
import { jobOf, sheetOf, type SizeMm } from './packingOf.ts';

/** A job of which it is known how many sheets it takes. */
export interface KnownJob {
	readonly job: PackingJob;
	readonly count: number;
}

/**
 * Sheets without any waste: one to four equal ones (700 to 1200 × 550 to 900 mm) are cut into 30 blanks. Again and again
 * one piece is taken, the larger the likelier; it is cut across its width with a chance of width / (width + height), else
 * across its height, at a place from a quarter to three quarters of the side; a side under 100 mm is not cut. All on
 * steps of 5 mm. Blanks may be turned.
 */
export function wasteless(seed: number): KnownJob {
	const random = randomNumbers(seed);
	const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
	const [width, height] = [whole(140, 240), whole(110, 180)];
	const count = whole(1, 4);
	const pieces = Array.from({ length: count }, (): [number, number] => [width, height]);
	while (pieces.length < 30) {
		let left = random() * width * height * count;
		const place = pieces.findIndex(([across, down]) => (left -= across * down) < 0);
		const [across, down] = pieces.at(place)!;
		const isAcross = random() < across / (across + down);
		const side = isAcross ? across : down;
		if (side < 20) continue;
		const at = whole(Math.ceil(side / 4), Math.floor((3 * side) / 4));
		pieces.splice(place, 1, isAcross ? [at, down] : [across, at], isAcross ? [side - at, down] : [across, side - at]);
	}
	const sizes = pieces.map(([across, down]): SizeMm => [5 * across, 5 * down, 1]);
	return { job: jobOf([sheetOf(5 * width, 5 * height)], sizes), count };
}

/** Usual sheets of mount board, in millimetres. */
const sheets = [
	[1120, 815],
	[1015, 810],
	[1520, 1020],
] as const;

/**
 * A made-up show of 30 blanks in one to eight sizes on steps of 5 mm. A sheet of the first kind holds 4 to 12 blanks of
 * each size by its area; the longer side is 1 to 1.6 times the shorter one. In a third of the shows the board has a grain.
 */
export function madeUpShow(seed: number): PackingJob {
	const random = randomNumbers(1000 + seed);
	const [width, height] = sheets[seed % 2]!;
	const grain = seed % 3 === 0 ? 'width' : undefined;
	return jobOf([sheetOf(width, height, { grain })], sizesOf(random, width, height));
}

/**
 * The same with two sizes of sheet, each at a price (the larger one a little cheaper for its area, of the smaller one
 * there may be few) and one to three offcuts of one size, which cost nothing.
 */
export function madeUpPricedShow(seed: number): PackingJob {
	const random = randomNumbers(2000 + seed);
	const [width, height] = sheets[seed % 2]!;
	const [wide, high] = sheets[2];
	const grain = seed % 3 === 0 ? 'width' : undefined;
	const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
	const price = whole(900, 1600);
	const perArea = price / (width * height);
	const stock = [
		sheetOf(width, height, { grain, price, count: seed % 4 === 0 ? whole(1, 4) : undefined }),
		sheetOf(wide, high, { grain, price: Math.round(perArea * wide * high * (0.85 + 0.25 * random())) }),
		sheetOf(5 * whole(60, 120), 5 * whole(60, 120), { grain, kind: 'offcut', price: 0, count: whole(1, 3) }),
	];
	return jobOf(stock, sizesOf(random, width, height));
}

function sizesOf(random: () => number, width: number, height: number): readonly SizeMm[] {
	const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
	const count = whole(1, 8);
	const copies = Array.from({ length: count }, () => 1);
	for (let left = 30 - count; left > 0; left--) copies[whole(0, count - 1)]!++;
	return copies.map((times): SizeMm => {
		const area = (width * height) / (4 + 8 * random());
		const short = Math.sqrt(area / (1 + 0.6 * random()));
		const [across, down] = [5 * Math.floor(area / short / 5), 5 * Math.floor(short / 5)];
		return random() < 0.5 ? [across, down, times] : [down, across, times];
	});
}
