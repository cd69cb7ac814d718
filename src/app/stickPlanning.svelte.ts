import type { StickJob, StickPlan } from '../core/sticks/stickPlan.ts';
import { stickJobsOf } from '../core/sticks/stickJobsOf.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import { sticksInWorker } from '../workers/sticksInWorker.ts';
import { endWithSession } from './endWithSession.ts';
import type { Session } from './session.svelte.ts';

/** Pause after a change before sticks are planned again, in milliseconds. */
const pauseMs = 300;

/** The most time that the sticks of a show may take together, in seconds. */
const mostSeconds = 10;

/** The sticks of a show, worked out beside the screen when its frames change; of several jobs the last one counts. */
export class StickPlanning {
	/** One for each moulding that is sawn; those before a change until the new ones are there. */
	plans = $state.raw<readonly StickPlan[]>([]);
	isBusy = $state(false);
	problem = $state<string>();
	readonly #session: Session;
	readonly #plan: typeof sticksInWorker;
	#planned: readonly StickJob[] | undefined;
	#work: AbortController | undefined;
	#pause: ReturnType<typeof setTimeout> | undefined;

	/** @param plan replaced in tests */
	constructor(session: Session, plan = sticksInWorker) {
		this.#session = session;
		this.#plan = plan;
	}

	/** Has the sticks planned when there is a pause, if the legs have changed by then. */
	later(): void {
		clearTimeout(this.#pause);
		this.#pause = setTimeout(() => void this.#look(), pauseMs);
	}

	/** Ends everything. */
	close(): void {
		clearTimeout(this.#pause);
		this.#end();
	}

	#end(): void {
		this.#work?.abort(new Error('ended'));
		this.#work = this.#planned = undefined;
		this.isBusy = false;
	}

	async #look(): Promise<void> {
		const { show, results, settings } = this.#session;
		const jobs = stickJobsOf(show.rows, results, settings);
		if (this.#planned !== undefined && isSameValue(this.#planned, jobs)) return;
		this.#end();
		const work = new AbortController();
		if (!endWithSession(this.#session, work, () => this.#end())) return;
		this.#work = work;
		this.#planned = jobs;
		this.isBusy = jobs.length > 0;
		this.problem = undefined;
		try {
			const plans = jobs.length > 0 ? await this.#plan({ jobs, seconds: mostSeconds }, work.signal) : [];
			if (this.#work === work) this.plans = plans;
		} catch (cause) {
			if (this.#work !== work) return;
			this.problem = cause instanceof Error ? cause.message : String(cause);
			this.#planned = undefined;
		}
		if (this.#work === work) this.isBusy = false;
	}
}
