/**
 * Whether the app opens without a connection. `arriving`: that is being looked at, and what is not kept yet is fetched.
 * `impossible`: this browser keeps no apps, or not for this address.
 */
export type OfflineState = 'arriving' | 'ready' | 'not kept' | 'impossible';

/** Whether all of the app is on this device: said only when every file of it has been looked at. */
export class Offline {
	#state: OfflineState = $state('arriving');
	#looking: Promise<void> | undefined;
	readonly #isWhole: (() => Promise<boolean>) | undefined;

	/**
	 * @param isWhole keeps what is not kept yet, and resolves with whether every file is there then; undefined where
	 * nothing can be kept
	 */
	constructor(isWhole: (() => Promise<boolean>) | undefined) {
		this.#isWhole = isWhole;
		if (!isWhole) this.#state = 'impossible';
	}

	get state(): OfflineState {
		return this.#state;
	}

	/** Looks, and keeps what is missing; one look at a time. What was ready stays so in words until it is known not to be. */
	look(): Promise<void> {
		return (this.#looking ??= this.#look().finally(() => (this.#looking = undefined)));
	}

	async #look(): Promise<void> {
		if (!this.#isWhole) return;
		if (this.#state !== 'ready') this.#state = 'arriving';
		try {
			this.#state = (await this.#isWhole()) ? 'ready' : 'not kept';
		} catch (cause) {
			console.warn('The app is not kept on this device:', cause);
			this.#state = 'not kept';
		}
	}
}
