import type { Range } from '../../core/grid/selection.ts';
import type { RowSource } from './cellView.ts';
import type { Slot } from './slots.ts';

/** All that a row of the grid is shown from. */
export interface RowView extends Slot, RowSource {
	/** The places of the columns of which its cells are in the page, from the left. */
	readonly places: readonly number[];
	/** Place of the active column in the active row; -1 in others. */
	readonly activeColumn: number;
	/** The selected columns of the row, the last one too; -1 where there are none. */
	readonly selectedFrom: number;
	readonly selectedTo: number;
	/** The columns of the row that would be filled if the handle were let go, the last one too; -1 where none would. */
	readonly drawnFrom: number;
	readonly drawnTo: number;
	/** Whether it is the active row, of which the drawing is shown. */
	readonly isShown: boolean;
	/** The address of its small picture; undefined where there is none, or none yet. */
	readonly address: string | undefined;
	/** Whether the active cell is being typed into. */
	readonly isEditing: boolean;
}

/** The rows as they were when the page was last painted. */
export interface PaintedRows {
	readonly views: readonly RowView[];
	/** Pixels a millimetre at which prints are drawn beside their titles: one for all. */
	readonly scale: number;
}

/** The columns of a rectangle in a row of it, the last one too; -1 in other rows. */
export function columnsIn(range: Range | undefined, row: number): { readonly from: number; readonly to: number } {
	const isIn = range !== undefined && row >= range.top && row <= range.bottom;
	return isIn ? { from: range.left, to: range.right } : { from: -1, to: -1 };
}

/**
 * The views as they are now, in which each that shows what it showed before is the same object as before: then nothing
 * of its row is looked at again, whatever has changed elsewhere.
 */
export function keepRowViews(former: readonly RowView[], next: readonly RowView[]): readonly RowView[] {
	const known = new Map(former.map((view) => [view.slot, view]));
	return next.map((view) => {
		const old = known.get(view.slot);
		return old && isSameView(old, view) ? old : view;
	});
}

function isSameView(a: RowView, b: RowView): boolean {
	return (Object.keys(b) as (keyof RowView)[]).every(
		(key) => a[key] === b[key] || (key === 'steps' && isSameSteps(a, b)),
	);
}

const isSameSteps = ({ steps: a }: RowView, { steps: b }: RowView): boolean =>
	a.length === b.length && a.every((step, place) => step === b[place]);
