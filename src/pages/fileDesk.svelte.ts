import { chooseFile } from '../app/chooseFile.ts';
import { giveRows, giveShow } from '../app/giveFile.ts';
import type { Session } from '../app/session.svelte.ts';
import { takeExample, takeFile, takeText } from '../app/takeFile.ts';
import type { TakenIn } from '../core/show/takenIn.ts';

/** Where files and pasted rows come in and go out, and what there is to say about the last that came in. */
export class FileDesk {
	readonly #session: Session;
	/** Whether the ways in and out are shown. */
	isOpen = $state(false);
	/** What came of the last file or text; undefined where nothing is to be said. */
	report = $state.raw<TakenIn>();

	constructor(session: Session) {
		this.#session = session;
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
		giveRows(this.#session);
	}

	save(): void {
		giveShow(this.#session);
	}

	#tell(taken: TakenIn): void {
		this.report = taken;
		if (!taken.isProblem) this.isOpen = false;
	}
}
