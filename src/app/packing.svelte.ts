import { type BoardPlan, withBoundsOf } from '../core/sheets/boardPlan.ts';
import { jobKey } from '../core/sheets/jobKey.ts';
import { type LeftOutRow, listingJobs, type ShowJobs } from '../core/sheets/jobsOf.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { PackingJob } from '../core/sheets/packingJob.ts';
import { type PlannedBoard, plannedBoard, replanning } from '../core/sheets/plannedSheets.ts';
import { stockKey } from '../core/stock/stock.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import { makeId } from '../files/makeId.ts';
import { packInWorker } from '../workers/packInWorker.ts';
import { openPlanStore, type PlanStore } from '../storage/planStore.ts';
import { endWithSession } from './endWithSession.ts';
import { inSlices } from './inSlices.ts';
import type { Session } from './session.svelte.ts';

/** Pause after a change before boards are planned again, in milliseconds: a plan is not begun between two keystrokes. */
const pauseMs = 300;

/** The most time that the plans of a show may take together, in seconds. */
export const mostSeconds = 10;

/** A board that is waiting for its first plan. */
export interface UnplannedBoard {
	readonly job: PackingJob;
}

/** The jobs of a show but those of boards where it lists none at all: glazing and backing may be listed all the same. */
function withoutUnlisted({ jobs, leftOut }: ShowJobs, { boards, offcuts }: Settings): ShowJobs {
	const hasBoards = boards.length > 0 || offcuts.length > 0;
	return { jobs: hasBoards ? jobs : jobs.filter(({ material }) => material !== undefined), leftOut };
}

/**
 * The board plans of a show, worked out beside the screen when its rows, stock or cut sheets change. The last good plan
 * stays, marked as old, until the new one comes; of several jobs the last one counts.
 */
export class Packing {
	/** Resolves when the plans that were kept on this device are there. */
	readonly restored: Promise<void>;
	#boards = $state.raw<readonly (PlannedBoard | UnplannedBoard)[]>([]);
	#leftOut = $state.raw<readonly LeftOutRow[]>([]);
	#isBusy = $state(false);
	#hasLooked = $state(false);
	#isStopped = $state(false);
	#seconds = $state(0);
	#problem = $state<string>();
	readonly #session: Session;
	readonly #store: PlanStore;
	readonly #pack: typeof packInWorker;
	#isClosed = false;
	#search: AbortController | undefined;
	/** The keys of the jobs that are searched. */
	#searched: ReadonlySet<string> = new Set();
	/** The keys of the jobs whose search ended, or found a better plan in vain, because the knife had begun theirs. */
	readonly #cutShort = new Set<string>();
	#pause: ReturnType<typeof setTimeout> | undefined;
	#clock: ReturnType<typeof setInterval> | undefined;

