import { countOf } from '../../core/values/countOf.ts';
import type { MadeDocument, PaperDocument, PaperSource } from './paperDocument.ts';

/** A document on the desk: made once it is looked at, and again when what it is made from changes. */
export class DocumentOnDesk {
	readonly document: PaperDocument;
	/** Whether its pages may be counted by now, though it is not chosen. */
	isCounted = $state(false);
	readonly #isChosen: () => boolean;
	readonly #source: PaperSource;
	readonly made: MadeDocument<Record<string, unknown>> | undefined = $derived.by(() =>
		this.isShown || this.isCounted ? this.document.make(this.#source) : undefined,
	);
	/** What is said of it while it is chosen, in a sentence: what it waits for, else why it has no pages, or what they lack. */
	readonly said: string | undefined = $derived.by(() => {
		if (!this.isShown || !this.made) return undefined;
		const { pages, waits, says } = this.made;
		return waits ?? says ?? (pages.length === 0 ? this.document.none : undefined);
	});

	/** @param isChosen whether it is to be printed */
	constructor(document: PaperDocument, source: PaperSource, isChosen: () => boolean) {
		this.document = document;
		this.#source = source;
		this.#isChosen = isChosen;
	}

	/** How many pages it has, in words; while what it waits for is worked out there may be more or fewer of them. */
	get counted(): string {
		if (!this.made) return '…';
		const { pages, waits } = this.made;
		return pages.length === 0 ? 'none' : countOf(pages.length, 'page') + (waits ? ', not final yet' : '');
	}

	get isShown(): boolean {
		return this.#isChosen();
	}
}
