import type { Step } from '../app/history.svelte.ts';
import { mayBeMatched } from '../app/importFile.ts';
import type { IncomingList } from '../app/incoming.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import type { FileReport } from '../core/imports/fileReports.ts';
import { oneAtATime } from '../core/imports/saidOfFiles.ts';
import type { Show } from '../core/show/show.ts';

/** What was said, and what it hangs on. */
interface Told {
	readonly report: FileReport;
	readonly show: Show;
	/** What came in, where one may say again what its columns hold. */
	readonly incoming: IncomingList | undefined;
	/** The step that brought it; undefined where nothing has changed. */
	readonly step: Step | undefined;
}

/** What there is to say of the last file or text that came in or went out, and the list that it was, while it may be read again. */
export class LastReport {
	readonly #shelf: Shelf;
	#told = $state.raw<Told>();
	/** The last that was brief, to be looked up once it has gone. */
	#brief = $state.raw<Pick<Told, 'report' | 'show'>>();
	/** The list that came in last, while it may be read again. */
	#list: IncomingList | undefined;
	/** How many files came with the one that is imported, and are not looked at. */
	#others = 0;
	/** What there is to say of pictures that came with it and were not kept. */
	#leftOut: string | undefined;

	constructor(shelf: Shelf) {
		this.#shelf = shelf;
	}

	/**
	 * What came of it; undefined where nothing is to be said. Once the show is another, after the next edit, a report would
	 * speak of what is no more. What could not be read is said until it is closed.
	 */
	get report(): FileReport | undefined {
		if (!this.#told) return undefined;
		const { report, show } = this.#told;
		return report.isProblem || show === this.#shelf.session.show ? report : undefined;
	}

	/** What was said last in brief, of this show; undefined while something is said. */
	get past(): FileReport | undefined {
		const isHere = this.#brief?.show.id === this.#shelf.session.show.id;
		return isHere && this.report === undefined ? this.#brief?.report : undefined;
	}

	/** What was said last, whether it still holds or not. */
	get told(): Told | undefined {
		return this.#told;
	}

	/** The list that came in last, while it may be read again. */
	get list(): IncomingList | undefined {
		return this.#list;
	}

	/** A file is imported, and so many that came with it are not: the next report says so. */
	expect(others: number): void {
		this.#others = others;
		this.#leftOut = undefined;
	}

	/** What is imported has been opened: its list takes the place of the last one, and what it left out is said. */
	opened(list: IncomingList | undefined, leftOut?: string): void {
		this.hold(list);
		this.#leftOut = leftOut;
	}

	/** Holds the list that is imported, in the place of the last one. */
	hold(list: IncomingList | undefined): void {
		this.#list?.opened.list.letGo();
		this.#list = list;
		if (this.#told) this.#told = { ...this.#told, incoming: undefined };
	}

	/**
	 * Says it in the place of what was said before.
	 * @param incoming what came in, where the report is of that
	 * @param step the step that brought it
	 */
	tell(report: FileReport, incoming?: IncomingList, step?: Step): void {
		const leftOut = this.#leftOut ?? [];
		const sentences = [...report.sentences, ...(this.#others > 0 ? [oneAtATime(this.#others)] : [])].concat(leftOut);
		this.expect(0);
		const isMatched = incoming !== undefined && !report.isProblem && mayBeMatched(incoming);
		const isBrief = report.isBrief === true && !isMatched && sentences.length === report.sentences.length;
		this.#told = {
			report: { ...report, sentences, isBrief },
			show: this.#shelf.session.show,
			incoming: isMatched ? incoming : undefined,
			step,
		};
		this.#brief = isBrief ? this.#told : undefined;
	}

	/** Nothing is said any more. */
	end(): void {
		this.#told = undefined;
	}
}
