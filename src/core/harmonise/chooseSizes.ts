/** What a row would be in one of the listed sizes; undefined where a border would be under the least. */
export interface Option {
	/** How far the picture's long side is from the wanted one. Whole. */
	readonly difference: number;
	/** The borders that would be cut, as numbers that are the same where the borders are. */
	readonly borders: readonly number[];
	/** The area of board that the mount takes. */
	readonly area: number;
}

/** For each row, what it would be in each listed size. */
export type Options = readonly (readonly (Option | undefined)[])[];

/** A size for each row, and what that comes to. */
export interface Choice {
	/** For each row, the place of its size in the list; -1 where no size takes the row. */
	readonly sizes: readonly number[];
	/** Sum of the differences. */
	readonly difference: number;
	/** How many different borders are cut. */
	readonly borders: number;
	readonly area: number;
	/** Whether borders and board are proven least too; the sum of the differences always is. */
	readonly isProven: boolean;
}

/** How many choices are looked at to settle the ties of a set, at most: a second or so. A show never comes near. */
const mostTrials = 3_000_000;

/**
 * Chooses at most `most` sizes, and one of them for each row, so that the sum of the differences is least; of equal ones
 * the fewest different borders, then the least board. Every set of sizes is tried, so the choice is proven best: 12 sizes
 * have at most 4095 sets. Rows that no size at all takes keep none; a set that leaves out a row which another size
 * would take is worse than any that does not.
 * @param trials how many choices are looked at to settle the ties of a set, at most
 */
export function chooseSizes(options: Options, sizeCount: number, most: number, trials = mostTrials): Choice {
	const rows = options.map((row, place) => ({ row, place })).filter(({ row }) => row.some((option) => option));
	let best: { taken: number; difference: number; sets: number[] } = { taken: -1, difference: 0, sets: [] };
	for (let set = 0; set < 2 ** sizeCount; set++) {
		if (bitCount(set) > most) continue;
		let taken = 0;
		let difference = 0;
		for (const { row } of rows) {
			const least = leastDifference(row, set);
			if (least === undefined) continue;
			taken++;
			difference += least;
		}
		if (taken < best.taken || (taken === best.taken && difference > best.difference)) continue;
		const isEqual = taken === best.taken && difference === best.difference;
		best = { taken, difference, sets: isEqual ? [...best.sets, set] : [set] };
	}
	// Of sets that are no better for holding more sizes, the smaller say the same: the larger has all their choices.
	const widest = best.sets.filter((set) => !best.sets.some((other) => other !== set && (other & set) === set));
	let choice: Choice | undefined;
	let isProven = true;
	for (const set of widest) {
		const tried = settleTies(options, set, choice, trials);
		isProven &&= tried.isProven;
		if (choice === undefined || isBetter(tried, choice)) choice = tried;
	}
	return { ...choice!, isProven };
}

const isBetter = (a: Pick<Choice, 'borders' | 'area'>, b: Pick<Choice, 'borders' | 'area'>) =>
	a.borders < b.borders || (a.borders === b.borders && a.area < b.area);

function bitCount(set: number): number {
	let count = 0;
	for (let rest = set; rest > 0; rest >>>= 1) count += rest & 1;
	return count;
}

const isIn = (set: number, size: number) => ((set >>> size) & 1) === 1;

function leastDifference(row: Options[number], set: number): number | undefined {
	let least: number | undefined;
	row.forEach((option, size) => {
		if (option && isIn(set, size) && (least === undefined || option.difference < least)) least = option.difference;
	});
	return least;
}

/**
 * Of the sizes of a set in which a row is equally near its wanted size, the one for each row that gives the fewest
 * different borders in all, then the least board: a search over the rows that have a choice, cut off where what is
 * chosen already is no better than the best so far.
 */
function settleTies(options: Options, set: number, toBeat: Choice | undefined, most: number): Choice {
	const sizes = options.map(() => -1);
	let difference = 0;
	let area = 0;
	const counts = new Map<number, number>();
	const take = (option: Option, way: 1 | -1) => {
		area += way * option.area;
		for (const border of new Set(option.borders)) {
			const count = (counts.get(border) ?? 0) + way;
			if (count === 0) counts.delete(border);
			else counts.set(border, count);
		}
	};
	const alike = new Map<string, { places: number[]; near: number[] }>();
	options.forEach((row, place) => {
		const least = leastDifference(row, set);
		if (least === undefined) return;
		difference += least;
		const near = row.flatMap((option, size) => (isIn(set, size) && option?.difference === least ? [size] : []));
		// Sizes that cut the same borders differ only in board.
		const distinct = near.filter(
			(size, i) => !near.some((other, j) => sameBorders(row[size]!, row[other]!) && isBefore(row, other, j, size, i)),
		);
		if (distinct.length === 1) {
			sizes[place] = distinct[0]!;
			take(row[distinct[0]!]!, 1);
			return;
		}
		// Rows with the same choices take the same one: with two, the one of less board is no worse for both.
		const key = JSON.stringify(distinct.map((size) => [size, row[size]!.borders, row[size]!.area]));
		const group = alike.get(key) ?? { places: [], near: distinct };
		group.places.push(place);
		alike.set(key, group);
	});
	const undecided = [...alike.values()];
	undecided.sort((a, b) => a.near.length - b.near.length);
	const optionOf = ({ places }: { places: number[] }, size: number) => options[places[0]!]![size]!;
	const leastAreas = undecided.map(
		(group) => group.places.length * Math.min(...group.near.map((size) => optionOf(group, size).area)),
	);
	const areaFrom = leastAreas.map((_, i) => leastAreas.slice(i).reduce((sum, least) => sum + least, 0));

	let best: Choice | undefined;
	let trials = 0;
	const search = (at: number) => {
		if (trials++ > most) return;
		const so = { borders: counts.size, area: area + (areaFrom[at] ?? 0) };
		const bar = best ?? toBeat;
		if (bar && !isBetter(so, bar)) return;
		const row = undecided[at];
		if (!row) {
			best = { sizes: [...sizes], difference, borders: counts.size, area, isProven: true };
			return;
		}
		const added = (size: number) => optionOf(row, size).borders.filter((border) => !counts.has(border)).length;
		for (const size of [...row.near].sort((a, b) => added(a) - added(b))) {
			for (const place of row.places) {
				sizes[place] = size;
				take(optionOf(row, size), 1);
			}
			search(at + 1);
			for (const place of row.places) {
				sizes[place] = -1;
				take(optionOf(row, size), -1);
			}
		}
	};
	search(0);
	const isProven = trials <= most;
	return best ? { ...best, isProven } : { sizes, difference, borders: Infinity, area: Infinity, isProven };
}

function sameBorders({ borders: a }: Option, { borders: b }: Option): boolean {
	return a.length === b.length && a.every((border) => b.includes(border)) && b.every((border) => a.includes(border));
}

/** Whether another size of the same borders is to be taken instead: less board, or as much and earlier in the list. */
function isBefore(row: Options[number], other: number, j: number, size: number, i: number): boolean {
	if (i === j) return false;
	const [a, b] = [row[other]!.area, row[size]!.area];
	return a < b || (a === b && j < i);
}
