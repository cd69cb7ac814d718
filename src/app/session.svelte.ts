import type { BenchPlan } from '../core/bench/benchPlan.ts';
import { begunAgain, withoutWrongTicks } from '../core/bench/cutWarning.ts';
import { orderBench, setUpsOf } from '../core/bench/orderBench.ts';
import { spoilBoard, tickCuts } from '../core/bench/tickCuts.ts';
import type { CutTick, MountId } from '../core/bench/ticks.ts';
import { changeViews } from '../core/grid/changeViews.ts';
import { readViews, type Views } from '../core/grid/views.ts';
import type { RowResult } from '../core/row/rowResult.ts';
import type { CutSheet } from '../core/sheets/cutSheet.ts';
import { type CutsOfSheet, handBack, markCut, spoilSheet, tickKnife } from '../core/sheets/markSheets.ts';
import { addRows, type NewRow } from '../core/show/addRows.ts';
import { changeSettings } from '../core/show/changeSettings.ts';
import { duplicateRows } from '../core/show/duplicateRows.ts';
import { apply, compose, type Edit, isEmpty, rebase } from '../core/show/edit.ts';
import { moveRows } from '../core/show/moveRows.ts';
import { newShow } from '../core/show/newShow.ts';
import { orderRows } from '../core/show/orderRows.ts';
import { readSettings } from '../core/show/readSettings.ts';
import { removeRows } from '../core/show/removeRows.ts';
import { rename } from '../core/show/rename.ts';
import { replaceShow } from '../core/show/replaceShow.ts';
import type { Row, RowId } from '../core/show/row.ts';
import type { SettingProblem } from '../core/show/settingValue.ts';
import type { Settings } from '../core/show/settings.ts';
import type { Show } from '../core/show/show.ts';
import { notOpened, otherTabsInTheWay } from '../core/show/storageProblem.ts';
import { takeIn } from '../core/show/takeIn.ts';
import { type CellChange, typeCells } from '../core/show/typeCells.ts';
import type { Exchange } from '../core/merge/exchange.ts';
import type { Copied, LeftAt } from '../storage/schema.ts';
import { openShowStore, pairOfEdits, type ShowStore, type StoredShow } from '../storage/showStore.ts';
import { askToPersist } from './askToPersist.ts';
import { BenchOrder, type OrderSearch } from './benchOrder.svelte.ts';
import { type Answer, mayBeAsked, type Question, questionOf } from './cutQuestion.ts';
import { History } from './history.svelte.ts';
import { LateBench } from './lateBench.svelte.ts';
import { makeId } from '../files/makeId.ts';
import { listenToOtherTabs, type OtherTabs } from './otherTabs.ts';
import { ResultCache } from './resultCache.ts';
import { type Saved, Saving } from './saving.svelte.ts';
import { warnBeforeLeaving } from './warnBeforeLeaving.ts';

/** What a session is opened with; all of it has a default, and tests give their own. */
export interface SessionOptions {
	readonly databaseName?: string;
	/** The show to open; by default the one that was open last. */
	readonly showId?: string | undefined;
	/** Names rows and shows. */
	readonly makeId?: () => string;
	/** Told, with a sentence, when opening waits for other tabs. */
	readonly onWaiting?: (sentence: string) => void;
	/** Looks for the order of the cuts with the fewest changes. */
	readonly search?: OrderSearch;
}

/** What is selected before an edit and after it: plain values, kept with the edit and never looked into. */
export interface FocusOfEdit {
	/** Handed back by undo. */
	readonly before: unknown;
	/** Told the names of the rows that the edit adds. Handed back by redo. */
	readonly after: (added: readonly RowId[]) => unknown;
}

/**
 * The show in hand: every change of it is one edit, one transaction and one undo step. All values are raw, immutable
 * records; rows that an edit does not touch stay the same objects.
 */
