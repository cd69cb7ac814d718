import type { CellTexts } from '../show/row.ts';

/** `stop`: do not cut. `look`: decide. `note`: good to know. */
export type Level = 'stop' | 'look' | 'note';

/** A single change that makes a finding go away, offered as one tap. */
export interface Mend {
	/** What the tap does, in a few words: "Clear top", "Read as cm: 456 × 306 mm". */
	readonly label: string;
	/** The cells it types, or clears (empty text). */
	readonly change: CellTexts;
}

/** Something a row is told. */
export interface Finding {
	readonly code: string;
	readonly level: Level;
	/** The keys of `SolvedRow` that it concerns; for `not-read`, and where no such key fits, column names. */
	readonly cells: readonly string[];
	/** One plain sentence with the numbers in it, in the show's unit. */
	readonly message: string;
	readonly mends: readonly Mend[];
}
