import { isSameWord, offeredWords } from '../../core/values/words.ts';

/** What a list of words is opened for. */
export interface WordSource {
	/** All words that may be chosen. */
	readonly choices: readonly string[];
	/** What is typed now. */
	readonly text: string;
	/** Whether no other word means anything: then the first that is offered for what is typed is the active one. */
	readonly isClosed: boolean;
}

/** A list of words under what is typed into: which of them are offered, and which one a key would choose. */
export class WordChoice {
	readonly #source: () => WordSource;
	#isOpen = $state.raw(false);
	/** Whether something has been typed since the list was opened; until then all words are offered. */
	#isTyped = $state.raw(false);
	/** Place of the active word among those offered; undefined until it is moved. */
	#moved = $state.raw<number>();

	/** The words that are offered. */
	readonly offered: readonly string[] = $derived.by(() => {
		const { choices, text } = this.#source();
		return this.#isTyped ? offeredWords(choices, text) : choices;
	});
	/** Whether there is a list to be seen. */
	readonly isOpen: boolean = $derived.by(() => this.#isOpen && this.offered.length > 0);
	/** Place of the active word among those offered, from 0; -1 where none is. */
	readonly activePlace: number = $derived.by(() => {
		const { text, isClosed } = this.#source();
		if (!this.isOpen) return -1;
		if (this.#moved !== undefined) return Math.min(this.#moved, this.offered.length - 1);
		const same = this.offered.findIndex((word) => isSameWord(word, text));
		return same < 0 && this.#isTyped && isClosed && text.trim() !== '' ? 0 : same;
	});

	constructor(source: () => WordSource) {
		this.#source = source;
	}

	/** The word that a key would choose. */
	get active(): string | undefined {
		return this.offered[this.activePlace];
	}

	open(): void {
		if (this.#source().choices.length === 0) return;
		this.#isOpen = true;
		this.#isTyped = false;
		this.#moved = undefined;
	}

	close(): void {
		this.#isOpen = false;
	}

	/** Something has been typed: an open list offers what answers to it. */
	typed(): void {
		this.#isTyped = true;
		this.#moved = undefined;
	}

	/**
	 * A key in the field. Alt and an arrow open and close the list; arrows go through it, round at its ends.
	 * @returns whether the list has dealt with it
	 */
	key({ key, altKey, ctrlKey, metaKey, shiftKey }: KeyboardEvent): boolean {
		if ((key !== 'ArrowDown' && key !== 'ArrowUp') || ctrlKey || metaKey || shiftKey) return false;
		if (altKey) {
			if (key === 'ArrowDown') this.open();
			else this.close();
			return true;
		}
		if (!this.isOpen) return false;
		const count = this.offered.length;
		const by = key === 'ArrowDown' ? 1 : -1;
		this.#moved = this.activePlace < 0 && by < 0 ? count - 1 : (this.activePlace + by + count) % count;
		return true;
	}
}
