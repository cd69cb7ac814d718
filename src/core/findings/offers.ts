import type { ColumnName } from '../show/columns.ts';
import type { Measure, Sides } from './measure.ts';

/** What a mend does, by its kind, with what its label says of it. */
export interface FiguresOfOffers {
	readonly clear: {
		readonly columns: readonly ColumnName[];
		readonly becomes?: Measure | undefined;
		/** The window that follows, where several cells are cleared to have another. */
		readonly window?: Sides | undefined;
	};
	readonly 'cut to fit': { readonly mount?: Sides | undefined };
	readonly 'mount it in a window': Nothing;
	readonly 'give a mount': Nothing;
	/** Types a length into a cell. */
	readonly set: { readonly column: ColumnName; readonly to: Measure };
	/** Types a size, by its name where it has one. */
	readonly 'set size': {
		readonly of: 'mount' | 'picture' | 'paper';
		readonly name?: string | undefined;
		readonly size: Sides;
	};
	/** Types a name of the show's lists. */
	readonly 'set name': {
		readonly column: ColumnName;
		readonly name: string;
		/** How large it is; a roll has no height. */
		readonly size?: { readonly width: Measure; readonly height?: Measure | undefined } | undefined;
	};
	/** Types what is no length and no name: a word that the cell may hold, a number, another reading. */
	readonly 'set text': { readonly column: ColumnName; readonly text: string };
	readonly swap: { readonly of: 'mount' | 'picture' };
	readonly 'set the gap': { readonly wall: string; readonly gap: Measure };
	readonly 'read in a unit': { readonly lengths: readonly (readonly Measure[])[] };
}

/** Nothing is said but what it does. */
type Nothing = object;

/** What a mend does. */
export type Offer = {
	[Kind in keyof FiguresOfOffers]: { readonly kind: Kind } & FiguresOfOffers[Kind];
}[keyof FiguresOfOffers];
