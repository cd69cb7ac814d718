import { flushSync, tick } from 'svelte';
import { ArrangedRows } from './arrangedRows.svelte.ts';
import { GridNotices } from './gridNotices.svelte.ts';
import { GridSelection } from './gridSelection.svelte.ts';
import type { GridSource } from './gridSource.ts';
import type { GridState } from './gridState.svelte.ts';
import { SeenCells } from './seenCells.ts';
import { ShownColumns } from './shownColumns.svelte.ts';

/** Where the grid was scrolled to when it went from the page, and what was selected then. */
interface LeftAt {
	readonly choice: object;
	readonly top: number;
	readonly left: number;
}

/**
 * What of the grid is seen and selected, which is all that its first picture takes. What is done to it comes with the
 * part that is loaded beside that; whatever is asked of it before waits for it, and is done in its turn.
 */
export class GridSeen {
	/** Which rows are seen, and in which sequence. */
	readonly arranged: ArrangedRows;
	/** Which columns are shown. */
	readonly columns: ShownColumns;
	readonly cells: SeenCells;
	readonly selection: GridSelection;
	readonly notices = new GridNotices();
	/** Where it was left: seen again there, unless something else was selected since. */
	leftAt: LeftAt | undefined;
	#whole = $state.raw<GridState>();
	readonly #waiting: ((grid: GridState) => void)[] = [];
	#hasPlayed = false;

	constructor(source: GridSource) {
		this.arranged = new ArrangedRows(source);
		this.columns = new ShownColumns(source);
		this.cells = new SeenCells(source, this.arranged, this.columns);
		this.selection = new GridSelection(this.cells);
	}

	/** The grid with what is done to it; undefined until that is loaded. */
	get whole(): GridState | undefined {
		return this.#whole;
	}

	/** Whether what comes now has to wait: that part is not loaded, or what has waited for it is not done yet. */
	get isWaiting(): boolean {
		return !this.#hasPlayed;
	}

	/** Does something with the whole grid: at once where it is loaded, else in its turn as soon as it is. */
	do(act: (grid: GridState) => void): void {
		if (this.#whole && this.#hasPlayed) act(this.#whole);
		else this.#waiting.push(act);
	}

	/** What is done to the grid has been loaded: what has waited for it is done once it is drawn. */
	async complete(whole: GridState): Promise<void> {
		this.#whole = whole;
		await tick();
		this.#hasPlayed = true;
		for (const act of this.#waiting.splice(0)) {
			act(whole);
			flushSync(); // the next finds the page as it would have found it
		}
	}
}
