import { ArrangedRows } from './arrangedRows.svelte.ts';
import { CellPlans } from './cellPlans.ts';
import { ColumnEdits } from './columnEdits.ts';
import { GridBlocks } from './gridBlocks.svelte.ts';
import { GridEditor } from './gridEditor.svelte.ts';
import { GridEdits } from './gridEdits.ts';
import { GridNotices } from './gridNotices.svelte.ts';
import { GridPaste } from './gridPaste.svelte.ts';
import { GridSelection } from './gridSelection.svelte.ts';
import type { GridSource } from './gridSource.ts';
import { RowEdits } from './rowEdits.ts';
import { RowOrder } from './rowOrder.ts';
import { SeenCells } from './seenCells.ts';
import { ShownColumns } from './shownColumns.svelte.ts';

/** Where the grid was scrolled to when it went from the page, and what was selected then. */
interface LeftAt {
	readonly choice: object;
	readonly top: number;
	readonly left: number;
}

/** The grid's state, put together: what is seen, what is selected, and what a key or a tap does to it. */
export class GridState {
	/** Which rows are seen, and in which sequence. */
	readonly arranged: ArrangedRows;
	/** Which columns are shown. */
	readonly columns: ShownColumns;
	readonly cells: SeenCells;
	readonly selection: GridSelection;
	readonly editor: GridEditor;
	readonly edits: GridEdits;
	readonly rowEdits: RowEdits;
	readonly columnEdits: ColumnEdits;
	readonly order: RowOrder;
	readonly blocks: GridBlocks;
	readonly pasting: GridPaste;
	readonly notices = new GridNotices();
	/** Where it was left: seen again there, unless something else was selected since. */
	leftAt: LeftAt | undefined;

	constructor(source: GridSource) {
		const { notices } = this;
		const arranged = new ArrangedRows(source);
		const columns = new ShownColumns(source);
		const cells = new SeenCells(source, arranged, columns);
		const selection = new GridSelection(cells);
		const edits = new GridEdits(source, selection, notices);
		const rowEdits = new RowEdits(source, cells, selection, edits, notices);
		const plans = new CellPlans(source, cells, selection, edits, notices);
		this.arranged = arranged;
		this.columns = columns;
		this.cells = cells;
		this.selection = selection;
		this.edits = edits;
		this.rowEdits = rowEdits;
		this.editor = new GridEditor(source, cells, selection, rowEdits, edits, plans, notices);
		this.columnEdits = new ColumnEdits(columns, selection, notices);
		this.order = new RowOrder(source, cells, selection, edits, notices);
		this.blocks = new GridBlocks(cells, selection, edits, plans, notices);
		this.pasting = new GridPaste(source, cells, selection, plans, notices);
	}
}
