import { BroughtPictures } from '../app/broughtPictures.ts';
import { importIncoming, type ImportOptions, type ImportOutcome } from '../app/importFile.ts';
import { type Incoming, isList, openUnlessLeft } from '../app/incoming.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import { notRead } from '../core/imports/fileReports.ts';
import type { Reading } from '../core/length/reading.ts';
import { FileQuestion } from './fileQuestion.svelte.ts';
import { FileWork, type Progress } from './fileWork.svelte.ts';
import { LastReport } from './lastReport.svelte.ts';

/** How a file or a text comes in: it is opened, worked on, asked about, and said, and what it brought is let go of. */
export class FileIntake {
	readonly #shelf: Shelf;
	/** Whether the ways in and out are shown. */
	isOpen = $state(false);
	readonly last: LastReport;
	readonly question = new FileQuestion();
	readonly running = new FileWork();
	/** The pictures that came in and are not answered for. */
	readonly brought: BroughtPictures;

	constructor(shelf: Shelf) {
		this.#shelf = shelf;
		this.last = new LastReport(shelf);
		this.brought = new BroughtPictures(shelf);
	}

	/**
	 * Imports what is opened.
	 * @param open opens it; `by` names the import for the pictures that it brings
	 * @param others how many files came with it, and are not looked at
	 */
	async import(
		source: string,
		open: (
			signal: AbortSignal | undefined,
			onProgress: (done: number, of: number) => void,
			by: string,
		) => Promise<Reading<Incoming>>,
		others = 0,
	): Promise<void> {
		this.last.expect(others);
		const by = this.brought.begin();
		const work = async (options: ImportOptions): Promise<ImportOutcome> => {
			const onProgress = (done: number, of: number) => options.onProgress?.('unpacking', done, of);
			const incoming = await openUnlessLeft((signal) => open(signal, onProgress, by), options.signal);
			if ('problem' in incoming) return { kind: 'reported', report: notRead(source, incoming.problem) };
			this.last.opened(isList(incoming.value) ? incoming.value : undefined, incoming.value.leftOut);
			this.question.end();
			return importIncoming(this.#shelf.session, incoming.value, options);
		};
		await this.work(source, work, 'rows', by);
	}

	/**
	 * Does what may take long, until it is done or left, and says what has come of it, or asks.
	 * @param by names an import that may bring pictures
	 */
	async work(
		source: string,
		work: (options: ImportOptions) => Promise<ImportOutcome>,
		what: Progress['what'] = 'rows',
		by?: string,
	): Promise<void> {
		const came = { isWanted: false };
		const onOutcome = (outcome: ImportOutcome) => {
			came.isWanted = outcome.kind !== 'reported' || !outcome.report.isProblem;
			if (by !== undefined && came.isWanted) this.brought.show(by);
			if (by !== undefined && came.isWanted && outcome.kind === 'reported') this.brought.accept();
			if (outcome.kind === 'reported') return this.tell(outcome.report, this.last.list, outcome.step);
			this.question.ask(outcome);
			this.last.end();
			this.isOpen = false;
		};
		await this.running.run(source, this.#shelf, work, onOutcome, what);
		if (by !== undefined && !came.isWanted) this.brought.letGo(by);
		this.letGo();
	}

	/** Leaves what was asked, or a file that is being read: nothing changes. */
	leave(): void {
		this.last.expect(0);
		// What is still being read lets go of its pictures when it has stopped.
		if (this.question.step || this.question.isWaiting) this.brought.letGo();
		this.running.leave();
		this.question.end();
		this.letGo();
	}

	/** See `LastReport`: what could not be read leaves the ways in open, to be mended. */
	tell(...[report, incoming, step]: Parameters<LastReport['tell']>): void {
		this.last.tell(report, incoming, step);
		if (!report.isProblem) this.isOpen = false;
	}

	/** Lets go of the list that came in last, once it is neither read nor asked about, nor may be asked about again. */
	letGo(): void {
		if (!this.running.isBusy && !this.question.step && !this.question.isWaiting && !this.last.told?.incoming)
			this.last.hold(undefined);
	}
}
