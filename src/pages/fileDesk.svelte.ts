import { chooseFile } from '../app/chooseFile.ts';
import { compareShow } from '../app/compareShow.ts';
import { giveBackup, giveRows, giveShow, type Way } from '../app/giveFile.ts';
import type { MergeReview } from '../app/mergeReview.svelte.ts';
import type { Session } from '../app/session.svelte.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import type { Step as UndoStep } from '../app/history.svelte.ts';
import { changeSettings } from '../core/show/changeSettings.ts';
import { oneAtATime } from '../core/show/saidOfFiles.ts';
import {
	askAgain,
	type Incoming,
	incomingFile,
	incomingText,
	keepTaken,
	mayBeMatched,
	take,
	takeExample,
	type Taken,
	takeReviewed,
	type TakeOptions,
} from '../app/takeFile.ts';
import { isSameShow, type StandingOfShow } from '../app/backupStandings.ts';
import type { ColumnMatching } from '../core/show/columnMatching.ts';
import {
	givenOut,
	leftBehind,
	notGivenOut,
	notTakenIn,
	restored,
	rowsInWords,
	settingsTaken,
	showTakenIn,
	type TakenIn,
} from '../core/show/takenIn.ts';
import type { Show } from '../core/show/show.ts';

/** What has to be answered before something comes in. */
export type Step = Exclude<Taken, { readonly kind: 'told' }>;

/** How far a large file is. */
export interface Progress {
	readonly source: string;
	readonly doing: 'reading' | 'working out';
	readonly done: number;
	readonly of: number;
}

interface Told {
	readonly report: TakenIn;
	readonly show: Show;
	/** What came in, where one may say anew what its columns hold. */
	readonly incoming: Incoming | undefined;
	/** The step that brought it; undefined where nothing has changed. */
	readonly step: UndoStep | undefined;
}

/** Where files and pasted rows come in and go out, and what there is to say about the last that came in. */
export class FileDesk {
	readonly #shelf: Shelf;
	/** Whether the ways in and out are shown. */
	isOpen = $state(false);
	#told = $state.raw<Told>();
	#step = $state.raw<Step>();
	#progress = $state.raw<Progress>();
	#job: AbortController | undefined;
	/** What came in last. */
	#incoming: Incoming | undefined;
	/** How many files came with the one that is taken in, and are not looked at. */
	#others = 0;
	/** The step to take back when the columns of what it brought are said anew. */
	#again: UndoStep | undefined;

	constructor(shelf: Shelf) {
		this.#shelf = shelf;
	}

