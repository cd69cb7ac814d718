import type { BenchPlan, BenchStep } from '../core/bench/benchPlan.ts';
import type { Row } from '../core/show/row.ts';

/** Pause after a change before the plan is made again, in milliseconds: shorter than one notices, longer than a frame. */
const pauseMs = 80;

interface Made {
	readonly steps: readonly BenchStep[];
	readonly stepsOfRows: ReadonlyMap<Row, readonly number[]>;
}

const none: readonly number[] = [];

/**
 * The bench plan as it was when typing last paused, for screens with fields: they never wait for it. A row that
 * has changed since has no steps until then.
 */
export class LateBench {
	#made = $state.raw<Made>({ steps: [], stepsOfRows: new Map() });
	#timer: ReturnType<typeof setTimeout> | undefined;
	readonly #read: () => { readonly rows: readonly Row[]; readonly plan: BenchPlan };

	/** @param read the rows and their plan as they are now */
	constructor(read: () => { readonly rows: readonly Row[]; readonly plan: BenchPlan }) {
		this.#read = read;
	}

	get steps(): readonly BenchStep[] {
		return this.#made.steps;
	}

	/** The steps in which the cuts of a row come, from 1. */
	stepsOf(row: Row): readonly number[] {
		return this.#made.stepsOfRows.get(row) ?? none;
	}

	/** Has the plan made again when there is time. */
	later(): void {
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => {
			const { rows, plan } = this.#read();
			// Of thousands of rows that takes as long again.
			this.#timer = setTimeout(() => {
				const own = plan.stepsOfRows;
				this.#made = { steps: plan.steps, stepsOfRows: new Map(rows.map((row, index) => [row, own[index] ?? none])) };
			});
		}, pauseMs);
	}

	/** Makes it no more. */
	stop(): void {
		clearTimeout(this.#timer);
	}
}