export class Session {
	#show = $state.raw<Show>()!;
	#asked = $state.raw<{ readonly edit: Edit; readonly question: Question }>();
	#stepsInHand = $state.raw<{ readonly atBench?: string | undefined; readonly atKnife?: string | undefined }>({});
	#copied = $state.raw<Copied>();
	/** How many of the edits since the last copy take each other back. */
	#takenBack = $state.raw(0);
	/** How deep the history was when the show was as in its last copy: below nothing, for a copy from before it began. */
	#depthOfCopy = 0;
	/** The edits on their way to the disk that take others back. */
	readonly #takingBack = new WeakSet<Edit>();
	/** Where one was in the show when it was opened. */
	readonly left: LeftAt;
	readonly #cache = new ResultCache();
	readonly #history = new History();
	readonly #typedSettings = $derived(this.#show.settings);
	readonly #read = $derived(readSettings(this.#typedSettings));
	readonly #settings = $derived(this.#read.settings);
	readonly #typedViews = $derived(this.#show.views);
	readonly #readViews = $derived(readViewsToldOf(this.#typedViews));
	// By itself: an edit of anything else works nothing out anew.
	readonly #rows = $derived(this.#show.rows);
	readonly #results = $derived(this.#cache.resultsOf(this.#rows, this.#settings));
	readonly #order: BenchOrder;
	readonly #bench = $derived(
		orderBench(this.#rows, this.#results, this.#settings, (setUps) => this.#order.orderOf(setUps)),
	);
	readonly #lateBench = new LateBench(() => {
		void this.#lookForOrder();
		return { rows: this.#rows, plan: this.#bench };
	});
	readonly #store: ShowStore;
	readonly #saving: Saving;
	readonly #tabs: OtherTabs;
	readonly #stopWarning: () => void;
	readonly #makeId: () => string;

	/** Use `openSession`. */
	constructor(stored: StoredShow, store: ShowStore, databaseName: string, newId: () => string, search?: OrderSearch) {
		const { show, revision } = stored;
		this.#show = show;
		this.#order = new BenchOrder(search);
		this.#lateBench.later();
		this.#stepsInHand = { atBench: stored.atBench, atKnife: stored.atKnife };
		this.#copied = stored.copied;
		this.#takenBack = stored.takenBack ?? 0;
		this.left = stored.left ?? {};
		this.#store = store;
		this.#makeId = newId;
		this.#tabs = listenToOtherTabs(databaseName, {
			onNews: (showId, heard) => {
				if (showId !== this.#show.id) return;
				this.#saving.hear(heard);
				void this.#catchUp();
			},
			onReturn: () => {
				this.#saving.hear(Infinity);
				this.#saving.retry();
				void this.#catchUp();
			},
		});
		this.#saving = new Saving(store, revision, {
			show: () => this.#show,
			isTakingBack: (edit) => this.#takingBack.has(edit),
			onKept: (kept) => {
				this.#tabs.announce(this.#show.id, kept);
				askToPersist();
			},
			onRest: () => void this.#catchUp(),
		});
		this.#depthOfCopy = -this.changesSinceCopy;
		this.#stopWarning = warnBeforeLeaving(() => this.saved.state === 'saved');
	}

	get show(): Show {
		return this.#show;
	}

	/** The settings as read; one that cannot be read takes its default. */
	get settings(): Settings {
		return this.#settings;
	}

	/** How the show is looked at. */
	get views(): Views {
		return this.#readViews.views;
	}

	/** The settings, and what of `views`, that could not be read, by key, each with a sentence. */
	get settingsProblems(): readonly SettingProblem[] {
		return [...this.#read.problems, ...this.#readViews.problems];
	}

	/** What each row works out, in the order of the rows. */
	get results(): readonly RowResult[] {
		return this.#results;
	}

	get bench(): BenchPlan {
		return this.#bench;
	}

	/** Whether an order with fewer changes is still looked for. */
	get isOrdering(): boolean {
		return this.#order.isSearching;
	}

	/** The cutting order for the screens on which one types: as it was when typing last paused. */
	get lateBench(): LateBench {
		return this.#lateBench;
	}

	get saved(): Saved {
		return this.#saving.saved;
	}

	get canUndo(): boolean {
		return this.#history.last !== undefined;
	}

	get canRedo(): boolean {
		return this.#history.next !== undefined;
	}

	/** What undo would take back: "Type picture width". */
	get undoLabel(): string | undefined {
		return this.#history.last?.label;
	}

	/** What redo would do again. */
	get redoLabel(): string | undefined {
		return this.#history.next?.label;
	}

	/** The change that waits for a word; undefined where none does. */
	get question(): Question | undefined {
		return this.#asked?.question;
	}

	/** Answers the `question`: makes the change that waits, or drops it. */
	answer(answer: Answer): void {
		const asked = this.#asked;
		this.#asked = undefined;
		if (asked === undefined || answer === 'leave') return;
		const { edit, question } = asked;
		const { wronged } = question;
		this.#do(answer === 'keep' ? withoutWrongTicks(edit, wronged) : begunAgain(edit, wronged, this.#show));
	}

	/** The step that was last in hand at the bench, as the bench names it; kept, but no edit. */
	get atBench(): string | undefined {
		return this.#stepsInHand.atBench;
	}

	/** The step that was last in hand at the knife, as the knife names it; kept, but no edit. */
	get atKnife(): string | undefined {
		return this.#stepsInHand.atKnife;
	}

	/** Takes a step in hand at the bench. */
	goAtBench(step: string): void {
		if (step !== this.atBench) this.#goTo({ atBench: step });
	}

	/** Takes a step in hand at the knife. */
	goAtKnife(step: string): void {
		if (step !== this.atKnife) this.#goTo({ atKnife: step });
	}

	#goTo(step: Pick<StoredShow, 'atBench' | 'atKnife'>): void {
		this.#stepsInHand = { ...this.#stepsInHand, ...step };
		// Where it cannot be kept, only the place is lost, and the first step that is not done is as good.
		this.#store.keepPlace(this.#show.id, step).catch(() => undefined);
	}

	/** Keeps where one is, to begin there when the show is opened again. */
	leaveAt(left: LeftAt): void {
		this.#store.keepPlace(this.#show.id, { left: $state.snapshot(left) }).catch(() => undefined);
	}

	/** The last copy of the show that left this device; undefined where none has. */
	get copied(): Copied | undefined {
		return this.#copied;
	}

	/** How many changes are in no file that was given; one that was taken back is none. */
	get changesSinceCopy(): number {
		const begun = 1; // the first revision is the empty show
		const made = this.#saving.revision + this.#saving.unsaved.length - (this.#copied?.revision ?? begun);
		return Math.max(0, made - this.#takenBack);
	}

	/** Counts the show, as it is now, as given. What it is not known of, only counts for longer than it need. */
	async noteCopied(what: Copied['what'], at: number): Promise<void> {
		await this.whenSaved().catch(() => undefined);
		this.#copied = { at, what, revision: this.#saving.revision };
		this.#takenBack = 0;
		this.#depthOfCopy = this.#history.depth;
		await this.#store.keepCopied(this.#show.id, this.#copied).catch(() => undefined);
	}

	/** What was exchanged with others before, newest first. */
	exchanges(): Promise<readonly Exchange[]> {
		return this.#store.exchanges(this.#show.id);
	}

	/** @param stands false for one that an edit is to name */
	keepExchange(exchange: Exchange, stands: boolean): Promise<void> {
		return this.#store.keepExchange(this.#show.id, exchange, stands);
	}

	/** Ticks cuts off as made, or takes the ticks off again. */
	tickCuts(cuts: readonly CutTick[], isMade: boolean, label: string): void {
		this.#make(tickCuts(this.#show, $state.snapshot(cuts), isMade, label));
	}

	/** Counts a board as spoilt; its mount is to be cut again. */
	spoilBoard(mount: MountId, label: string): void {
		this.#make(spoilBoard(this.#show, mount, label));
	}

	/** Marks sheets of board as cut: they stay as they are, and the rest is planned round them. */
	markCut(sheets: readonly CutSheet[], label: string): void {
		this.#make(markCut(this.#show, sheets, label));
	}

	/** Hands sheets back to the plan, as if the knife had never begun them. */
	handBack(sheets: readonly CutSheet[], label: string): void {
		this.#make(handBack(this.#show, sheets, label));
	}

	/** Counts a sheet as spoilt: it is used up, and what it was to give is planned anew. */
	spoilSheet(sheet: CutSheet, label: string): void {
		this.#make(spoilSheet(this.#show, sheet, label));
	}

	/** Ticks knife cuts off as made, or takes the ticks off again. */
	tickKnife(cuts: readonly CutsOfSheet[], isMade: boolean, label: string): void {
		this.#make(tickKnife(this.#show, cuts, isMade, label));
	}

	/** Types into cells of rows; see `typeCells` of the show. */
	typeCells(changes: readonly CellChange[], label: string, focus?: FocusOfEdit): void {
		this.#make(typeCells(this.#show, changes, this.settings, label), focus);
	}

	/**
	 * Adds rows that stand together.
	 * @param at place of the first in the rows of the show, from 0
	 * @returns their names
	 */
	addRows(rows: readonly NewRow[], at: number, label: string, focus?: FocusOfEdit): readonly RowId[] {
		return this.typeAndAdd([], rows, at, label, focus);
	}

	/** Types into rows that are there and adds others, as one edit: a paste that runs past the last row. */
	typeAndAdd(
		changes: readonly CellChange[],
		rows: readonly NewRow[],
		at: number,
		label: string,
		focus?: FocusOfEdit,
	): readonly RowId[] {
		const ids = this.#newIds(rows.length);
		const typing = typeCells(this.#show, changes, this.settings, label);
		const adding = addRows(apply(this.#show, typing), $state.snapshot(rows), at, ids, this.settings, label);
		this.#make(compose(typing, adding), focus, ids);
		return ids;
	}

	removeRows(ids: readonly RowId[], label = many(ids, 'Remove'), focus?: FocusOfEdit): void {
		this.#make(removeRows(this.#show, ids, label), focus);
	}

	/** @param to place before which the rows go, counted in the rows as they stand now, from 0 */
	moveRows(ids: readonly RowId[], to: number, label = many(ids, 'Move'), focus?: FocusOfEdit): void {
		this.#make(moveRows(this.#show, ids, to, label), focus);
	}

	/**
	 * Puts rows into a sequence; they take the places that they have among the others.
	 * @param views how the show is looked at from then on, by the same step
	 */
	orderRows(ids: readonly RowId[], views: Views, label: string, focus?: FocusOfEdit): void {
		this.#make(compose(orderRows(this.#show, ids, label), changeViews(this.#show, views, label)), focus);
	}

	/** @returns the names of the copies, which stand behind the last row copied */
	duplicateRows(ids: readonly RowId[], focus?: FocusOfEdit): readonly RowId[] {
		const edit = duplicateRows(this.#show, ids, this.#newIds(ids.length), many(ids, 'Duplicate'));
		const copies = edit.rows.flatMap(({ before, after }) => (before || !after ? [] : [after.id]));
		this.#make(edit, focus, copies);
		return copies;
	}

	/** Changes settings as typed; undefined puts one back to its default. No size typed before changes with the unit. */
	changeSettings(changes: Readonly<Record<string, unknown>>, label = 'Change settings'): void {
		this.#make(changeSettings(this.#show, $state.snapshot(changes), label));
	}

	/** Changes how the show is looked at. */
	changeViews(views: Views, label: string): void {
		this.#make(changeViews(this.#show, views, label));
	}

	rename(name: string): void {
		this.#make(rename(this.#show, name, 'Rename show'));
	}

	/** Puts another show in the place of all that is there, as one edit. */
	replaceShow(show: Omit<Show, 'id'>, label: string): void {
		this.#do(replaceShow(this.#show, $state.snapshot(show), this.#makeId, label));
	}

	/** Makes an edit that was prepared on the show as it is. */
	take(edit: Edit): void {
		this.#make(edit);
	}

	/**
	 * Works rows out before they are in the show, a slice at a time: those that an edit brings are then there at once.
	 * @param onProgress told how many are done
	 */
	async prepare(rows: readonly Row[], signal?: AbortSignal, onProgress?: (done: number) => void): Promise<void> {
		const { settings } = this;
		for await (const done of this.#cache.ahead(rows, settings)) {
			onProgress?.(done);
			signal?.throwIfAborted();
		}
	}

	/** @returns what was selected before the edit that is taken back */
	undo(): unknown {
		const isTakingBack = this.#history.depth > this.#depthOfCopy;
		return this.#history.undo((edit) => this.#apply(edit, isTakingBack))?.focus?.after;
	}

	/** @returns what was selected after the edit that is done again */
	redo(): unknown {
		const isTakingBack = this.#history.depth < this.#depthOfCopy;
		return this.#history.redo((edit) => this.#apply(edit, isTakingBack))?.focus?.after;
	}

	/** Resolves when all that was typed is on disk; rejects, with the sentence of `saved`, if it cannot be written. */
	whenSaved(): Promise<void> {
		return this.#saving.whenSaved();
	}

	/** A newer version of the app, in another tab, keeps the show from now on: nothing more can be written from here. */
	supersede(): void {
		this.#saving.fail('VersionError');
	}

	/** Stops listening and lets go of the database. */
	close(): void {
		this.#lateBench.stop();
		this.#order.stop();
		this.#stopWarning();
		this.#tabs.close();
		this.#store.close();
	}

	/** Makes an edit, or asks first where something that is cut would be wrong or left over. */
	#make(edit: Edit, focus?: FocusOfEdit, added: readonly RowId[] = []): void {
		if (isEmpty(edit)) return;
		const focused = focus ? { ...edit, focus: { before: focus.before, after: focus.after(added) } } : edit;
		const question = this.#questionOf(focused);
		if (question) this.#asked = { edit: focused, question };
		else this.#do(focused);
	}

	#do(edit: Edit): void {
		if (isEmpty(edit)) return;
		// Past this there is no way back to what was copied by taking back.
		this.#depthOfCopy = Math.min(this.#depthOfCopy, this.#history.depth);
		this.#history.add(this.#apply(edit));
	}

	#questionOf(edit: Edit): Question | undefined {
		if (!mayBeAsked(edit, this.#show)) return undefined;
		const show = apply(this.#show, edit);
		const settings = edit.settings ? readSettings(show.settings).settings : this.settings;
		const results = this.#cache.resultsOf(show.rows, settings);
		const now = { show: this.#show, settings: this.settings, results: this.#results };
		return questionOf(edit.label, now, { show, settings, results });
	}

	/** Has the order with the fewest changes looked for; the plan at hand stays until it is there. */
	async #lookForOrder(): Promise<void> {
		const before = this.#bench;
		await this.#order.look(setUpsOf(before));
		if (this.#bench !== before) this.#lateBench.later();
	}

	/** Makes an edit on the show as it is, and has it written. */
	#apply(edit: Edit, isTakingBack = false): Edit {
		const made = rebase(edit, this.#show);
		if (isTakingBack) {
			this.#takingBack.add(made);
			this.#takenBack += pairOfEdits;
		}
		this.#show = apply(this.#show, made);
		this.#lateBench.later();
		this.#saving.add(made);
		return made;
	}

	/** Takes in what other tabs have made of the show, once nothing of this one is on its way. */
	async #catchUp(): Promise<void> {
		const isBusy = () => this.#saving.isWriting;
		if (isBusy() || !this.#saving.isBehind) return;
		const stored = await this.#store.read(this.#show.id).catch(() => undefined);
		if (!stored || isBusy()) return; // the next write finds out again
		if (!this.#saving.caughtUp(stored.revision)) return;
		const waiting = this.#saving.unsaved.filter((edit) => this.#takingBack.has(edit));
		this.#takenBack = (stored.takenBack ?? 0) + waiting.length * pairOfEdits;
		this.#show = this.#saving.unsaved.reduce(apply, takeIn(this.#show, stored.show));
		this.#lateBench.later();
	}

	#newIds(count: number): readonly RowId[] {
		return Array.from({ length: count }, this.#makeId);
	}
}

/** How a show is looked at, and what of that cannot be read. */
function readViewsToldOf(typed: unknown) {
	const problems: SettingProblem[] = [];
	const views = readViews(typed, { report: (key, problem) => void problems.push({ key, problem }) });
	return { views, problems };
}

const many = ({ length }: readonly RowId[], verb: string) => (length === 1 ? `${verb} row` : `${verb} ${length} rows`);

/**
 * Opens the show kept on this device, or begins one.
 * @returns rejects with a sentence where what is kept cannot be opened; it is not touched then
 */
export async function openSession(options: SessionOptions = {}): Promise<Session> {
	const { databaseName = 'evenhang', makeId: newId = makeId, onWaiting, showId, search } = options;
	const opened: { session?: Session } = {};
	const store = openShowStore(databaseName, {
		onBlocked: () => onWaiting?.(otherTabsInTheWay),
		onSuperseded: () => opened.session?.supersede(),
	});
	try {
		const stored = await store.openShow(() => newShow(newId()), showId);
		// Where it cannot be kept, another show may be opened the next time; this one opens all the same.
		if (stored.revision > 1 || showId !== undefined)
			store.keepPlace(stored.show.id, { openedAt: Date.now() }).catch(() => undefined);
		return (opened.session = new Session(stored, store, databaseName, newId, search));
	} catch (cause) {
		throw new Error(notOpened((cause as Error).name), { cause });
	}
}
