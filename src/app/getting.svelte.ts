import type { GetKind } from '../core/order/getLine.ts';
import { costReason, printCosts } from '../core/order/printCosts.ts';
import { type ToGet, whatToGet } from '../core/order/whatToGet.ts';
import type { Packing } from './packing.svelte.ts';
import type { Session } from './session.svelte.ts';
import { StickPlanning } from './stickPlanning.svelte.ts';

/** What is to be got for the open show, by the plans of boards and sticks that there are. Worked out when it is read. */
export class Getting {
	readonly #session: Session;
	readonly #packing: Packing;
	readonly #sticks: StickPlanning;
	readonly toGet: ToGet = $derived.by(() => {
		const { show, results, settings } = this.#session;
		const plans = this.#packing.boards.flatMap((board) => ('plan' in board ? [board.plan] : []));
		return whatToGet({ rows: show.rows, results, settings, plans, sticks: this.#sticks.plans });
	});

	constructor(session: Session, packing: Packing) {
		this.#session = session;
		this.#packing = packing;
		this.#sticks = new StickPlanning(session);
		session.costs.begin(() => ({
			rows: session.show.rows,
			settings: session.settings,
			toGet: () => this.toGet,
			printCosts,
			costReason,
		}));
	}

	/** Whether plans are still looked for. */
	get isBusy(): boolean {
		return !this.#packing.hasLooked || this.#packing.isBusy || this.#sticks.isBusy;
	}

	/** What there is no plan for yet, or only that before the last change: names of boards and materials, and mouldings. */
	get notYet(): readonly string[] {
		if (!this.isBusy) return [];
		const { hasLooked, boards } = this.#packing;
		const open = boards.filter((board) => !('plan' in board) || board.isOld);
		const names = open.map(({ job: { board, material } }) => (board === '' ? (material ?? 'boards') : board));
		return [
			...new Set(hasLooked ? names : ['boards and materials']),
			...(this.#sticks.isBusy ? ['lengths of moulding'] : []),
		];
	}

	/** The kinds of what is got whose figures may change, for plans are still looked for. */
	get openKinds(): readonly GetKind[] {
		const isPacking = !this.#packing.hasLooked || this.#packing.isBusy;
		return [
			...(isPacking ? (['board', 'glazing', 'backing'] as const) : []),
			...(this.#sticks.isBusy ? (['stick'] as const) : []),
		];
	}

	/** What went wrong with the plans, in sentences. */
	get problems(): readonly string[] {
		return [this.#packing.problem, this.#sticks.problem].filter((problem) => problem !== undefined);
	}

	/** The plans that what is to be got follows from. */
	get plans(): readonly unknown[] {
		return [this.#packing.boards, this.#sticks.plans];
	}

	/** Has the sticks planned when there is a pause, if their legs have changed by then. */
	later(): void {
		this.#sticks.later();
	}

	/** Ends everything. */
	close(): void {
		this.#session.costs.stop();
		this.#sticks.close();
	}
}
