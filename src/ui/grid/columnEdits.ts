import type { GridNotices } from './gridNotices.svelte.ts';
import type { GridSelection } from './gridSelection.svelte.ts';
import type { ShownColumn, ShownColumns } from './shownColumns.svelte.ts';

/** How much wider a key makes a column, in pixels. */
const widthStep = 12;

/** What is done to the active column, or to those that are selected from end to end. */
export class ColumnEdits {
	readonly #columns: ShownColumns;
	readonly #selection: GridSelection;
	readonly #notices: GridNotices;

	constructor(columns: ShownColumns, selection: GridSelection, notices: GridNotices) {
		this.#columns = columns;
		this.#selection = selection;
		this.#notices = notices;
	}

	/** Makes the active column wider or narrower by a step. */
	size(by: 1 | -1): void {
		const { columnIndex } = this.#selection;
		const { key, label, shownWidth } = this.#columns.list[columnIndex]!;
		this.#columns.size(key, shownWidth + by * widthStep);
		this.#notices.say(`${label}, ${this.#columns.list[columnIndex]!.shownWidth} wide`);
	}

	/** Moves the columns one place to the left or right. */
	move(by: 1 | -1): void {
		const [first, last] = this.#selection.wholeColumns;
		this.moveTo(by < 0 ? first - 1 : last + 2);
	}

	/** Moves the columns before a place among those shown. Those that stay where they are do not move. */
	moveTo(to: number): void {
		const [first, last] = this.#selection.wholeColumns;
		const { list } = this.#columns;
		const moved = this.#free;
		const [leading] = moved;
		if (leading === undefined) return this.#notices.show('Number and title always stay first.');
		if (to > list.length || (to >= first && to <= last + 1)) return;
		const { key, label } = leading;
		const before = this.#columns.indexOf(key);
		this.#columns.move(moved.map(keyOf), to);
		const place = this.#columns.indexOf(key);
		if (place !== before) this.#notices.say(`${label}, column ${place + 1} of ${list.length}`);
	}

	/** Hides the columns; what was typed into them stays. */
	hide(): void {
		const hidden = this.#free;
		if (hidden.length === 0) return this.#notices.show('Number and title can’t be hidden.');
		this.#selection.settle();
		this.#columns.hide(hidden.map(keyOf));
		this.#notices.say(`${hidden.map(({ label }) => label).join(', ')} hidden`);
	}

	/** Those of the columns that can be moved and hidden. */
	get #free(): readonly ShownColumn[] {
		const [first, last] = this.#selection.wholeColumns;
		return this.#columns.list.slice(first, last + 1).filter(({ isFrozen }) => !isFrozen);
	}
}

const keyOf = ({ key }: ShownColumn) => key;
