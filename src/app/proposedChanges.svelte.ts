import { typeCells } from '../core/commands/typeCells.ts';
import type { Settings } from '../core/settings/settings.ts';
import { printsOf } from '../core/show/blankRow.ts';
import type { CellTexts, Row, RowId } from '../core/show/row.ts';
import { endWithSession } from './endWithSession.ts';
import type { Step } from './history.svelte.ts';
import type { Session } from './session.svelte.ts';

/** What a proposal changes of one row. */
interface ProposedRow {
	readonly id: RowId;
	/** What applying it types. */
	readonly change: CellTexts;
}

/** How far a search is: so many of so many prints have been tried. */
export interface Progress {
	readonly done: number;
	readonly of: number;
}

/** What a search is asked, and how it says how far it is. */
export interface Search {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly signal: AbortSignal;
	readonly onProgress: (progress: Progress) => void;
}

/** What is proposed, and how it is found. */
interface ProposalKind<Print, Proposal> {
	/** Of the step to undo. */
	readonly label: string;
	readonly search: (search: Search) => Promise<Proposal>;
	/** Whether it changes anything of a print; what it does not change is not applied. */
	readonly changes: (print: Print) => boolean;
}

/** Changes to many prints that are worked out beside the screen, shown, and applied whole, in part or not at all. */
export class ProposedChanges<Print extends ProposedRow, Proposal extends { readonly rows: readonly Print[] }> {
	isBusy = $state(false);
	problem = $state<string>();
	/** How far the search is, where it says so. */
	progress = $state.raw<Progress>();
	/** What was found, until it is applied or the show changes. */
	proposal = $state.raw<Proposal>();
	/** The rows that it will be applied to; at first all that it changes. */
	chosenRows = $state.raw<ReadonlySet<RowId>>(new Set());
	readonly #session: Session;
	readonly #kind: ProposalKind<Print, Proposal>;
	#job: AbortController | undefined;

	constructor(session: Session, kind: ProposalKind<Print, Proposal>) {
		this.#session = session;
		this.#kind = kind;
	}

	/** Works the proposal out; a search that is under way ends. */
	async start(): Promise<void> {
		this.stop();
		const job = new AbortController();
		if (!endWithSession(this.#session, job, () => this.stop())) return;
		this.#job = job;
		this.isBusy = true;
		this.problem = undefined;
		const { show, settings } = this.#session;
		const onProgress = (progress: Progress) => {
			if (this.#job === job) this.progress = progress;
		};
		try {
			const proposal = await this.#kind.search({ rows: printsOf(show.rows), settings, signal: job.signal, onProgress });
			if (this.#job !== job) return;
			this.proposal = proposal;
			this.chosenRows = new Set(proposal.rows.filter(this.#kind.changes).map(({ id }) => id));
		} catch (cause) {
			if (this.#job === job) this.problem = cause instanceof Error ? cause.message : String(cause);
		}
		if (this.#job === job) this.isBusy = false;
	}

	/** Ends the search that is under way, and forgets what was found. */
	stop(): void {
		this.#job?.abort(new Error('ended'));
		this.#job = undefined;
		this.isBusy = false;
		this.progress = undefined;
		this.proposal = undefined;
	}

	/** Chooses a row, or leaves it as it is. */
	toggle(id: RowId): void {
		const chosen = new Set(this.chosenRows);
		if (!chosen.delete(id)) chosen.add(id);
		this.chosenRows = chosen;
	}

	/**
	 * Types what was found into the chosen rows: one step to undo.
	 * @returns how many rows that is, and the step; no step where it has to be asked about first
	 */
	apply(): { readonly count: number; readonly step: Step | undefined } {
		const changes = (this.proposal?.rows ?? [])
			.filter((print) => this.chosenRows.has(print.id) && this.#kind.changes(print))
			.map(({ id, change }) => ({ id, cells: change }));
		this.stop();
		const step = this.#session.do((show, settings) => typeCells(show, changes, settings, this.#kind.label));
		return { count: changes.length, step };
	}
}
