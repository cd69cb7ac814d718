import {
	columnsOf,
	type ColumnView,
	hideColumns,
	isViewColumn,
	moveColumns,
	showColumn,
	sizeColumn,
	type ViewColumn,
} from '../../core/grid/columnView.ts';
import type { Sort } from '../../core/grid/sortRows.ts';
import { isPurpose, activeView, type Views, withoutView, withView } from '../../core/grid/views.ts';
import type { Unit } from '../../core/length/reading.ts';
import { changeViews } from '../../core/grid/changeViews.ts';
import type { Edit } from '../../core/show/edit.ts';
import type { Show } from '../../core/show/show.ts';
import { type ColumnGroup, groupsOf, type GridColumn, gridColumns } from './gridColumns.ts';

/** What the columns need: how the show is looked at, and the edit that changes it, which is one step of undo. */
export interface ViewsSource {
	readonly views: Views;
	readonly settings: { readonly unit: Unit };
	do(command: (show: Show) => Edit): unknown;
}

/** A column as it is shown. */
export interface ShownColumn extends GridColumn {
	/** Its place among all columns, hidden ones too, from 1. */
	readonly truePlace: number;
	/** Whether a group of columns begins with it. */
	readonly isFirst: boolean;
	/** In pixels, at the size of words that there is. */
	readonly shownWidth: number;
}

const byKey = new Map(gridColumns.map((column) => [column.key, column]));

/** Inches with their fractions need more room, in pixels. */
const moreForInches = 28;
/** Where they are closer, so that all borders are in view beside the drawing of a tablet held landscape; titles give way. */
const widthsForInches: Partial<Record<ViewColumn, number>> = {
	...{ title: 134, shape: 50, 'picture width': 58, 'picture height': 58, 'window width': 58, 'window height': 58 },
	...{ side: 50, top: 48, bottom: 54 },
};

/** The columns of the active view, in its order, and what is done to them. Each change is one step of undo. */
export class ShownColumns {
	readonly #source: ViewsSource;
	/** How many times their usual size words have: columns are as much wider, or their figures would run into each other. */
	wordScale = $state(1);
	/** What the grips leave of their widest, in pixels: titles have it, and no column after them ends elsewhere. */
	spare = $state(0);
	/** A column that is being drawn wider or narrower. */
	drawn = $state.raw<{ readonly key: ViewColumn; readonly width: number }>();

	readonly view: ColumnView = $derived.by(() => activeView(this.#source.views));
	readonly #unit = $derived.by(() => this.#source.settings.unit);
	readonly #kept: readonly ShownColumn[] = $derived.by(() => {
		const { view } = this;
		const places = new Map(view.order.map((key, place) => [key, place + 1]));
		return columnsOf(view).map((key, place, all) => {
			const column = byKey.get(key)!;
			const { width } = column;
			const inInches = widthsForInches[key] ?? (column.isFigure ? width + moreForInches : width);
			const byDefault = (this.#unit === 'in' ? inInches : width) + (key === 'title' ? this.spare : 0);
			return {
				...column,
				truePlace: places.get(key)!,
				isFirst: byKey.get(all[place - 1]!)?.group !== column.group,
				shownWidth: Math.round((view.widths.get(key) ?? byDefault) * this.wordScale),
			};
		});
	});
	/** From the left. */
	readonly list: readonly ShownColumn[] = $derived.by(() => {
		const { drawn } = this;
		if (drawn === undefined) return this.#kept;
		return this.#kept.map((each) => (each.key === drawn.key ? { ...each, shownWidth: drawn.width } : each));
	});
	/** The heads over neighbouring columns. */
	readonly groups: readonly ColumnGroup[] = $derived.by(() => groupsOf(this.#kept));
	readonly #places = $derived.by(() => new Map<string, number>(this.#kept.map(({ key }, place) => [key, place])));

	constructor(source: ViewsSource) {
		this.#source = source;
	}

	/** What the rows are sorted by. */
	get sort(): Sort | undefined {
		return this.#source.views.sort;
	}

	/** Place of a column among those shown, from 0; -1 where it is hidden. */
	indexOf(key: string): number {
		return this.#places.get(key) ?? -1;
	}

	/** Sorts the rows by a column, or lets them stand in the show's own order. */
	sortBy(sort: Sort | undefined): void {
		const words = sort ? `Sort by ${byKey.get(sort.column)!.label.toLowerCase()}` : 'Hanging order';
		this.#keep({ ...this.#source.views, sort }, words);
	}

	hide(keys: readonly string[]): void {
		this.#change(hideColumns(this.view, keys.filter(isViewColumn)), 'Hide column');
	}

	show(key: ViewColumn): void {
		this.#change(showColumn(this.view, key), 'Show column');
	}

	/** @param to place among the shown columns before which they go */
	move(keys: readonly string[], to: number): void {
		this.#change(moveColumns(this.view, keys.filter(isViewColumn), to), 'Move column');
	}

	/** Gives a column a width, in pixels as it is shown. */
	size(key: ViewColumn, width: number): void {
		this.drawn = undefined;
		this.#change(sizeColumn(this.view, key, Math.round(width / this.wordScale)), 'Column width');
	}

	/** Makes a view the active one by its name. */
	choose(name: string): void {
		this.#keep({ ...this.#source.views, active: name }, `View: ${name}`);
	}

	/** Keeps the columns as they are as a view of a name. */
	keepAs(name: string): void {
		this.#keep(withView(this.#source.views, { ...this.view, name }), `Save view ${name}`);
	}

	/** Puts the active view back to how it began; one of the show's own goes. */
	putBack(): void {
		const { name } = this.view;
		this.#keep(withoutView(this.#source.views, name), isPurpose(name) ? 'Put view back' : `Remove view ${name}`);
	}

	#change(view: ColumnView, label: string): void {
		this.#keep(withView(this.#source.views, view), label);
	}

	#keep(views: Views, label: string): void {
		this.#source.do((show) => changeViews(show, views, label));
	}
}
