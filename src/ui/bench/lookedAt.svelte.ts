/** What can be looked at and ticked in a step: mounts at the cutter, sheets at the knife. */
interface InStep {
	readonly isMade: boolean;
}

/** Which of the things of a step is drawn, and which are left to make. Those of the step are read again each time. */
export class LookedAt<T extends InStep> {
	readonly #keyOf: (each: T) => string;
	/** What somebody wanted to look at. */
	#wanted = $state.raw<string>();
	/** What is left of the step. */
	readonly rest: readonly T[];
	/** What comes next: the first of the step that is still to be made, or the first of all where none is. */
	readonly #next: T | undefined;
	/** What is drawn: what was asked for, else what comes next. */
	readonly drawn: T | undefined;

	/**
	 * @param all what the active step consists of; reactive
	 * @param keyOf tells them apart, whatever becomes of their ticks
	 */
	constructor(all: () => readonly T[], keyOf: (each: T) => string) {
		this.#keyOf = keyOf;
		this.rest = $derived(all().filter(({ isMade }) => !isMade));
		this.#next = $derived(this.rest[0] ?? all()[0]);
		this.drawn = $derived(all().find((each) => keyOf(each) === this.#wanted) ?? this.#next);
	}

	/** What the key for a tick ticks: what is drawn, or what comes next where that is made; with nothing left it unticks. */
	get toTick(): T | undefined {
		return this.drawn?.isMade ? (this.rest[0] ?? this.drawn) : this.drawn;
	}

	/** Draws one of them, until {@link goOn}. */
	show(each: T): void {
		this.#wanted = this.#keyOf(each);
	}

	/** Draws what comes next again: something was ticked, or the step is another. */
	goOn(): void {
		this.#wanted = undefined;
	}
}
