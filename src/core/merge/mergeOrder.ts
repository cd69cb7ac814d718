import type { RowId } from '../show/row.ts';

/** How the order of the rows differs between two sides. */
export interface OrderDifference {
	/** The rows as they stand with the order of here, and of there; those of the other side after their neighbour. */
	readonly here: readonly RowId[];
	readonly there: readonly RowId[];
	/** Who has put rows that both have in another order; undefined where they stand in the same. */
	readonly changedBy: 'here' | 'there' | 'both' | undefined;
}

/**
 * Compares the order of the rows.
 * @param base the order that both began with; undefined where that is not known: then rows of there come last
 */
export function mergeOrder(
	here: readonly RowId[],
	there: readonly RowId[],
	base: readonly RowId[] | undefined,
): OrderDifference {
	const inBoth = common(here, there);
	const hereAlone = here.filter((id) => !inBoth.has(id));
	const thereAlone = there.filter((id) => !inBoth.has(id));
	const orders = {
		here: base ? withOthers(here, there, base) : [...here, ...thereAlone],
		there: hereAlone.length > 0 ? withOthers(there, here, base ?? []) : there,
	};
	if (isSameOrder(here, there, inBoth)) return { ...orders, changedBy: undefined };
	if (!base) return { ...orders, changedBy: 'both' };
	const inAll = common(base, [...inBoth]);
	const hereMoved = !isSameOrder(base, here, inAll);
	const thereMoved = !isSameOrder(base, there, inAll);
	return { ...orders, changedBy: hereMoved ? (thereMoved ? 'both' : 'here') : 'there' };
}

const common = (a: readonly RowId[], b: readonly RowId[]): ReadonlySet<RowId> => {
	const inB = new Set(b);
	return new Set(a.filter((id) => inB.has(id)));
};

function isSameOrder(a: readonly RowId[], b: readonly RowId[], among: ReadonlySet<RowId>): boolean {
	const other = b.filter((id) => among.has(id));
	return a.filter((id) => among.has(id)).every((id, place) => id === other[place]);
}

/**
 * A sequence with the rows that only another has, each behind the row that it stands behind there, and behind those of
 * this sequence alone that came before it in the base; those that stand before all common rows there, before the first
 * of them; at the end where there are none.
 */
function withOthers(sequence: readonly RowId[], other: readonly RowId[], base: readonly RowId[]): readonly RowId[] {
	const placeOf = new Map(sequence.map((id, place) => [id, place]));
	const inOther = new Set(other);
	const placeInBase = new Map(base.map((id, place) => [id, place]));
	const firstKnown = other.find((id) => placeOf.has(id));
	const ahead: RowId[] = [];
	const behind = new Map<RowId, RowId[]>();
	let anchor: RowId | undefined;
	for (const id of other) {
		if (placeOf.has(id)) anchor = id;
		else if (anchor === undefined) ahead.push(id);
		else {
			const was = placeInBase.get(id);
			let next = placeOf.get(anchor)! + 1;
			for (; was !== undefined && next < sequence.length && !inOther.has(sequence[next]!); next++)
				if ((placeInBase.get(sequence[next]!) ?? was) < was) anchor = sequence[next]!;
			if (behind.get(anchor)?.push(id) === undefined) behind.set(anchor, [id]);
		}
	}
	const placed = sequence.flatMap((id) => [...(id === firstKnown ? ahead : []), id, ...(behind.get(id) ?? [])]);
	return firstKnown === undefined ? [...placed, ...ahead] : placed;
}
