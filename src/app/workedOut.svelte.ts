import { type BenchPlan, noPlan } from '../core/bench/benchPlan.ts';
import { readViews } from '../core/grid/views.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import { type FirstNamed, firstNamed, inCurrency } from '../core/record/inCurrency.ts';
import { currencyOf } from '../core/values/money.ts';
import type { RowDiff } from '../core/show/edit.ts';
import type { Row } from '../core/show/row.ts';
import type { SettingProblem } from '../core/settings/settingValue.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { Show } from '../core/show/show.ts';
import type { BenchOrder, OrderSearch } from './benchOrder.svelte.ts';
import { inSlices } from './inSlices.ts';
import { type Judging, judgingPart } from './judging.ts';
import type { KeptCuts } from './keptCuts.ts';
import { LateBench } from './lateBench.svelte.ts';
import { ResultCache } from './resultCache.ts';

/** So many rows are worked out whenever they are asked for; of more, those that are seen come first, and all others in slices. */
export const mostAtOnce = 200;

/** What a show works out: its settings as read, the results of its rows, the cutting order. */
export class WorkedOut {
	readonly #show: () => Show;
	readonly #cache = new ResultCache();
	// By themselves: an edit of anything else works nothing out again.
	readonly #typedSettings = $derived.by(() => this.#show().settings);
	readonly #rows = $derived.by(() => this.#show().rows);
	readonly #typedViews = $derived.by(() => this.#show().views);
	readonly #read = $derived.by(() => readSettings(this.#typedSettings));
	readonly settings = $derived.by(() => this.#read.settings);
	// By its letters: a currency that is read again is another object.
	readonly #moneyCode = $derived.by(() => {
		const { currency } = this.settings;
		return (currency ?? (this.#named = firstNamed(this.#rows, this.#named)).at?.currency)?.code;
	});
	#named: FirstNamed | undefined;
	/** The settings in the currency of the prices: the show's, else the first that a price names. */
	readonly moneySettings = $derived.by(() => inCurrency(this.settings, currencyOf(this.#moneyCode ?? '')));
	/** How the show is looked at. */
	readonly views = $derived.by(() => readViewsToldOf(this.#typedViews));
	/** What of the settings and the views cannot be read. */
	readonly problems = $derived.by(() => [...this.#read.problems, ...this.views.problems]);
	/** Undefined as long as the first screen comes first. */
	#judging = $state.raw<Judging>();
	#isStopped = false;
	readonly #search: OrderSearch | undefined;
	/** What each row works out, in the order of the rows: where that is not done yet, at once. */
	readonly results: readonly RowResult[] = $derived.by(() => this.resultsOf(this.#rows, this.settings));
	/** The settings under which all rows of a long show are judged. */
	#judgedUnder = $state.raw<Settings>();
	/** Places on walls follow from all rows: none can be shown before. */
	readonly #isLong = $derived.by(() => this.#rows.length > mostAtOnce && this.settings.walls.length === 0);
	/** Whether all rows are worked out as they are now, so that `results` are there at once. */
	readonly isWorkedOut = $derived.by(() => !this.#isLong || this.#judgedUnder === this.settings);
	#working: Promise<void> | undefined;
	#order: BenchOrder | undefined;
	#cuts: KeptCuts | undefined;
	readonly bench: BenchPlan = $derived.by(() => {
		const order = this.#judging && this.#order;
		if (!this.#judging || !order) return noPlan;
		return this.#judging.orderBench(
			this.#rows,
			this.results,
			this.settings,
			(job) => order.orderOf(job),
			this.#cuts?.of,
		);
	});
	/** The cutting order as it was when typing last paused. */
	readonly lateBench = new LateBench(() => {
		void this.#lookForOrder();
		return { rows: this.#rows, plan: this.bench };
	});

	/** @param search looks for the order of the cuts with the fewest changes; replaced in tests */
	constructor(show: () => Show, search: OrderSearch | undefined) {
		this.#show = show;
		this.#search = search;
		const { part } = judgingPart;
		if (part) this.#judge(part);
		this.later();
	}

	/** Resolves when rows are judged as they are now, and ordered. */
	get whenJudged(): Promise<void> {
		return this.isJudged && this.isWorkedOut ? Promise.resolve() : (this.#working ??= this.#workAllOut());
	}

	/** What the row at a place works out. Where not all rows are worked out yet, without what only shows between them. */
	resultAt(place: number): RowResult | undefined {
		if (this.isWorkedOut) return this.results[place];
		const row = this.#rows[place];
		return row && this.#cache.resultOf(row, this.settings, this.#judging);
	}

	/** Something has changed: what follows from it comes when there is time. */
	later(): void {
		if (this.isJudged && this.isWorkedOut) return this.lateBench.later();
		this.lateBench.stop();
		void this.whenJudged;
	}

	/** Whether rows are judged: until then nothing is found in them, and nothing is ordered. */
	get isJudged(): boolean {
		return this.#judging !== undefined;
	}

	#judge(judging: Judging): void {
		this.#order = new judging.BenchOrder(this.#search);
		this.#cuts = new judging.KeptCuts();
		this.#judging = judging;
	}

	/**
	 * Judges all rows once that is loaded: beside what the page does, a slice at a time, and again where rows
	 * or settings change in the meantime.
	 */
	async #workAllOut(): Promise<void> {
		const judging = await judgingPart.loaded;
		const now = () => ({ rows: this.#rows, settings: this.settings });
		let asked = now();
		for (let isLast = false; !isLast; asked = now()) {
			for await (const _done of this.#cache.ahead(asked.rows, asked.settings, judging)) {
				if (this.#isStopped) return;
				if (this.settings !== asked.settings) break;
			}
			isLast = this.#rows === asked.rows && this.settings === asked.settings;
		}
		this.#working = undefined;
		this.#judgedUnder = asked.settings;
		if (!this.#judging) this.#judge(judging);
		await inSlices(this.#cuts!.ahead(this.results, this.settings, () => this.#isStopped));
		if (!this.#isStopped) this.later();
	}

	/** Whether an order with fewer changes is still looked for. */
	get isOrdering(): boolean {
		return this.#judging !== undefined && this.#order?.isSearching === true;
	}

	/** What the rows of another show work out; those that stand in this one too are not worked out again. */
	resultsOf(rows: readonly Row[], settings: Settings): readonly RowResult[] {
		return this.#cache.resultsOf(rows, settings, this.#judging);
	}

	/** Works rows out ahead, a slice at a time. Gives how many are done after each slice. */
	ahead(rows: readonly Row[]): AsyncGenerator<number, void> {
		return this.#cache.ahead(rows, this.settings, this.#judging);
	}

	/** An edit has changed these rows. */
	follow(changed: readonly RowDiff[]): void {
		this.#cache.follow(changed, this.settings);
		if (changed.length > mostAtOnce) this.#judgedUnder = undefined;
		this.later();
	}

	/** Ends what is worked out beside the screen. */
	stop(): void {
		this.#isStopped = true;
		this.lateBench.stop();
		this.#order?.stop();
	}

	/** Has the order with the fewest changes looked for; the plan so far stays until it is there. */
	async #lookForOrder(): Promise<void> {
		const before = this.bench;
		if (!this.#judging) return;
		await this.#order?.look(this.#judging.orderJob(before.steps));
		if (this.bench !== before) this.lateBench.later();
	}
}

/** How a show is looked at, and what of that cannot be read. */
function readViewsToldOf(typed: unknown) {
	const problems: SettingProblem[] = [];
	const views = readViews(typed, { report: (key, problem) => void problems.push({ key, problem }) });
	return { views, problems };
}
