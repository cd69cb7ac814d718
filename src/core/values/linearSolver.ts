/** A column that is added to a program: at least none of it, at most `most`. */
export interface LinearColumn {
	/** What one of it costs. */
	readonly cost: number;
	/** `Infinity` for any number. */
	readonly most: number;
	/** The rows that it is in, each once, and how much of it. */
	readonly rows: readonly number[];
	readonly values: readonly number[];
}

/** How a program came out. `stopped`: time or work ran out; there are values if something was found by then. */
export interface LinearOutcome {
	readonly status: 'optimal' | 'infeasible' | 'stopped';
	readonly cost: number;
	/** How many of each column; undefined where nothing was found. */
	readonly values: Float64Array | undefined;
	/** What one more in each row's bound would cost; of no meaning in whole numbers. */
	readonly duals: Float64Array | undefined;
}

/** How far a program is worked on. */
export interface LinearLimits {
	readonly seconds: number;
	/** Whole numbers only: it is enough to find something that costs no more than this. */
	readonly target?: number;
	/** Whole numbers only: what is found counts as optimal where nothing costs less by more than this; left out, nothing may. */
	readonly gap?: number;
}

/** A program whose cost is made least; rows come first, and columns are added as they are found. */
export interface LinearProgram {
	/** Adds a row that no column is in yet. */
	addRow(lower: number, upper: number): void;
	addColumns(columns: readonly LinearColumn[]): void;
	solve(limits: LinearLimits): LinearOutcome;
	/** Gives its memory back; nothing else does. */
	close(): void;
}

/**
 * Opens an empty program. Core has no such solver of its own: one is passed in.
 * @param isWhole whether every column is taken a whole number of times
 */
export type LinearSolver = (isWhole: boolean) => LinearProgram;
