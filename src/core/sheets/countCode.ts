/**
 * How many blanks of each type a box holds, in a few whole numbers that can be added. Each type has as many bits as its
 * count needs and one more, which is set when a sum is over what is wanted:
 *
 *     sum = a + b;    over = (sum + bias) & guard
 */
export interface CountCode {
	/** The code of one blank of each type. */
	readonly units: readonly (readonly number[])[];
	/** The code of `a` and `b` together; undefined where that is more than is wanted. */
	add(a: readonly number[], b: readonly number[]): number[] | undefined;
	/** Whether `a` and `b` together are no more than is wanted. */
	canAdd(a: readonly number[], b: readonly number[]): boolean;
	/** How many of a type a code holds. */
	countOf(code: readonly number[], type: number): number;
}

/** Bits of one number: bitwise arithmetic has 32, one of them a sign. */
const bitsOfWord = 30;

/** The code for these counts wanted, each at least one. */
export function countCode(wanted: readonly number[]): CountCode {
	const places: { word: number; shift: number; bits: number }[] = [];
	let word = 0;
	let shift = 0;
	for (const count of wanted) {
		const bits = 32 - Math.clz32(count);
		if (shift + bits + 1 > bitsOfWord) [word, shift] = [word + 1, 0];
		places.push({ word, shift, bits });
		shift += bits + 1;
	}
	const zeros = () => new Array<number>(word + 1).fill(0);
	const [bias, guard] = [zeros(), zeros()];
	const units = places.map(({ word, shift, bits }, type) => {
		bias[word]! += (2 ** bits - 1 - wanted[type]!) * 2 ** shift;
		guard[word]! += 2 ** (shift + bits);
		const unit = zeros();
		unit[word] = 2 ** shift;
		return unit;
	});
	const canAdd = (a: readonly number[], b: readonly number[]): boolean => {
		for (let word = 0; word < guard.length; word++)
			if (((a[word]! + b[word]! + bias[word]!) & guard[word]!) !== 0) return false;
		return true;
	};
	return {
		units,
		canAdd,
		add: (a, b) => (canAdd(a, b) ? a.map((part, word) => part + b[word]!) : undefined),
		countOf: (code, type) => {
			const { word, shift, bits } = places[type]!;
			return (code[word]! >>> shift) & (2 ** bits - 1);
		},
	};
}
