import type { Blank } from '../show/blank.ts';

/**
 * The spare blanks of a board: a share of its blanks, rounded up. They are of the sizes that are wanted most, shared out
 * by greatest remainder; where remainders are equal the larger size goes first, for it can be cut down to a smaller one.
 */
export function sparesOf(blanks: readonly Blank[], sparesPercent: number): readonly Blank[] {
	// A share such as 10 % is no exact number in binary: 10 % of 30 must not come out as a fourth spare.
	const wanted = Math.ceil((blanks.length * sparesPercent) / 100 - 1e-9);
	const sizes = new Map<string, { readonly first: Blank; count: number }>();
	for (const blank of blanks) {
		const key = `${Math.max(blank.width, blank.height)} ${Math.min(blank.width, blank.height)}`;
		const size = sizes.get(key);
		if (size) size.count++;
		else sizes.set(key, { first: blank, count: 1 });
	}
	const shares = [...sizes.values()].map(({ first, count }) => {
		const exact = (wanted * count) / blanks.length;
		return { first, whole: Math.floor(exact), rest: exact - Math.floor(exact) };
	});
	const areaOf = ({ width, height }: Blank) => width * height;
	const byRest = [...shares].sort((a, b) => b.rest - a.rest || areaOf(b.first) - areaOf(a.first));
	let missing = wanted - shares.reduce((sum, { whole }) => sum + whole, 0);
	for (const share of byRest) if (missing-- > 0) share.whole++;
	return shares
		.flatMap(({ first, whole }) => new Array<Blank>(whole).fill(first))
		.map((blank, index) => ({ ...blank, row: 0, rowId: undefined, copy: index + 1 }));
}
