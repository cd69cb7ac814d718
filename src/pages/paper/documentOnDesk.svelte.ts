import type { MadeDocument, PaperDocument, PaperSource } from './paperDocument.ts';

/** A document on the desk: made when it is looked at, and again when what it is made from changes. */
export class DocumentOnDesk {
	readonly document: PaperDocument;
	/** Whether it is chosen to be printed. */
	isShown = $state(false);
	readonly #source: PaperSource;
	readonly made: MadeDocument<Record<string, unknown>> = $derived.by(() =>
		this.isShown ? this.document.make(this.#source) : { pages: [] },
	);
	/** What is said of it beside its pages, in a sentence: what it waits for, else why it has none. */
	readonly said: string | undefined = $derived.by(() => {
		const { pages, waits, says } = this.made;
		if (!this.isShown) return undefined;
		return waits ?? says ?? (pages.length === 0 ? this.document.none : undefined);
	});

	constructor(document: PaperDocument, source: PaperSource) {
		this.document = document;
		this.#source = source;
	}
}
