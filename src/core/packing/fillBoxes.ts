import { gramsOf, type Pair } from './pairUp.ts';

/** What a box may hold. */
export interface BoxLimits {
	/** The most prints. */
	readonly most: number;
	/** The most that it may weigh, in grams, as far as weights are known. */
	readonly mostGrams: number;
}

/** Pairs in boxes. */
export interface Filling {
	readonly boxes: readonly (readonly Pair[])[];
	/** The number that no way of putting these pairs into boxes is under. */
	readonly least: number;
}

interface Unit {
	readonly pair: Pair;
	readonly count: number;
	readonly grams: number;
}

/**
 * Pairs in as few boxes as can be, largest first. Put in as they come they lie with their like, which is tried first; where
 * a bound leaves room for fewer boxes, the fewest are searched for.
 * @param pairs largest first; a pair that is over a limit by itself has a box of its own
 */
export function fillBoxes(pairs: readonly Pair[], limits: BoxLimits): Filling {
	const units = pairs.map((pair): Unit => ({ pair, count: pair.length, grams: gramsOf(pair) }));
	const isOver = ({ count, grams }: Unit) => grams > limits.mostGrams || count > limits.most;
	const alone = units.filter(isOver).map((unit) => [unit]);
	const rest = units.filter((unit) => !isOver(unit));
	const heaviestFirst = rest.toSorted((one, other) => other.grams - one.grams || other.count - one.count);
	const tried = [oneAfterTheOther(rest, limits), firstThatFits(rest, limits), firstThatFits(heaviestFirst, limits)];
	let best = tried.reduce((one, other) => (other.length < one.length ? other : one));
	let least = bound(rest, limits);
	const work = { left: mostLooks };
	while (least < best.length) {
		const found = inBoxes(heaviestFirst, best.length - 1, limits, work);
		if (found) best = found;
		else {
			if (work.left > 0) least = best.length;
			break;
		}
	}
	const place = new Map(pairs.map((pair, at) => [pair, at]));
	const placeOf = ({ pair }: Unit) => place.get(pair)!;
	const boxes = [...alone, ...best]
		.map((box) => box.toSorted((one, other) => placeOf(one) - placeOf(other)))
		.toSorted(([one], [other]) => placeOf(one!) - placeOf(other!));
	return { boxes: boxes.map((box) => box.map(({ pair }) => pair)), least: alone.length + least };
}

/**
 * How many boxes are looked into at most while fewer are searched for; past them the best that was found stands. A show of
 * 300 prints is packed while one waits for its page.
 */
const mostLooks = 5_000_000;

type Box = Unit[];

const sum = (units: readonly Unit[], of: 'count' | 'grams') => units.reduce((all, unit) => all + unit[of], 0);

const hasRoom = (box: readonly Unit[], { count, grams }: Unit, { most, mostGrams }: BoxLimits): boolean =>
	sum(box, 'count') + count <= most && sum(box, 'grams') + grams <= mostGrams;

/** As few boxes as weight and number alone could do with. */
function bound(units: readonly Unit[], { most, mostGrams }: BoxLimits): number {
	const pairs = units.filter(({ count }) => count === 2).length;
	const pairsInBox = Math.floor(most / 2);
	return Math.max(
		pairsInBox === 0 ? pairs : Math.ceil(pairs / pairsInBox),
		Math.ceil(sum(units, 'count') / most),
		Math.ceil(sum(units, 'grams') / mostGrams),
	);
}

function oneAfterTheOther(units: readonly Unit[], limits: BoxLimits): Box[] {
	const boxes: Box[] = [];
	for (const unit of units) {
		const last = boxes.at(-1);
		if (last && hasRoom(last, unit, limits)) last.push(unit);
		else boxes.push([unit]);
	}
	return boxes;
}

function firstThatFits(units: readonly Unit[], limits: BoxLimits): Box[] {
	const boxes: Box[] = [];
	for (const unit of units) {
		const box = boxes.find((each) => hasRoom(each, unit, limits));
		if (box) box.push(unit);
		else boxes.push([unit]);
	}
	return boxes;
}

/** Units in so many boxes, by trying; undefined where there is no way, or none was found with the work that is left. */
function inBoxes(units: readonly Unit[], count: number, limits: BoxLimits, work: { left: number }): Box[] | undefined {
	const boxes = Array.from({ length: count }, () => ({ own: [] as Box, count: 0, grams: 0 }));
	const put = (at: number): boolean => {
		const unit = units[at];
		if (unit === undefined) return true;
		const seen = new Set<number>();
		for (const box of boxes) {
			if (work.left-- <= 0) return false;
			const all = { count: box.count + unit.count, grams: box.grams + unit.grams };
			if (all.count > limits.most || all.grams > limits.mostGrams) continue;
			// Boxes that hold as much are alike to all that comes.
			const holds = box.count * (limits.mostGrams + 1) + box.grams;
			if (seen.has(holds)) continue;
			seen.add(holds);
			box.own.push(unit);
			Object.assign(box, all);
			if (put(at + 1)) return true;
			box.own.pop();
			Object.assign(box, { count: box.count - unit.count, grams: box.grams - unit.grams });
		}
		return false;
	};
	return put(0) ? boxes.map(({ own }) => own) : undefined;
}
