import { keptColumns, matchKept } from '../app/keptColumns.ts';
import { chooseFile, chooseFiles, pictureKinds } from '../app/chooseFile.ts';
import {
	addPictures,
	beginsAsPicture,
	importPictures,
	isPictureFile,
	type PicturesRead,
} from '../app/importPictures.ts';
import { noPicture } from '../core/imports/saidOfPictures.ts';
import type { MatchedPicture } from '../core/pictures/matchPictures.ts';
import { compareShow } from '../app/compareShow.ts';
import type { MergeReview } from '../app/mergeReview.svelte.ts';
import type { Session } from '../app/session.svelte.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import { changeSettings } from '../core/commands/changeSettings.ts';
import { askAgain, importIncoming, importReviewed, exampleShow, isUntouched, loadExample } from '../app/importFile.ts';
import { nameOfFile, nameOfPasted, openFile, openPasted, type Origin } from '../app/incoming.ts';
import { openBeside } from '../app/openBeside.ts';
import type { StandingOfShow } from '../app/backupStandings.ts';
import { restoreShows } from '../app/restoreShows.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { type FileReport, notRead, settingsApplied } from '../core/imports/fileReports.ts';
import type { Show } from '../core/show/show.ts';
import { FilesOut } from './filesOut.svelte.ts';
import { FileIntake } from './fileIntake.svelte.ts';
import type { Step } from './fileQuestion.svelte.ts';
import type { Progress } from './fileWork.svelte.ts';
import type { Place } from './place.svelte.ts';

/** What picture files are called in sentences. */
const nameOfFiles = (files: readonly { readonly name: string }[]): string =>
	files.length === 1 ? nameOfFile(files[0]!) : `${files.length} files`;

/** Where files and pasted rows come in, and what there is to say about the last that came in or went out. */
export class FileDesk {
	readonly #shelf: Shelf;
	readonly #intake: FileIntake;
	/** Where rows, the show and all shows go out. */
	readonly out: FilesOut;

	constructor(shelf: Shelf) {
		this.#shelf = shelf;
		this.#intake = new FileIntake(shelf);
		this.out = new FilesOut(shelf, (report) => this.#intake.tell(report));
	}

	/** Whether the ways in and out are shown. */
	get isOpen(): boolean {
		return this.#intake.isOpen;
	}

	set isOpen(isOpen: boolean) {
		this.#intake.isOpen = isOpen;
	}

	get #session(): Session {
		return this.#shelf.session;
	}

	/** What came of the last file or text; undefined where nothing is to be said. */
	get report(): FileReport | undefined {
		return this.#intake.last.report;
	}

	/** What was said of the last file, once it has gone by itself. */
	get past(): FileReport | undefined {
		return this.#intake.last.past;
	}

	/** Whether one may say again what the columns of the last file hold. */
	get canAskAgain(): boolean {
		return this.report !== undefined && this.#intake.last.told?.incoming !== undefined;
	}

	/** Whether the columns are asked about of what came in already, and goes out again with the answer. */
	get isAskedAgain(): boolean {
		return this.#intake.question.isAskedAgain;
	}

	/** What has to be answered before the last file comes in; nothing has changed so far. */
	get step(): Step | undefined {
		return this.#intake.question.step;
	}

	/** How far a file is that takes long; undefined where none is under way. */
	get progress(): Progress | undefined {
		return this.#intake.running.progress ?? this.out.progress;
	}

	/** The report is read. */
	close(): void {
		this.#intake.last.end();
		this.#intake.letGo();
	}

	/** One goes on: a report that only says what is done has been read. */
	goneOn(): void {
		if (this.report?.isBrief) this.close();
	}

