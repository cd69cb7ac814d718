import type { Finding } from '../findings/finding.ts';
import type { Length } from '../length/length.ts';
import type { SolvedRow } from './solvedRow.ts';

/** Everything that a row works out by itself, from its typed cells and the show's settings. */
export interface RowResult {
	readonly solved: SolvedRow;
	/** In the order of weight: `stop`, then `look`, then `note`; without what was accepted. */
	readonly findings: readonly Finding[];
	/** What was found and accepted as it is: `look`s whose figures have not changed since. */
	readonly accepted: readonly Finding[];
	/** Whether any finding is a `stop`: such a row is left out of bench and board plans. */
	readonly isStopped: boolean;
	/** How many of it are made: 1 where no number is typed, 0 for a row in which nothing is. */
	readonly copies: number;
	/** How far an inner mount shows, per side; undefined where there is none. */
	readonly innerMount: Length | undefined;
}
