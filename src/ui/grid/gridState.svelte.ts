import type { ArrangedRows } from './arrangedRows.svelte.ts';
import { arrangeRows } from './arrangeRows.ts';
import { CellPlans } from './cellPlans.ts';
import { ColumnEdits } from './columnEdits.ts';
import { GridBlocks } from './gridBlocks.svelte.ts';
import { GridEditor } from './gridEditor.svelte.ts';
import { GridEdits } from './gridEdits.ts';
import type { GridNotices } from './gridNotices.svelte.ts';
import { GridPaste } from './gridPaste.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { GridSource } from './gridSource.ts';
import { RowEdits } from './rowEdits.ts';
import { RowOrder } from './rowOrder.ts';
import type { SeenCells } from './seenCells.ts';
import { SelectionMoves } from './selectionMoves.ts';
import type { ShownColumns } from './shownColumns.svelte.ts';

/** What of the grid is seen and selected (`GridSeen`). */
interface Seen {
	readonly arranged: ArrangedRows;
	readonly columns: ShownColumns;
	readonly cells: SeenCells;
	readonly selection: GridSelection;
	readonly notices: GridNotices;
}

/** The grid's state, whole: what is seen, what is selected, and what a key or a tap does to it. */
export class GridState implements Seen {
	/** Which rows are seen, and in which sequence. */
	readonly arranged: ArrangedRows;
	/** Which columns are shown. */
	readonly columns: ShownColumns;
	readonly cells: SeenCells;
	readonly selection: GridSelection;
	readonly notices: GridNotices;
	/** Where keys move the selection. */
	readonly moves: SelectionMoves;
	readonly editor: GridEditor;
	readonly edits: GridEdits;
	readonly rowEdits: RowEdits;
	readonly columnEdits: ColumnEdits;
	readonly order: RowOrder;
	readonly blocks: GridBlocks;
	readonly pasting: GridPaste;

	constructor(source: GridSource, { arranged, columns, cells, selection, notices }: Seen) {
		const edits = new GridEdits(source, selection, notices);
		const rowEdits = new RowEdits(source, cells, selection, edits, notices);
		const plans = new CellPlans(source, cells, selection, edits, notices);
		this.arranged = arranged;
		arranged.arrangeRows = arrangeRows;
		this.columns = columns;
		this.cells = cells;
		this.selection = selection;
		this.notices = notices;
		this.edits = edits;
		this.rowEdits = rowEdits;
		this.moves = new SelectionMoves(selection, cells);
		this.editor = new GridEditor(source, cells, selection, this.moves, rowEdits, edits, plans, notices);
		this.columnEdits = new ColumnEdits(columns, selection, notices);
		this.order = new RowOrder(source, cells, selection, edits, notices);
		this.blocks = new GridBlocks(cells, selection, edits, plans, notices);
		this.pasting = new GridPaste(source, cells, selection, plans, notices);
	}
}
