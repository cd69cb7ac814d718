import { chooseFile } from '../app/chooseFile.ts';
import { giveRows, giveShow } from '../app/giveFile.ts';
import type { Session } from '../app/session.svelte.ts';
import { takeExample, takeFile, takeText } from '../app/takeFile.ts';
import { givenOut, rowsInWords, settingsTaken, type TakenIn } from '../core/show/takenIn.ts';
import type { Show } from '../core/show/show.ts';

/** Where files and pasted rows come in and go out, and what there is to say about the last that came in. */
export class FileDesk {
	readonly #session: Session;
	/** Whether the ways in and out are shown. */
	isOpen = $state(false);
	#told = $state.raw<{ readonly report: TakenIn; readonly show: Show }>();

	constructor(session: Session) {
		this.#session = session;
	}

	/**
	 * What came of the last file or text; undefined where nothing is to be said, and once the show is another: after the
	 * next edit it would speak of what is no more. What could not be read is said until it is closed.
	 */
	get report(): TakenIn | undefined {
		const told = this.#told;
		return told && (told.report.isProblem || told.show === this.#session.show) ? told.report : undefined;
	}

	/** The report is read. */
	close(): void {
		this.#told = undefined;
	}

	/** Asks for a file and takes it in; rows or a show, as the file says itself. */
	async import(): Promise<void> {
		const file = await chooseFile();
		if (file) this.#tell(await takeFile(this.#session, file));
	}

	async loadExample(): Promise<void> {
		this.#tell(await takeExample(this.#session));
	}

	/** Takes in pasted text. @returns whether it could be read; if not, it is left where it is, to be mended */
	paste(text: string): boolean {
		const taken = takeText(this.#session, text);
		this.#tell(taken);
		return !taken.isProblem;
	}

	export(): void {
		this.#tell(givenOut(rowsInWords(this.#session.show.rows.length), giveRows(this.#session)));
	}

	save(): void {
		this.#tell(givenOut('The show', giveShow(this.#session)));
	}

	/** Makes the settings that rows of a file were worked out with those of the show. */
	takeSettings(change: Readonly<Record<string, unknown>>): void {
		this.#session.changeSettings(change, 'Use settings of the file');
		if (this.#session.question === undefined) this.#tell(settingsTaken);
	}

	#tell(report: TakenIn): void {
		this.#told = { report, show: this.#session.show };
		if (!report.isProblem) this.isOpen = false;
	}
}
