/** A part of the app that is loaded after the first screen. What has loaded stays in memory for as long as the page is open. */
export class LatePart<Part> {
	#part = $state.raw<Part>();
	#isMissing = $state(false);
	#loading: Promise<Part | undefined> | undefined;
	readonly #load: () => Promise<Part>;
	#isThere: (part: Part) => void = () => undefined;
	/** Resolves once it is loaded, whoever has asked for it. */
	readonly loaded = new Promise<Part>((resolve) => (this.#isThere = resolve));

	/** @param load begins to load it, again each time */
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
			const part = await this.#load();
			this.#part = part;
			this.#isThere(part);
			this.#isMissing = false;
		} catch (cause) {
			console.warn('A part of the app is not loaded:', cause);
			this.#isMissing = true;
			this.#loading = undefined;
		}
		return this.#part;
	}
}

/** Loads a part that is of no use without one that comes before it: both at once, and neither alone. */
export async function together<Part>(
	before: Pick<LatePart<unknown>, 'load'>,
	load: () => Promise<Part>,
): Promise<Part> {
	const [part, first] = await Promise.all([load(), before.load()]);
	if (first === undefined) throw new Error('the part before it is not loaded');
	return part;
}
