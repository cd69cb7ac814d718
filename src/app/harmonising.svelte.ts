import { changesFigures } from '../core/harmonise/changesFigures.ts';
import type { Harmony } from '../core/harmonise/harmonise.ts';
import type { RowId } from '../core/show/row.ts';
import { typeCells } from '../core/commands/typeCells.ts';
import { harmoniseInWorker } from '../workers/harmoniseInWorker.ts';
import type { Step } from './history.svelte.ts';
import type { Session } from './session.svelte.ts';

/** Harmonising a show: the choice is worked out beside the screen, shown, and applied whole, in part or not at all. */
export class Harmonising {
	most = $state(1);
	isBusy = $state(false);
	problem = $state<string>();
	/** What was chosen, until it is applied or the show changes. */
	harmony = $state.raw<Harmony>();
	/** The rows that the choice will be applied to; at first all whose figures change. */
	chosenRows = $state.raw<ReadonlySet<RowId>>(new Set());
	readonly #session: Session;
	readonly #harmonise: typeof harmoniseInWorker;
	#job: AbortController | undefined;

	constructor(session: Session, harmonise = harmoniseInWorker) {
		this.#session = session;
		this.#harmonise = harmonise;
	}

	/** Works the choice out; a job that is under way ends. */
	async start(): Promise<void> {
		this.stop();
		const job = new AbortController();
		this.#job = job;
		this.isBusy = true;
		this.problem = undefined;
		this.harmony = undefined;
		const { show, settings } = this.#session;
		try {
			const harmony = await this.#harmonise({ rows: show.rows, settings, most: this.most }, job.signal);
			if (this.#job !== job) return;
			this.harmony = harmony;
			this.chosenRows = new Set(harmony.rows.filter(changesFigures).map(({ id }) => id));
		} catch (cause) {
			if (this.#job === job) this.problem = cause instanceof Error ? cause.message : String(cause);
		}
		if (this.#job === job) this.isBusy = false;
	}

	/** Ends the job that is under way, and forgets what was chosen. */
	stop(): void {
		this.#job?.abort(new Error('ended'));
		this.#job = undefined;
		this.isBusy = false;
		this.harmony = undefined;
	}

	/** Chooses a row, or leaves it as it is. */
	toggle(id: RowId): void {
		const chosen = new Set(this.chosenRows);
		if (!chosen.delete(id)) chosen.add(id);
		this.chosenRows = chosen;
	}

	/**
	 * Types the choice into the chosen rows: one step to undo.
	 * @returns how many rows that is, and the step; no step where it has to be asked about first
	 */
	apply(): { readonly count: number; readonly step: Step | undefined } {
		const changes = (this.harmony?.rows ?? [])
			.filter(({ id, size }) => size !== undefined && this.chosenRows.has(id))
			.map(({ id, change }) => ({ id, cells: change }));
		this.stop();
		const step = this.#session.do((show, settings) => typeCells(show, changes, settings, 'Harmonise'));
		return { count: changes.length, step };
	}
}
