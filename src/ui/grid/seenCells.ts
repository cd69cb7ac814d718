import type { Extent, Position } from '../../core/grid/selection.ts';
import { placeInShow } from '../../core/grid/shownRows.ts';
import type { RowResult } from '../../core/findings/rowResult.ts';
import { asTyped } from '../../core/show/asTyped.ts';
import type { CellPlace } from '../../core/show/cellPlace.ts';
import type { ColumnName } from '../../core/show/columns.ts';
import type { Row, RowId } from '../../core/show/row.ts';
import { type ArrangedRows, costIn } from './arrangedRows.svelte.ts';
import { isFilled, type RowSource, textAndState } from './cellView.ts';
import { gridColumns } from './gridColumns.ts';
import type { RowsSource } from './gridSource.ts';
import type { ShownColumns } from './shownColumns.svelte.ts';

/** The cells that are seen, by their places among the rows and columns that are, and what each of them shows. */
export class SeenCells {
	readonly #source: RowsSource;
	readonly arranged: ArrangedRows;
	readonly columns: ShownColumns;
	/** Places of rows by their names, made once for each state of the rows. */
	readonly #places = new WeakMap<readonly Row[], ReadonlyMap<RowId, number>>();

	constructor(source: RowsSource, arranged: ArrangedRows, columns: ShownColumns) {
		this.#source = source;
		this.arranged = arranged;
		this.columns = columns;
	}

	/** The rows that are seen. */
	get rows(): readonly Row[] {
		return this.arranged.shown.rows;
	}

	get extent(): Extent {
		return { rows: this.rows.length, columns: this.columns.list.length };
	}

	/** Whether every row of the show is seen. */
	get isWhole(): boolean {
		return this.rows.length === this.#source.show.rows.length;
	}

	/** Place of a row among those seen, from 0; -1 where it is not. */
	indexOf(id: RowId): number {
		return this.rows.findIndex((row) => row.id === id);
	}

	/** What a row that is seen works out. */
	resultAt(index: number): RowResult | undefined {
		return this.#source.resultAt(placeInShow(this.arranged.shown, index));
	}

	/** What the cells of a row are made from. */
	sourceOf(index: number): RowSource {
		const { lateBench, settings } = this.#source;
		const row = this.rows[index]!;
		const steps = lateBench.stepsOf(row);
		return { row, result: this.resultAt(index)!, steps, ...costIn(this.#source, row), settings };
	}

	/** What a cell shows now, and where that comes from; undefined if its row is not seen. */
	viewOf({ id, column }: CellPlace): ReturnType<typeof textAndState> | undefined {
		const index = this.#placesOf(this.rows).get(id);
		return index === undefined ? undefined : textAndState(columnNamed(column), this.sourceOf(index));
	}

	/** Whether a cell shows anything, typed or worked out. */
	readonly isFilled = ({ row, column }: Position): boolean => isFilled(this.columns.list[column]!, this.sourceOf(row));

	/** What was typed into a cell; blank where it was not. */
	readonly typedAt = (index: number, column: ColumnName): string => {
		const row = this.rows[index];
		return row ? asTyped(row, column) : '';
	};

	#placesOf(rows: readonly Row[]): ReadonlyMap<RowId, number> {
		const places = this.#places.get(rows) ?? new Map(rows.map(({ id }, place) => [id, place]));
		this.#places.set(rows, places);
		return places;
	}
}

/** The column of the grid in which a typed column stands. */
export const columnNamed = (name: ColumnName) => gridColumns.find(({ key }) => key === name)!;