	get #session(): Session {
		return this.#shelf.session;
	}

	/**
	 * What came of the last file or text; undefined where nothing is to be said, and once the show is another: after the
	 * next edit it would speak of what is no more. What could not be read is said until it is closed.
	 */
	get report(): TakenIn | undefined {
		const told = this.#told;
		return told && (told.report.isProblem || told.show === this.#session.show) ? told.report : undefined;
	}

	/** Whether one may say anew what the columns of the last file hold. */
	get canAskAgain(): boolean {
		return this.report !== undefined && this.#told?.incoming !== undefined;
	}

	/** What has to be answered before the last file comes in; nothing has changed so far. */
	get step(): Step | undefined {
		return this.#step;
	}

	/** How far a file is that takes long; undefined where none is under way. */
	get progress(): Progress | undefined {
		return this.#progress;
	}

	/** The report is read. */
	close(): void {
		this.#told = undefined;
	}

	/** One goes to another place: the ways in and out stay behind, and so does a report that asks for nothing. */
	leavePlace(): void {
		this.isOpen = false;
		if (this.#step) this.leave();
		const report = this.#told?.report;
		if (report && !report.isProblem && !report.unread && !report.settings) this.close();
	}

	/** Leaves what was asked, or a file that is being read: nothing changes. */
	leave(): void {
		this.#others = 0;
		this.#stop();
	}

	#stop(): void {
		this.#job?.abort(new DOMException('left', 'AbortError'));
		this.#step = this.#again = undefined;
	}

	/** Asks for a file and takes it in; rows or shows, as the file says itself. */
	async import(): Promise<void> {
		const file = await chooseFile();
		if (file) await this.takeFiles([file]);
	}

	/** Takes files in that came from somewhere: the first of them, for each may have to be answered. */
	async takeFiles(files: readonly File[]): Promise<void> {
		const [file, ...others] = files;
		if (!file) return;
		const incoming = await incomingFile(file);
		if ('report' in incoming) return this.#tell(incoming.report);
		this.leave();
		this.#others = others.length;
		await this.#take(incoming);
	}

	/** Says that something could not be read before it was looked at. */
	refuse(source: string, problem: string): void {
		this.#tell(notTakenIn(source, problem));
	}

	/** Asks what the columns of the last file hold, whatever was said before. */
	async askAgain(): Promise<void> {
		const told = this.#told;
		if (!told?.incoming) return;
		const step = await askAgain(told.incoming, this.#shelf.memory);
		if (step?.kind !== 'columns' || this.#told !== told) return;
		this.#stop();
		this.#again = told.step;
		this.#step = step;
		this.#told = undefined;
	}

	loadExample(): void {
		this.#tell(takeExample(this.#session));
	}

	/** Takes in pasted text. What cannot be read is left where it is, to be mended. */
	paste(text: string): Promise<void> {
		return this.#take(incomingText(text));
	}

	async export(way?: Way): Promise<void> {
		const session = this.#session;
		await this.#give(rowsInWords(session.show.rows.length), () => giveRows(session, way));
	}

	async save(way?: Way): Promise<void> {
		const session = this.#session;
		await this.#give('The show', () => giveShow(session, way));
	}

	/** Gives all shows in one file. */
	async backUp(way?: Way): Promise<void> {
		await this.#give('All shows', () => giveBackup(this.#shelf, way));
	}

	/** Makes the settings that rows of a file were worked out with those of the show. */
	takeSettings(change: Readonly<Record<string, unknown>>): void {
		const step = this.#session.do((show) => changeSettings(show, change, 'Use settings of the file'));
		if (step) this.#tell(settingsTaken);
	}

	/** Says what the columns of the file mean. That is remembered for files with the same headers. */
	async answerColumns(matching: ColumnMatching): Promise<void> {
		const step = this.#step;
		if (step?.kind !== 'columns') return;
		await this.#shelf.memory.keepMatching(step.columns.key, matching).catch(() => undefined); // asked again, then
		const again = this.#again;
		this.#step = this.#again = undefined;
		// What came in as it was understood before goes out again, unless something was done since: then it is compared.
		if (again === this.#session.lastStep) this.#session.takeBack(again);
		await this.#take(step.incoming, { matching });
	}

	/** Takes the file in as it was chosen. */
	async takeReview(review: MergeReview): Promise<void> {
		this.#step = undefined;
		await this.#work(review.file.source, (options) => takeReviewed(this.#session, review, options));
	}

	/** Puts a show of a file on the shelf and opens it. */
	async openBeside(show: Omit<Show, 'id'>, fileName: string): Promise<void> {
		const named = { ...show, name: this.#shelf.freeName(show.name) };
		const id = await this.#shelf.add([named]);
		this.#step = undefined;
		if (id === undefined || !(await this.#shelf.open(id)))
			return this.#tell(notTakenIn(`“${fileName}”`, this.#shelf.problem ?? ''));
		await keepTaken(this.#session, fileName);
		this.#tell(showTakenIn(named.name, show.rows.length, false));
	}

	/** Compares a show of a file with the open one, or with the one of that id. */
	async compare(show: Omit<Show, 'id'>, incoming: Incoming, id?: string): Promise<void> {
		this.#step = undefined;
		if (id !== undefined && !(await this.#shelf.open(id)))
			return this.#tell(notTakenIn(incoming.source, this.#shelf.problem ?? ''));
		await this.#work(incoming.source, (options) => compareShow(this.#session, show, incoming, options));
	}

	/** Puts back the shows of a backup that this device lacks. */
	async restore(shows: readonly StandingOfShow[]): Promise<void> {
		const missing = shows.filter(({ standing }) => standing === 'missing');
		const names: string[] = [];
		for (const { show, isArchived } of missing) {
			if (!(await this.#putBack(show, isArchived))) break;
			names.push(show.name);
		}
		this.#step = undefined;
		this.#tell(restored(names, names.length < missing.length ? this.#shelf.problem : undefined));
	}

	/** Puts a show back; one that was deleted comes back as it was, or stays so beside this one where that is another. */
	async #putBack(show: Show, isArchived: boolean): Promise<boolean> {
		const shelf = this.#shelf;
		if (!shelf.shows.some(({ id }) => id === show.id)) return shelf.keep([show], isArchived, Date.now());
		const deleted = await shelf.read(show.id).catch(() => undefined);
		if (deleted && isSameShow(deleted, show)) return shelf.bringBack(show.id);
		return (await shelf.add([{ ...show, name: shelf.freeName(show.name) }], isArchived)) !== undefined;
	}

	async #take(incoming: Incoming, more: TakeOptions = {}): Promise<void> {
		this.#incoming = incoming;
		await this.#work(incoming.source, (options) => take(this.#session, incoming, { ...options, ...more }));
	}

	/** Does what may take long, with its progress shown, until it is done or left, or its show is closed. */
	async #work(source: string, work: (options: TakeOptions) => Promise<Taken>): Promise<void> {
		this.#stop();
		const job = new AbortController();
		this.#job = job;
		const session = this.#session;
		const { signal } = session;
		const end = () => job.abort(signal.reason);
		signal.addEventListener('abort', end);
		try {
			const taken = await work({
				memory: this.#shelf.memory,
				signal: job.signal,
				onProgress: (doing, done, of) => {
					if (this.#job === job) this.#progress = { source, doing, done, of };
				},
			});
			if (this.#job !== job) return;
			signal.throwIfAborted();
			if (taken.kind === 'told') this.#tell(taken.report, this.#incoming, taken.step);
			else {
				this.#step = taken;
				this.#told = undefined;
				this.isOpen = false;
			}
		} catch (cause) {
			if (signal.aborted) this.#tell(leftBehind(source));
			else if (!job.signal.aborted) this.#tell(notTakenIn(source, (cause as Error).message));
		} finally {
			signal.removeEventListener('abort', end);
			if (this.#job === job) this.#job = this.#progress = undefined;
		}
	}

	/** Gives something out, and says what has come of it; not on another show, which has been opened meanwhile. */
	async #give(what: string, give: () => Promise<string | undefined>): Promise<void> {
		const session = this.#session;
		const report = await give().then(
			(fileName) => (fileName === undefined ? undefined : givenOut(what, fileName)),
			(cause: unknown) => notGivenOut(what, (cause as Error).name),
		);
		if (report && session === this.#session) this.#tell(report);
	}

	/**
	 * @param incoming what came in, where the report is of that
	 * @param step the step that brought it
	 */
	#tell(report: TakenIn, incoming?: Incoming, step?: UndoStep): void {
		const isMatched = incoming !== undefined && !report.isProblem && mayBeMatched(incoming.content);
		const sentences = [...report.sentences, ...(this.#others > 0 ? [oneAtATime(this.#others)] : [])];
		this.#others = 0;
		this.#told = {
			report: { ...report, sentences },
			show: this.#session.show,
			incoming: isMatched ? incoming : undefined,
			step,
		};
		if (!report.isProblem) this.isOpen = false;
	}
}
