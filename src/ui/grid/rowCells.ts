import { pictureColumn } from '../../core/grid/resolutionColumn.ts';
import { type CellView, levelWord } from './cellView.ts';
import type { RowView } from './rowViews.ts';
import type { ShownColumn } from './shownColumns.svelte.ts';

/** All that a cell in the page is shown from. */
export interface RowCell extends CellView {
	/** Place of its row among those that are seen, from 0. */
	readonly row: number;
	/** Its place among the columns that are shown, from 0. */
	readonly place: number;
	readonly column: ShownColumn;
	/** What is heard of it besides its text: where that comes from, and what is said of it; blank where nothing is. */
	readonly heard: string;
	readonly isActive: boolean;
	/** Whether it is being typed into. */
	readonly isEdited: boolean;
	readonly isSelected: boolean;
	/** Whether it would be filled if the handle were let go. */
	readonly isDrawn: boolean;
	/** The address of the small picture that it shows; undefined where there is none, or none yet. */
	readonly address: string | undefined;
}

/**
 * The cells of a row that are in the page, each the same object as before while it shows what it showed before: only
 * what differs is written into the page.
 * @param views what the cells show, in the same order as the row's places
 */
export function rowCells(
	former: readonly RowCell[],
	row: RowView,
	columns: readonly ShownColumn[],
	views: readonly CellView[],
): readonly RowCell[] {
	const known = new Map(former.map((cell) => [cell.column.key, cell]));
	return row.places.map((place, at): RowCell => {
		const [column, view] = [columns[place]!, views[at]!];
		const isActive = place === row.activeColumn;
		const next: RowCell = {
			...view,
			row: row.index,
			place,
			column,
			heard: heardOf(column, view),
			isActive,
			isEdited: isActive && row.isEditing,
			isSelected: place >= row.selectedFrom && place <= row.selectedTo,
			isDrawn: place >= row.drawnFrom && place <= row.drawnTo,
			address: column.key === pictureColumn ? row.address : undefined,
		};
		const old = known.get(column.key);
		return old && isSameCell(old, next) ? old : next;
	});
}

const isSameCell = (a: RowCell, b: RowCell): boolean =>
	(Object.keys(b) as (keyof RowCell)[]).every((key) => a[key] === b[key]);

function heardOf(column: ShownColumn, { text, state, level }: CellView): string {
	const isStateSaid = column.isFigure || column.key === 'mount' || column.key === 'shape';
	const words = [
		column.isFrozen && text === '' && `no ${column.label.toLowerCase()}`,
		isStateSaid && state === 'inherited' && 'from the show',
		isStateSaid && (state === 'typed' || state === 'worked out') && state,
		level && levelWord(level).toLowerCase(),
	];
	return words.filter((word) => typeof word === 'string').join(', ');
}
