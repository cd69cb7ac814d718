import type { BenchPlan } from '../core/bench/benchPlan.ts';
import type { Views } from '../core/grid/views.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import {
	apply,
	type Command,
	compose,
	type Edit,
	type FocusOfEdit,
	invert,
	isEmpty,
	rebase,
	withFocus,
	withoutRowsGone,
} from '../core/show/edit.ts';
import { editInstead } from '../core/show/editInstead.ts';
import type { Row } from '../core/show/row.ts';
import type { SettingProblem } from '../core/settings/settingValue.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { Show } from '../core/show/show.ts';
import type { OpenedShow, ShowStore } from '../storage/showStore.ts';
import type { OrderSearch } from './benchOrder.svelte.ts';
import { CopyCount } from './copyCount.svelte.ts';
import type { Answer, Question, WorkOut } from './cutQuestion.ts';
import { Exchanges } from './exchanges.ts';
import { History, type Made, type Step } from './history.svelte.ts';
import { KeptPlace } from './keptPlace.svelte.ts';
import { LateCosts } from './lateCosts.svelte.ts';
import type { LateBench } from './lateBench.svelte.ts';
import { inSlices } from './inSlices.ts';
import { judgingPart } from './judging.ts';
import { Keeping } from './keeping.svelte.ts';
import { KeptSteps } from './keptSteps.ts';
import { isAnythingCut, OpenQuestion } from './openQuestion.svelte.ts';
import { outliving } from './outliving.ts';
import { type Pictures, picturesOf } from './pictures.svelte.ts';
import { plainCopy } from './plainCopy.ts';
import type { Saved } from './saving.svelte.ts';
import { SessionEnd } from './sessionEnd.svelte.ts';
import type { StepsChange } from '../storage/stepStore.ts';
import { mostAtOnce, WorkedOut } from './workedOut.svelte.ts';

/**
 * The show that is open: every change of it is one edit, one transaction and one undo step. All values are raw, immutable
 * records; rows that an edit does not touch stay the same objects. While it closes, and after, it refuses every edit;
 * what was made before is on disk before it lets go.
 */
export class Session {
	#show = $state.raw<Show>()!;
	readonly #end = new SessionEnd();
	/** Names rows. */
	readonly makeId: () => string;
	/** Where one is in the show. */
	readonly place: KeptPlace;
	/** What is in no file that was given. */
	readonly copies: CopyCount;
	/** What each print costs. */
	readonly costs = new LateCosts();
	/** What was exchanged with others. */
	readonly exchanges: Exchanges;
	/** The pictures on this device. */
	readonly pictures: Pictures;
	readonly #workedOut: WorkedOut;
	readonly #asking = new OpenQuestion();
	readonly #history: History;
	readonly #steps: KeptSteps;
	readonly #keeping: Keeping;