	/** @param pack replaced in tests, as the name of the database is */
	constructor(session: Session, { databaseName = 'evenhang', pack = packInWorker } = {}) {
		this.#session = session;
		this.#store = openPlanStore(databaseName);
		this.#pack = pack;
		this.restored = this.#store.read(session.show.id).then((boards) => {
			if (this.#boards.length === 0) this.#boards = boards;
		});
	}

	/** A board each, in the order in which the rows name them. */
	get boards(): readonly (PlannedBoard | UnplannedBoard)[] {
		return this.#boards;
	}

	/** The rows from which nothing is cut, and why. */
	get leftOut(): readonly LeftOutRow[] {
		return this.#leftOut;
	}

	/** Whether it is known what has to be planned; before that there may be plans to come. */
	get hasLooked(): boolean {
		return this.#hasLooked;
	}

	/** Whether better plans are looked for. */
	get isBusy(): boolean {
		return this.#isBusy;
	}

	/** Whether the search was stopped by hand: what is shown is the best found until then. */
	get isStopped(): boolean {
		return this.#isStopped;
	}

	/** How long the search has been going on, in whole seconds. */
	get seconds(): number {
		return this.#seconds;
	}

	/** What went wrong, in a sentence. */
	get problem(): string | undefined {
		return this.#problem;
	}

	/** Has the boards planned when there is a pause, if anything that a plan depends on has changed by then. */
	later(): void {
		clearTimeout(this.#pause);
		this.#pause = setTimeout(() => void this.restored.then(() => this.#look()), pauseMs);
	}

	/** Ends the search; the best plans found so far stay. */
	stop(): void {
		this.#end();
		this.#cutShort.clear();
		this.#isStopped = true;
	}

	/** Looks for better plans once more, after `stop` or after something went wrong. */
	again(): void {
		this.#isStopped = false;
		this.#start(this.#boards.map(({ job }) => job));
	}

	/** Ends everything. */
	close(): void {
		this.#isClosed = true;
		clearTimeout(this.#pause);
		this.#pause = undefined;
		this.#end();
		this.#store.close();
	}

	/** Keeps the plans that stand, so that the sheets are the same after a reload. */
	#keep(): void {
		const standing = this.#boards.filter((board) => 'plan' in board).filter(({ isOld }) => !isOld);
		void this.#store.keep(this.#session.show.id, standing);
	}

	/** Finds out which plans stand, and has the others made. */
	async #look(): Promise<void> {
		if (this.#isClosed) return;
		const { show, results, settings } = this.#session;
		const [pause, former] = [this.#pause, this.#boards];
		const steps = replanning(
			former.filter((board) => 'plan' in board),
			show.cutSheets ?? [],
			function* (cutSheets) {
				const ticks = show.ticks ?? [];
				return withoutUnlisted(yield* listingJobs(show.rows, results, settings, { cutSheets, ticks }), settings);
			},
		);
		const { boards, jobs, leftOut } = await inSlices(steps);
		if (pause !== this.#pause) return; // it is looked at again, or no more
		if (former !== this.#boards) return this.#look();
		this.#leftOut = leftOut;
		this.#hasLooked = true;
		this.#boards = boards;
		if (boards.some((board) => 'plan' in board && this.#isBegun(board))) this.#keep();
		const unfinished = boards.flatMap((board) =>
			'plan' in board && !board.isOld && this.#isUnfinished(board) ? [board.job] : [],
		);
		const wanted = [...jobs, ...unfinished];
		const keys = new Set(wanted.map(jobKey));
		if (keys.size === this.#searched.size && [...keys].every((key) => this.#searched.has(key))) return;
		this.#isStopped = false;
		this.#start(wanted);
	}

	/** Whether a plan that stands is still to be searched on: a sheet that is begun ends that, and begins it again where it is not. */
	#isUnfinished(board: PlannedBoard): boolean {
		const { key } = board;
		if (!this.#isBegun(board)) return this.#searched.has(key) || this.#cutShort.has(key);
		if (this.#searched.has(key)) this.#cutShort.add(key);
		return false;
	}

	/** Begins a search, in place of one that goes on. */
	#start(jobs: readonly PackingJob[]): void {
		this.#end();
		for (const job of jobs) this.#cutShort.delete(jobKey(job));
		const search = new AbortController();
		if (jobs.length === 0 || !endWithSession(this.#session, search, () => this.stop())) return;
		this.#search = search;
		this.#searched = new Set(jobs.map(jobKey));
		this.#problem = undefined;
		this.#seconds = 0;
		this.#isBusy = true;
		this.#clock = setInterval(() => this.#seconds++, 1000);
		const isLast = () => this.#search === search;
		this.#pack(
			{ jobs, seconds: mostSeconds },
			(plan, place) => isLast() && this.#show(jobs[place]!, plan),
			search.signal,
		)
			.then((plans) => {
				if (!isLast()) return;
				plans.forEach((plan, place) => this.#show(jobs[place]!, plan));
				this.#end();
				this.#keep();
			})
			.catch((cause: unknown) => {
				if (!isLast()) return;
				this.#end();
				this.#problem = cause instanceof Error ? cause.message : String(cause);
			});
	}

	#end(): void {
		this.#search?.abort(new Error('ended'));
		this.#search = undefined;
		this.#searched = new Set();
		clearInterval(this.#clock);
		this.#isBusy = false;
	}

	/** Shows a plan. One that is as good stays, as does one that was begun in the meantime: of that more is known now. */
	#show(job: PackingJob, plan: BoardPlan): void {
		this.#boards = this.#boards.map((board) => {
			if (stockKey(board.job) !== stockKey(job)) return board;
			const isSame = 'plan' in board && !board.isOld && board.key === jobKey(job);
			if (isSame && this.#isBegun(board)) {
				// A better one is looked for again where the knife has not begun this one after all.
				if (plan.cost < board.plan.cost || plan.count < board.plan.count) this.#cutShort.add(board.key);
				return { ...board, plan: withBoundsOf(board.plan, plan) };
			}
			if (isSame && isSameValue(board.plan.layouts, plan.layouts)) return { ...board, plan };
			return plannedBoard(job, plan, makeId);
		});
	}

	/** Whether the knife has begun a sheet of a plan: then no other takes its place. */
	#isBegun({ sheets }: PlannedBoard): boolean {
		const cut = new Set((this.#session.show.cutSheets ?? []).map(({ id }) => id));
		return sheets.some(({ id }) => cut.has(id));
	}
}
