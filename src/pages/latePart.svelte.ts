/** A part of the app that is loaded after the first screen. What has loaded stays in memory for as long as the page is open. */
export class LatePart<Part> {
	#part = $state.raw<Part>();
	#isMissing = $state(false);
	#loading: Promise<Part | undefined> | undefined;
	readonly #load: () => Promise<Part>;

	/** @param load begins to load it, anew each time */
	constructor(load: () => Promise<Part>) {
		this.#load = load;
	}

	/** Undefined until it is loaded. */
	get part(): Part | undefined {
		return this.#part;
	}

	/** Whether it did not come when it was last asked for. */
	get isMissing(): boolean {
		return this.#isMissing;
	}

	/** Loads it, once; where it did not come, once more. Resolves with nothing where it does not come. */
	load(): Promise<Part | undefined> {
		return (this.#loading ??= this.#try());
	}

	async #try(): Promise<Part | undefined> {
		try {
			this.#part = await this.#load();
			this.#isMissing = false;
		} catch (cause) {
			console.warn('A part of the app is not loaded:', cause);
			this.#isMissing = true;
			this.#loading = undefined;
		}
		return this.#part;
	}
}