	/** Use `openSession`. */
	constructor(stored: OpenedShow, store: ShowStore, databaseName: string, newId: () => string, search?: OrderSearch) {
		const { id } = stored.show;
		this.#steps = new KeptSteps(id, newId());
		this.#history = new History(this.#steps.restore(stored.steps ?? []));
		this.#show = stored.show;
		this.makeId = newId;
		this.pictures = picturesOf(databaseName);
		this.#workedOut = new WorkedOut(() => this.#show, search);
		this.place = new KeptPlace(store, stored);
		const notes = outliving(store, databaseName, () => this.#end.state === 'closed');
		this.exchanges = new Exchanges(notes, id);
		this.copies = new CopyCount(stored, {
			revision: () => this.#keeping.revision,
			depth: () => this.#history.depth,
			whenSaved: () => this.whenSaved(),
			keep: (copied, takenBack) => this.#keeping.keepCopy(notes, copied, takenBack),
		});
		this.#keeping = new Keeping(store, stored, databaseName, {
			show: () => this.#show,
			set: (show) => this.#set(show),
			copies: this.copies,
		});
	}

	get show(): Show {
		return this.#show;
	}

	/** The settings as read; one that cannot be read takes its default. */
	get settings(): Settings {
		return this.#workedOut.settings;
	}

	/** The same in the currency of its prices. */
	get moneySettings(): Settings {
		return this.#workedOut.moneySettings;
	}

	/** How the show is looked at. */
	get views(): Views {
		return this.#workedOut.views.views;
	}

	/** The settings, and what of `views`, that could not be read, by key, each with a sentence. */
	get settingsProblems(): readonly SettingProblem[] {
		return this.#workedOut.problems;
	}

	/** What each row works out, in the order of the rows. */
	get results(): readonly RowResult[] {
		return this.#workedOut.results;
	}

	/** What the row at a place works out; see `isWorkedOut`. */
	resultAt(place: number): RowResult | undefined {
		return this.#workedOut.resultAt(place);
	}

	/**
	 * Whether all rows are worked out, so that `results` are there at once. In a long show that comes after what is seen, in
	 * slices; a row at a place has till then nothing that only shows between rows.
	 */
	get isWorkedOut(): boolean {
		return this.#workedOut.isWorkedOut;
	}

	/** Does work on all rows a slice at a time; undefined where they are so few that it is done at once. */
	get inSlices(): typeof inSlices | undefined {
		return this.#show.rows.length > mostAtOnce ? inSlices : undefined;
	}

	get bench(): BenchPlan {
		return this.#workedOut.bench;
	}

	/** Whether rows are judged and ordered: the first screen comes before that. */
	get isJudged(): boolean {
		return this.#workedOut.isJudged;
	}

	/** Resolves when all rows are judged as they are now, and ordered. */
	get whenJudged(): Promise<void> {
		return this.#workedOut.whenJudged;
	}

	/** Whether edits of prints can be made: where something is cut, what to ask before one is loaded after the first screen. */
	get canEdit(): boolean {
		return judgingPart.part !== undefined || !isAnythingCut(this.#show);
	}

	/** Whether an order with fewer changes is still looked for. */
	get isOrdering(): boolean {
		return this.#workedOut.isOrdering;
	}

	/** The cutting order for the screens with fields: as it was when typing last paused. */
	get lateBench(): LateBench {
		return this.#workedOut.lateBench;
	}

	/** The revision that the show will have when all is on disk. */
	get revision(): number {
		return this.#keeping.revision;
	}

	get saved(): Saved {
		return this.#keeping.saved;
	}

	/** Whether edits are made; a session that closes, or is closed, refuses them. */
	get isOpen(): boolean {
		return this.#end.state === 'open';
	}

	/** Aborted when the session begins to close: what works for it stops then. Where closing fails there is another. */
	get signal(): AbortSignal {
		return this.#end.signal;
	}

	/** The step that undo would take back; its label says what it did: "Type picture width". */
	get lastStep(): Step | undefined {
		return this.#history.last;
	}

	/** The step that redo would do again. */
	get nextStep(): Step | undefined {
		return this.#history.next;
	}

	readonly latest: History['latest'] = (answers) => this.#history.latest(answers);

	/** The change that waits for a word; undefined where none does. */
	get question(): Question | undefined {
		return this.#asking.question;
	}

	/** Answers the `question`: makes the change that waits, or drops it. */
	answer(answer: Answer): void {
		const answered = this.#asking.end(answer, this.#show);
		if (answered) this.#commit(answered.edit, answered.former);
	}

	/**
	 * Makes an edit: one step of undo. Where something that is cut would be wrong or left over, it is asked first; until
	 * that is answered, no other edit is made.
	 * @returns the step, for who may offer to take it back; undefined where nothing was done, or not yet
	 */
	do(command: Command, focus?: FocusOfEdit): Step | undefined {
		if (this.#isWaiting) return undefined;
		return this.#make(withFocus(command(this.#show, this.settings), focus, this.#history.last?.focus));
	}

	/** Makes an edit in the place of a step, as if that had never been: still one step of undo, and asked about as one. */
	doInstead(former: Step, command: Command, focus?: FocusOfEdit): Step | undefined {
		if (this.#isWaiting || this.#history.placeOf(former) < 0) return undefined;
		const edit = editInstead(former, command, this.#show, this.settings);
		if (edit) return this.#make(withFocus(edit, focus), former);
		this.undoStep(former);
		return undefined;
	}

	/** Takes one step back, whatever was done since. @returns what was selected before it */
	undoStep(step: Step | undefined): unknown {
		const place = step === undefined ? -1 : this.#history.placeOf(step);
		if (this.#isWaiting || step === undefined || place < 0) return undefined;
		return this.#history.undo(step, (edit) => this.#return(edit, step, 1, (depth) => place >= depth)).focus?.after;
	}

	/** @returns what was selected before */
	readonly undo = (): unknown => this.undoStep(this.lastStep);

	redo(): unknown {
		const now = this.#history.depth;
		if (this.#isWaiting) return undefined;
		return this.#history.redo((edit) => this.#return(edit, edit, 0, (depth) => now < depth))?.focus?.after;
	}

	/** Works rows out before they are in the show; see `prepareRows`. Gives how many are done after each slice. */
	ahead(rows: readonly Row[]): AsyncGenerator<number, void> {
		return this.#workedOut.ahead(rows);
	}

	/** Resolves when all that was typed is on disk; rejects, with the sentence of `saved`, if it cannot be written. */
	whenSaved(): Promise<void> {
		return this.#keeping.whenSaved();
	}

	/** A newer version of the app, in another tab, keeps the show from now on: nothing more can be written from here. */
	supersede(): void {
		this.#keeping.supersede();
	}

	/**
	 * Refuses every edit from now on, waits until all that was made before is on disk, and lets go of the database. Rejects
	 * where that cannot be, and is open as before.
	 * @param last what is done once all is on disk and before it lets go
	 */
	close(last?: () => Promise<void>): Promise<void> {
		const flush = () => this.#keeping.flush().then(last);
		return this.#end.close(flush, () => {
			this.answer('leave');
			this.#workedOut.stop();
			this.#keeping.close();
		});
	}

	/** Whether edits have to wait for an answer, or come too late. */
	get #isWaiting(): boolean {
		return !this.isOpen || this.question !== undefined;
	}

	/** Makes an edit, or asks first. */
	#make(asked: Edit, former?: Step): Step | undefined {
		// A form may have handed over what it goes on changing.
		const edit = { ...asked, ...(asked.settings && { settings: plainCopy(asked.settings) }) };
		const workOut: WorkOut = (rows, settings) => this.#workedOut.resultsOf(rows, settings);
		return this.#asking.ask(edit, former, this, workOut) ? undefined : this.#commit(edit, former);
	}

	#commit(edit: Edit, former?: Step): Step | undefined {
		if (isEmpty(edit) || !this.isOpen) return undefined;
		const made = rebase(edit, this.#show);
		const step = former ? { ...compose(former, made), label: made.label } : made;
		this.copies.making(made, former && { former, step, place: this.#history.placeOf(former) });
		this.#apply(made, this.#steps.made(step, former));
		if (former) this.#history.replace(former, step);
		else this.#history.add(step);
		return step;
	}

	/** Takes a step back, or does it again. @param isTowards see `CopyCount.returning` */
	#return(edit: Edit, former: Step, isUndone: 0 | 1, isTowards: (depth: number) => boolean): Made {
		const made = rebase(withoutRowsGone(edit, this.#show), this.#show);
		this.copies.returning(made, isTowards);
		const step = isUndone ? invert(made) : made;
		this.#apply(made, this.#steps.moved(former, step, isUndone));
		return { made, step };
	}

	/** Makes an edit of the show as it is, and has it written, with what becomes of the steps. */
	#apply(made: Edit, steps: StepsChange): void {
		this.#set(apply(this.#show, made));
		this.#workedOut.follow(made.rows);
		this.#keeping.add(made, steps);
	}

	#set(show: Show): void {
		this.#show = show;
		this.#workedOut.later();
	}
}
