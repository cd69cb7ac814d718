/** The unit that a bare number is in. */
export type Unit = 'mm' | 'cm' | 'in';

/** The unit that a length is said in beside its own: inches beside metric ones, mm beside inches. */
export const otherUnit = (unit: Unit): Unit => (unit === 'in' ? 'mm' : 'in');

/** What a typed text was read as, or why it could not be: a sentence, and the texts it may have meant. */
export type Reading<Value> = { readonly value: Value } | Problem;

/** A text that could not be read. */
export interface Problem {
	/** One plain sentence, without the name of the cell. */
	readonly problem: string;
	/** Texts that can be read and may be what was meant, likeliest first: each can be offered as one tap. */
	readonly readings?: readonly string[];
}

/** Whether a text could not be read. */
export const isProblem = <Value>(reading: Reading<Value>): reading is Problem => 'problem' in reading;
