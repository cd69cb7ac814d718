import type { Length } from '../length/length.ts';
import type { CellTexts } from '../show/row.ts';
import type { Code, FiguresByCode } from './figures.ts';

/** `stop`: do not cut. `look`: decide. `note`: good to know. */
export type Level = 'stop' | 'look' | 'note';

/** A single change that makes a finding go away, offered as one tap. */
export interface Mend {
	/** What the tap does, in a few words: "Clear top", "Read as cm: 456 × 306 mm". */
	readonly label: string;
	/** The cells it types, or clears (empty text). */
	readonly change: CellTexts;
	/** The gap that it gives to a wall in the settings; most give none. */
	readonly wallGap?: { readonly wall: string; readonly gap: Length };
}

/** Something that is found in a row. */
export interface Finding {
	readonly code: Code;
	readonly level: Level;
	/** The keys of `SolvedRow` that it concerns; for `not-read`, and where no such key fits, column names. */
	readonly cells: readonly string[];
	/** What was found, from which its sentence is made, and by which it is accepted. */
	readonly figures: FiguresByCode[Code];
	/** One plain sentence with the figures in it, in the show's unit. */
	readonly message: string;
	readonly mends: readonly Mend[];
}
