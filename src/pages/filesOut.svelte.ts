import {
	giveBackup,
	giveCatalogue,
	giveCutList,
	giveEditions,
	giveHangingList,
	givePackingList,
	givePrintList,
	giveRows,
	giveSales,
	giveShow,
	giveToGet,
	namesBuyers,
	type ListFor,
	reportOfGiving,
	type Way,
} from '../app/giveFile.ts';
import type { Packing } from '../app/packedFile.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import { blankLeftOut, buyersLeftOut, type FileReport, rowsInWords } from '../core/imports/fileReports.ts';
import type { RegisteredTitle } from '../core/record/editionRegister.ts';
import type { Sales } from '../core/record/sales.ts';
import type { ToGet } from '../core/order/whatToGet.ts';
import type { ToPrint } from '../core/order/whatToPrint.ts';
import type { BoardToCut } from '../core/sheets/cutList.ts';
import type { NameOfBlank } from '../core/sheets/layout.ts';
import { countPrints } from '../core/show/blankRow.ts';
import type { Progress } from './fileWork.svelte.ts';

/** The ways out of the app: the rows, the show or all shows as a file. */
export class FilesOut {
	readonly #shelf: Shelf;
	readonly #tell: (report: FileReport) => void;

	#progress = $state.raw<Progress>();
	#packing: AbortController | undefined;

	/** @param tell says what has come of it */
	constructor(shelf: Shelf, tell: (report: FileReport) => void) {
		this.#shelf = shelf;
		this.#tell = tell;
	}

	/** How far a file is that is packed with its pictures; undefined where none is. */
	get progress(): Progress | undefined {
		return this.#progress;
	}

	/** Leaves what is being packed: no file is made. */
	leave(): void {
		this.#packing?.abort(new DOMException('left', 'AbortError'));
		this.#packing = this.#progress = undefined;
	}

	/** The rows of the open show, as CSV. */
	async export(way?: Way, listFor?: ListFor): Promise<void> {
		const { session } = this.#shelf;
		const { rows } = session.show;
		await this.#give(rowsInWords(countPrints(rows)), () => giveRows(session, way, listFor), [
			...buyersLeftOut(namesBuyers(rows)),
			...blankLeftOut(rows.length - countPrints(rows)),
		]);
	}

	/** The open show, with all that is in it. */
	async save(way?: Way, hasPictures?: boolean): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The show', (packing) => giveShow(session, way, hasPictures, packing));
	}

	/** All shows in one file. */
	async backUp(way?: Way): Promise<void> {
		await this.#give('All shows', (packing) => giveBackup(this.#shelf, way, new Date(), packing), [], true);
	}

	/** What is to be got for the open show, as CSV. */
	async getList(toGet: ToGet): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The to-get list', () => giveToGet(session, toGet));
	}

	/** The print list of the open show, as CSV. */
	async printList(toPrint: ToPrint): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The list of pictures to print', () => givePrintList(session, toPrint));
	}

	/** What is to be cut for the open show, by size, as CSV. */
	async cutList(boards: readonly BoardToCut[], nameOf: NameOfBlank): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The cut list', () => giveCutList(session, boards, nameOf));
	}

	/** The hanging list of the open show, as CSV. */
	async hangingList(): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The hanging list', () => giveHangingList(session));
	}

	/** The catalogue of the open show, as CSV. */
	async catalogue(): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The catalogue', () => giveCatalogue(session));
	}

	/** The packing list of the open show, as CSV. */
	async packingList(): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The packing list', () => givePackingList(session));
	}

	/** What was sold in the open show, as CSV. */
	async sales(sales: Sales, hasBuyers: boolean): Promise<void> {
		const { session } = this.#shelf;
		const said = hasBuyers ? ['The buyers’ names are in it: pass it on only to those who may have them.'] : [];
		await this.#give('The list of sales', () => giveSales(session, sales, hasBuyers), said);
	}

	/** The edition register of the open show, as CSV. */
	async editions(register: readonly RegisteredTitle[]): Promise<void> {
		const { session } = this.#shelf;
		await this.#give('The edition register', () => giveEditions(session, register));
	}

	/**
	 * Gives something out, and says what has come of it.
	 * @param isOfAll where it is of all shows: else nothing is said on another show, which has been opened meanwhile
	 */
	async #give(
		what: string,
		give: (packing: Packing) => Promise<string | undefined>,
		sentences: readonly string[] = [],
		isOfAll = false,
	): Promise<void> {
		const { session } = this.#shelf;
		const job = new AbortController();
		const { signal } = job;
		const onProgress = (done: number, of: number) => {
			if (signal.aborted) return;
			// One is packed at a time: the next one ends the one before. What is not packed, as a list, leaves it alone.
			if (this.#packing !== job) this.leave();
			this.#packing = job;
			this.#progress = done < of ? { source: what, doing: 'packing', done, of, what: 'pictures' } : undefined;
		};
		const report = await reportOfGiving(what, give({ signal, onProgress }), sentences);
		if (this.#packing === job) this.#packing = this.#progress = undefined;
		if (report && !signal.aborted && (isOfAll || session === this.#shelf.session)) this.#tell(report);
	}
}