	/**
	 * One goes to another place: the ways in and out stay behind, and so does a report that asks for nothing. A comparison
	 * waits, for what was chosen in it is work, until one comes back or opens another show.
	 */
	leavePlace(left: Place, next: Place): void {
		this.isOpen = false;
		const { question } = this.#intake;
		if (this.step && !question.wait(left, this.#session)) this.leave();
		if (question.isWaiting && !question.goOn(next, this.#session)) this.leave();
		const report = this.#intake.last.told?.report;
		if (report && !report.isProblem && !report.unread && !report.settings) this.close();
	}

	/** Leaves what was asked, or a file that is being read: nothing changes. */
	leave(): void {
		this.out.leave();
		this.#intake.leave();
	}

	/** Asks for a file and imports it; rows or shows, as the file says itself. */
	async import(): Promise<void> {
		const file = await chooseFile();
		if (file) await this.importFiles([file]);
	}

	/**
	 * Imports files that came from somewhere: the first of them, for each may have to be answered. What is asked about
	 * another stays where this one cannot be read.
	 */
	async importFiles(files: readonly File[]): Promise<void> {
		if (files.some(isPictureFile)) return this.#importPictures(files);
		const [file, ...others] = files;
		if (!file) return;
		if (await beginsAsPicture(file)) return this.#importPictures(files);
		await this.#intake.import(
			nameOfFile(file),
			(signal, onProgress, by) => openFile(file, signal, this.#intake.brought.keeper(by), onProgress),
			others.length,
		);
	}

	/** Asks for picture files, and shows what they would change. */
	async importPictures(): Promise<void> {
		const files = await chooseFiles(pictureKinds);
		if (files.length > 0) await this.#importPictures(files);
	}

	async #importPictures(files: readonly File[]): Promise<void> {
		const by = this.#intake.brought.begin();
		this.#intake.last.hold(undefined);
		this.#intake.question.end();
		await this.#intake.work(
			nameOfFiles(files),
			async (options) => {
				const signal = options.signal ?? this.#session.signal;
				const onProgress = (done: number, of: number) => options.onProgress?.('reading', done, of);
				const keeper = this.#intake.brought.keeper(by);
				const pictures = await importPictures(this.#session, files, signal, onProgress, undefined, keeper);
				return pictures.matched.length > 0
					? { kind: 'pictures', pictures }
					: { kind: 'reported', report: noPicture(pictures.unread, pictures.room) };
			},
			'pictures',
			by,
		);
	}

	/** Adds the pictures as it was chosen. */
	async addPictures(read: PicturesRead, chosen: readonly MatchedPicture[]): Promise<void> {
		this.#intake.question.end();
		this.#intake.brought.accept();
		await this.#intake.work(
			nameOfFiles(chosen.map(({ file }) => file)),
			async ({ signal }) => ({
				kind: 'reported',
				...(await addPictures(this.#session, read, chosen, signal)),
			}),
			'pictures',
		);
	}

	/** Says that something could not be read before it was looked at. */
	refuse(source: string, problem: string): void {
		this.#intake.tell(notRead(source, problem));
	}

	/** Asks what the columns of the last file hold, whatever was said before. */
	async askAgain(): Promise<void> {
		const { told } = this.#intake.last;
		if (!told?.incoming) return;
		const step = await askAgain(this.#session, told.incoming, this.#shelf.memory);
		if (step?.kind !== 'columns' || this.#intake.last.told !== told) return;
		this.#intake.running.leave();
		this.#intake.question.ask(step, told.step);
		this.#intake.last.end();
	}

	/** Asks what the columns of a list hold that is being compared. */
	async matchColumns(review: MergeReview): Promise<void> {
		const { list } = review.file;
		const compared = this.step;
		const step = list && (await askAgain(this.#session, list, this.#shelf.memory));
		if (step?.kind === 'columns' && this.step === compared) this.#intake.question.askFromComparison(step);
	}

	/** Leaves the question about columns: for the comparison, where it was asked from there. */
	leaveColumns(): void {
		if (!this.#intake.question.goBack()) this.leave();
	}

	/** Whether columns of other programs are kept with the prints. */
	get hasKeptColumns(): boolean {
		return this.#session.show.rows.some(({ extra }) => extra !== undefined);
	}

	/** Asks which of ours the columns are that were kept with the prints. */
	askKept(): void {
		this.leave();
		this.isOpen = false;
		this.#intake.last.end();
		this.#intake.question.ask({ kind: 'kept', columns: keptColumns(this.#session) });
	}

	/** Makes cells of ours of the columns that were kept. */
	matchKept(matching: ColumnMatching): void {
		this.#intake.question.end();
		this.#intake.tell(matchKept(this.#session, matching));
	}

	async loadExample(): Promise<void> {
		const isInPlace = isUntouched(this.#session.show);
		this.#intake.tell(isInPlace ? loadExample(this.#session) : await openBeside(this.#shelf, exampleShow()));
	}

	/** Imports pasted text. What cannot be read is left where it is, to be mended. */
	paste(text: string): Promise<void> {
		return this.#intake.import(nameOfPasted, (signal) => openPasted(text, signal));
	}

	/** Makes the settings that rows of a file were worked out with those of the show. */
	applySettings(change: Readonly<Record<string, unknown>>): void {
		const step = this.#session.do((show) => changeSettings(show, change, 'Use settings of the file'));
		if (step) this.#intake.tell(settingsApplied);
	}

	/** Says what the columns of the file mean. That is remembered for files with the same headers. */
	async answerColumns(matching: ColumnMatching): Promise<void> {
		const { step } = this;
		if (step?.kind !== 'columns') return;
		await this.#shelf.memory.keepMatching(step.columns.key, matching).catch(() => undefined); // asked again, then
		const again = this.#intake.question.end();
		// What came in as it was understood before goes out again, unless something was done since: then it is compared.
		if (again !== undefined && again === this.#session.lastStep) this.#session.undoStep(again);
		await this.#intake.work(step.incoming.source, (options) =>
			importIncoming(this.#session, step.incoming, { ...options, matching }),
		);
	}

	/** Imports the file as it was chosen. */
	async importReview(review: MergeReview): Promise<void> {
		this.#intake.brought.accept();
		this.#intake.question.end();
		await this.#intake.work(review.file.source, (options) => importReviewed(this.#session, review, options));
	}

	/** Puts a show of a file on the shelf and opens it. */
	async openBeside(show: Omit<Show, 'id'>, fileName: string): Promise<void> {
		this.#intake.brought.accept();
		const report = await openBeside(this.#shelf, show, fileName);
		this.#intake.question.end();
		this.#intake.tell(report);
	}

	/** Compares a show of a file with the open one, or with the one of that id. */
	async compare(show: Omit<Show, 'id'>, incoming: Origin, id?: string): Promise<void> {
		this.#intake.question.end();
		if (id !== undefined && !(await this.#shelf.open(id)))
			return this.#intake.tell(notRead(incoming.source, this.#shelf.problem ?? ''));
		await this.#intake.work(incoming.source, (options) => compareShow(this.#session, show, incoming, options));
	}

	/** Puts back the shows of a backup that this device lacks. */
	async restore(shows: readonly StandingOfShow[]): Promise<void> {
		this.#intake.brought.accept();
		const report = await restoreShows(this.#shelf, shows);
		this.#intake.question.end();
		this.#intake.tell(report);
	}
}
