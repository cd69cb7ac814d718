import type { SolvedRow } from '../row/solvedRow.ts';
import type { CellTexts } from '../show/row.ts';

/** What a piece of advice does. */
export type AdviceKind = 'even' | 'largest' | 'crop' | 'listed size' | 'cut to fit';

/** One way out for a row, with its figures: applying it gives just these. */
export interface Advice {
	readonly kind: AdviceKind;
	/** One plain sentence with the figures. */
	readonly message: string;
	/** What applying it types and clears. */
	readonly change: CellTexts;
	/** The row as it then is. */
	readonly promised: SolvedRow;
	/** Whether it says that the borders come out even: then `uneven` is not found. */
	readonly saysEven: boolean;
}
