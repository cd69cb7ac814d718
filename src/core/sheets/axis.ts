/**
 * The widths (or heights) that pieces of a sheet can have where nothing is given away, and how each is cut in two.
 *
 * A blank may be pushed to the left until it meets another one or the edge, so a cut need only lie where sides of
 * blanks add up to (its normal places). What is left to the right of it is as good as the next smaller such place.
 *
 *     |<----- size of piece ----->|
 *     [ first ][   other    ]/////|     first + other <= size
 */
export interface Axis {
	/** Ascending. The last is the sheet itself. */
	readonly sizes: Float64Array;
	/** Where the pairs of each size begin, and after the last where they end. */
	readonly starts: Int32Array;
	/** Places in `sizes` of the two pieces of each pair; the first is not larger than the other. */
	readonly first: Int32Array;
	readonly other: Int32Array;
}

/** The most sums of sides that are listed; beyond, the sheet is too fine for an exact bound. */
const mostSums = 3000;

/** Sheets of so many places at most have each of them looked at. */
const mostPlaces = 30_000;

/** How often a blank may stand along an axis, and with which sides. */
export interface AxisSide {
	readonly sides: readonly number[];
	readonly times: number;
}

/** The axis of a sheet of this size; undefined where it would be too long. */
export function axisOf(size: number, blanks: readonly AxisSide[]): Axis | undefined {
	const sums = sumsOf(size, blanks);
	if (sums === undefined || sums.length === 0 || sums.length > mostSums) return undefined;
	return reachable(sums);
}

/** All sums of sides up to the size, each blank at most so often; ascending, without zero. */
function sumsOf(size: number, blanks: readonly AxisSide[]): Float64Array | undefined {
	if (size <= mostPlaces) return denseSums(size, blanks);
	let sums = [0];
	for (const { sides, times } of blanks) {
		// For each sum the fewest of this blank that it takes.
		const fewest = new Map(sums.map((sum) => [sum, 0]));
		const waiting = [...sums];
		for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
			const taken = fewest.get(next)! + 1;
			if (taken > times) continue;
			for (const side of sides) {
				const sum = next + side;
				if (sum > size || (fewest.get(sum) ?? Infinity) <= taken) continue;
				fewest.set(sum, taken);
				waiting.push(sum);
			}
			if (fewest.size > mostSums) return undefined;
		}
		sums = [...fewest.keys()];
	}
	return Float64Array.from(sums)
		.filter((sum) => sum > 0)
		.sort();
}

/** The same where every place of the sheet can be looked at in turn. */
function denseSums(size: number, blanks: readonly AxisSide[]): Float64Array {
	const never = 0xffff;
	const fewest = new Uint16Array(size + 1).fill(never);
	fewest[0] = 0;
	for (const { sides, times } of blanks) {
		for (let sum = 0; sum <= size; sum++) {
			if (fewest[sum] !== never) fewest[sum] = 0;
			else
				for (const side of sides) {
					const before = sum >= side ? fewest[sum - side]! : never;
					if (before < times && before + 1 < fewest[sum]!) fewest[sum] = before + 1;
				}
		}
	}
	return Float64Array.from([...fewest.keys()].filter((sum) => sum > 0 && fewest[sum] !== never));
}

/** From the whole sheet down: only the sizes that cuts lead to, and for each the pairs that no other pair covers. */
function reachable(sums: Float64Array): Axis {
	const isReached = new Uint8Array(sums.length);
	isReached[sums.length - 1] = 1;
	const pairs: (readonly (readonly [number, number])[])[] = [];
	for (let place = sums.length - 1; place >= 0; place--) {
		if (!isReached[place]) continue;
		pairs[place] = pairsOf(place, sums);
		for (const [first, other] of pairs[place]!) isReached[first] = isReached[other] = 1;
	}
	const places = [...sums.keys()].filter((place) => isReached[place]);
	const newPlace = new Map(places.map((place, index) => [place, index]));
	const flat = places.map((place) => pairs[place]!);
	const starts = new Int32Array(places.length + 1);
	flat.forEach((list, index) => (starts[index + 1] = starts[index]! + list.length));
	const all = flat.flat();
	return {
		sizes: Float64Array.from(places, (place) => sums[place]!),
		starts,
		first: Int32Array.from(all, ([first]) => newPlace.get(first)!),
		other: Int32Array.from(all, ([, other]) => newPlace.get(other)!),
	};
}

function pairsOf(place: number, sums: Float64Array): readonly (readonly [number, number])[] {
	const size = sums[place]!;
	const pairs: (readonly [number, number])[] = [];
	for (let first = 0; 2 * sums[first]! <= size; first++) {
		const other = floorPlace(sums, size - sums[first]!);
		if (other < first) continue;
		// The other piece is what is left; the first may then grow as far as that one stays.
		const grown = floorPlace(sums, size - sums[other]!);
		const pair = grown <= other ? ([grown, other] as const) : ([other, grown] as const);
		const last = pairs.at(-1);
		if (last?.[0] !== pair[0] || last[1] !== pair[1]) pairs.push(pair);
	}
	return pairs;
}

/** The place of the largest of the ascending sizes that is not over `size`; -1 where all are. */
export function floorPlace(sizes: Float64Array, size: number): number {
	let low = -1;
	for (let high = sizes.length; high - low > 1;) {
		const middle = (low + high) >> 1;
		if (sizes[middle]! <= size) low = middle;
		else high = middle;
	}
	return low;
}

/** The place of the smallest of the ascending sizes that is not under `size`; their number where all are. */
export function ceilPlace(sizes: Float64Array, size: number): number {
	const place = floorPlace(sizes, size);
	return place >= 0 && sizes[place] === size ? place : place + 1;
}
