import type { ColumnName } from '../show/columns.ts';
import type { PaperEdge, SlipWord } from './figures.ts';
import type { Measure, Sides } from './measure.ts';

/** What a mend does, by its kind, with what its label says of it. */
export interface FiguresOfOffers {
	readonly clear: { readonly columns: readonly ColumnName[]; readonly becomes?: Measure | undefined };
	readonly 'cut to fit': { readonly mount?: Sides | undefined };
	readonly 'make the mount': { readonly size: Sides };
	readonly 'use the show’s mount': { readonly size: Sides };
	readonly 'make a side': { readonly column: ColumnName; readonly length: Measure };
	readonly 'print at': { readonly size: Sides };
	readonly 'turn over': { readonly what: 'mount' | 'picture' };
	readonly 'set the overlap': { readonly overlap: Measure };
	readonly cover: { readonly overlap: Measure };
	readonly 'ask for a reveal': { readonly reveal: Measure };
	readonly 'leave a signing space': { readonly space: Measure };
	readonly 'print on': { readonly paper?: string | undefined; readonly size: Sides };
	readonly 'use the paper': { readonly paper: string };
	readonly 'move on paper': { readonly edge: PaperEdge; readonly to: Measure };
	readonly 'mount it in a window': Nothing;
	readonly 'use the board': { readonly board: string };
	readonly 'use the frame': { readonly frame: string };
	readonly 'use the material': { readonly what: 'glazing' | 'backing'; readonly name: string };
	readonly 'put in a spacer': { readonly spacer: Measure };
	readonly 'no glazing': Nothing;
	readonly 'give a mount': Nothing;
	readonly 'one copy': Nothing;
	readonly 'sign the print': { readonly on: 'back' | 'picture' };
	readonly 'is signed': { readonly on: 'back' | 'picture' };
	readonly 'move to the wall': { readonly wall: string };
	readonly 'set the gap': { readonly wall: string; readonly gap: Measure };
	readonly 'read as text': { readonly text: string };
	readonly 'read in a unit': { readonly as: SlipWord; readonly lengths: readonly (readonly Measure[])[] };
}

/** Nothing is said but what it does. */
type Nothing = object;

/** What a mend does. */
export type Offer = {
	[Kind in keyof FiguresOfOffers]: { readonly kind: Kind } & FiguresOfOffers[Kind];
}[keyof FiguresOfOffers];
