/**
 * What there is to say about the app's own version. `waiting`: a newer one is on this device and starts when asked to.
 * `starting`: it was asked to, and takes over once the browser has brought the older one to rest. Chromium takes a second
 * for that, or half a minute where a page needs a file from the older one at that moment; asking again hastens nothing.
 * `replaced`: it was started, from another window perhaps, and this one still shows the older.
 */
export type UpdateState = 'none' | 'waiting' | 'starting' | 'replaced';

/** The app's next version: it is fetched by itself, and started only when the person says so. */
export class Update {
	#state: UpdateState = $state('none');
	#isApplied = false;
	readonly #start: () => Promise<void>;
	readonly #beforeReload: () => Promise<void>;
	readonly #reload: () => void;

	/**
	 * @param start asks the waiting version to take over; the browser tells of it later, through `wasReplaced`
	 * @param beforeReload resolves when everything typed is on disk
	 * @param reload shows the page again; replaced in tests
	 */
	constructor(start: () => Promise<void>, beforeReload: () => Promise<void>, reload: () => void) {
		this.#start = start;
		this.#beforeReload = beforeReload;
		this.#reload = reload;
	}

	get state(): UpdateState {
		return this.#state;
	}

	/** A newer version is on this device. */
	isWaiting(): void {
		if (this.#state === 'none') this.#state = 'waiting';
	}

	/** A newer version now answers for this page, on the word of this window or of another. */
	wasReplaced(): void {
		this.#state = 'replaced';
		if (this.#isApplied) this.#showAnew();
	}

	/** What was typed while the version took over is kept first; where it cannot be, the person is asked again. */
	#showAnew(): void {
		this.#isApplied = false;
		this.#beforeReload().then(
			() => this.#reload(),
			() => undefined,
		);
	}

	/**
	 * The person wants the newer version. A cell that is being typed in is left first, which keeps what it holds, and the
	 * page is shown again only once all of it is on disk.
	 * @throws what `beforeReload` throws: then nothing has changed and it can be asked again
	 */
	async apply(): Promise<void> {
		await this.#beforeReload();
		this.#isApplied = true;
		if (this.#state === 'replaced') return this.#reload();
		this.#state = 'starting';
		await this.#start();
	}

	/** The person goes on with this version; the question comes back the next time the app is opened. */
	putOff(): void {
		this.#state = 'none';
	}
}
