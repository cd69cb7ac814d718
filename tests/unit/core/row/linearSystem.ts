const divisorOf = (a: bigint, b: bigint): bigint => {
	let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
	while (y !== 0n) [x, y] = [y, x % y];
	return x;
};

/** An exact number. */
export class Exact {
	readonly numerator: bigint;
	readonly denominator: bigint;

	constructor(numerator: bigint, denominator: bigint) {
		const divisor = divisorOf(numerator, denominator) * (denominator < 0n ? -1n : 1n);
		this.numerator = numerator / divisor;
		this.denominator = denominator / divisor;
	}

	get sign(): number {
		return this.numerator > 0n ? 1 : this.numerator < 0n ? -1 : 0;
	}

	times(factor: bigint): Exact {
		return new Exact(this.numerator * factor, this.denominator);
	}

	by(other: Exact): Exact {
		return new Exact(this.numerator * other.numerator, this.denominator * other.denominator);
	}

	over(other: Exact): Exact {
		return new Exact(this.numerator * other.denominator, this.denominator * other.numerator);
	}

	plus(other: Exact): Exact {
		return new Exact(
			this.numerator * other.denominator + other.numerator * this.denominator,
			this.denominator * other.denominator,
		);
	}

	/** Below, at or above zero as this is under, at or over the other. */
	compare(other: Exact): number {
		return this.plus(other.times(-1n)).sign;
	}

	floor(): bigint {
		const down = this.numerator / this.denominator;
		return down * this.denominator > this.numerator ? down - 1n : down;
	}

	ceiling(): bigint {
		return -this.times(-1n).floor();
	}
}

/** A whole number, or a fraction. */
export const exact = (numerator: bigint, denominator = 1n): Exact => new Exact(numerator, denominator);

/** Unknowns with their factors. */
export type Terms<Key extends string> = Partial<Readonly<Record<Key, Exact>>>;

/** What unknowns with factors add up to. */
export interface Equation<Key extends string> {
	readonly terms: Terms<Key>;
	readonly sum: Exact;
}

/** Equations that may be this far out, in units of a length, and still count as true: 1 µm. */
const tolerance = exact(10_000n);

/**
 * Linear equations that are all true, each solved for one unknown and free of what the others are solved for, so that an
 * unknown has a value once nothing else is left beside it. A system never changes.
 */
export class LinearSystem<Key extends string> {
	readonly #solved: ReadonlyMap<Key, Equation<Key>>;

	constructor(solved: ReadonlyMap<Key, Equation<Key>> = new Map()) {
		this.#solved = solved;
	}

	/** The system with more equations; undefined where they could not all be true, to 1 µm. */
	with(equations: readonly Equation<Key>[]): LinearSystem<Key> | undefined {
		const solved = new Map(this.#solved);
		for (const equation of equations) {
			const { terms, sum } = reduced(equation, solved);
			const pivot = keysIn(terms)[0];
			if (pivot === undefined) {
				if (sum.compare(tolerance) > 0 || sum.times(-1n).compare(tolerance) > 0) return undefined;
				continue;
			}
			const row = scaled({ terms, sum }, exact(1n).over(terms[pivot]!));
			const only = new Map([[pivot, row]]);
			for (const [key, other] of solved) if (other.terms[pivot]) solved.set(key, reduced(other, only));
			solved.set(pivot, row);
		}
		return new LinearSystem(solved);
	}

	/** The value of an unknown; undefined where it is not settled. */
	value(key: Key): Exact | undefined {
		return this.valueOf({ [key]: exact(1n) } as Terms<Key>);
	}

	/** The value of a sum of unknowns; undefined where it is not settled. */
	valueOf(terms: Terms<Key>): Exact | undefined {
		const rest = reduced({ terms, sum: exact(0n) }, this.#solved);
		return keysIn(rest.terms).length === 0 ? rest.sum.times(-1n) : undefined;
	}
}

const keysIn = <Key extends string>(terms: Terms<Key>) => Object.keys(terms) as Key[];

/** An equation without the unknowns that others are solved for. */
function reduced<Key extends string>({ terms, sum }: Equation<Key>, solved: ReadonlyMap<Key, Equation<Key>>) {
	const left = new Map(keysIn(terms).map((key): [Key, Exact] => [key, terms[key]!]));
	let rest = sum;
	for (const key of keysIn(terms)) {
		const row = solved.get(key);
		if (!row) continue;
		const factor = left.get(key)!.times(-1n);
		for (const other of keysIn(row.terms))
			left.set(other, row.terms[other]!.by(factor).plus(left.get(other) ?? exact(0n)));
		rest = rest.plus(row.sum.by(factor));
	}
	const unsolved = [...left].filter(([, factor]) => factor.sign !== 0);
	return { terms: Object.fromEntries(unsolved) as Terms<Key>, sum: rest };
}

const scaled = <Key extends string>({ terms, sum }: Equation<Key>, factor: Exact): Equation<Key> => ({
	terms: Object.fromEntries(keysIn(terms).map((key) => [key, terms[key]!.by(factor)])) as Terms<Key>,
	sum: sum.by(factor),
});
