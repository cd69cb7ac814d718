import { createSubscriber } from 'svelte/reactivity';
import type { KeptImage } from '../storage/pictureStore.ts';
import { otherWork } from './inSlices.ts';

/** An address that comes later; who has asked for it hears of it, and nobody else. */
class Address {
	value: string | undefined;
	#onCome: (() => void) | undefined;
	readonly heed = createSubscriber((onCome) => {
		this.#onCome = onCome;
		return () => (this.#onCome = undefined);
	});

	come(value: string): void {
		this.value = value;
		this.#onCome?.();
	}
}

/** So many images are read at once: the browser makes each address on the page's thread, and two hundred together hold it up. */
const mostAtOnce = 4;

/** The addresses under which the page shows images that are kept; an image is read when its address is first asked for. */
export class PictureAddresses {
	readonly #read: (key: string) => Promise<KeptImage | undefined>;
	readonly #addresses = new Map<string, Address>();
	readonly #asked = new Set<string>();
	/** What is asked for and waits for its turn, the first asked first. */
	readonly #waiting = new Set<string>();
	#underWay = 0;
	#isClosed = false;

	/** @param read an image by its key; undefined where there is none */
	constructor(read: (key: string) => Promise<KeptImage | undefined>) {
		this.#read = read;
	}

	/** The address of an image; undefined where it is not here, or not yet. */
	get(key: string): string | undefined {
		let address = this.#addresses.get(key);
		if (!address) this.#addresses.set(key, (address = new Address()));
		if (address.value !== undefined) return address.value;
		address.heed();
		if (!this.#asked.has(key)) {
			this.#asked.add(key);
			this.#waiting.add(key);
			void this.#readOn();
		}
		return undefined;
	}

	/** It is asked for once more: it may not have been there before. */
	forget(key: string): void {
		if (this.#addresses.get(key)?.value === undefined && !this.#waiting.has(key)) this.#asked.delete(key);
	}

	/** All that is not there yet is asked for once more. */
	forgetAll(): void {
		for (const key of this.#asked) this.forget(key);
	}

	close(): void {
		this.#isClosed = true;
		this.#waiting.clear();
		for (const { value } of this.#addresses.values()) if (value !== undefined) URL.revokeObjectURL(value);
		this.#addresses.clear();
	}

	async #readOn(): Promise<void> {
		if (this.#underWay >= mostAtOnce) return;
		this.#underWay++;
		for (const key of this.#waiting) {
			this.#waiting.delete(key);
			const image = await this.#read(key).catch(() => void this.forget(key));
			const address = this.#addresses.get(key);
			if (image && address && address.value === undefined && !this.#isClosed)
				address.come(URL.createObjectURL(new Blob([image.bytes], { type: image.type })));
			await otherWork();
		}
		this.#underWay--;
	}
}
