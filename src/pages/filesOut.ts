import {
	giveBackup,
	giveHangingList,
	givePrintList,
	giveRows,
	giveShow,
	giveToGet,
	type ListFor,
	reportOfGiving,
	type Way,
} from '../app/giveFile.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import { type FileReport, rowsInWords } from '../core/imports/fileReports.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { ToPrint } from '../core/order/whatToPrint.ts';
import { countPrints } from '../core/show/blankRow.ts';

/** The ways out of the app: the rows, the show or all shows as a file. */
export class FilesOut {
	readonly #shelf: Shelf;
	readonly #tell: (report: FileReport) => void;

	/** @param tell says what has come of it */
	constructor(shelf: Shelf, tell: (report: FileReport) => void) {
		this.#shelf = shelf;
		this.#tell = tell;
	}

	/** The rows of the open show, as CSV. */
	async export(way?: Way, listFor?: ListFor): Promise<void> {
		const { session } = this.#shelf;
		await this.#give(rowsInWords(countPrints(session.show.rows)), () => giveRows(session, way, listFor));
	}

	/** The open show, with all that is in it. */
	async save(way?: Way, hasPictures?: boolean): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The show', () => giveShow(session, way, hasPictures));
	}

	/** All shows in one file. */
	async backUp(way?: Way): Promise<void> {
		await this.#give('All shows', () => giveBackup(this.#shelf, way));
	}

	/** What is to be got for the open show, as CSV. */
	async getList(toGet: ToGet): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The to-get list', () => giveToGet(session, toGet));
	}

	/** The print list of the open show, as CSV. */
	async printList(toPrint: ToPrint): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The print list', () => givePrintList(session, toPrint));
	}

	/** The hanging list of the open show, as CSV. */
	async hangingList(): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The hanging list', () => giveHangingList(session));
	}

	/** Gives something out, and says what has come of it; not on another show, which has been opened meanwhile. */
	async #give(what: string, give: () => Promise<string | undefined>): Promise<void> {
		const { session } = this.#shelf;
		const report = await reportOfGiving(what, give());
		if (report && session === this.#shelf.session) this.#tell(report);
	}
}
