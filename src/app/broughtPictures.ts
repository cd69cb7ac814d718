import { makeId } from '../files/makeId.ts';
import type { WholePicture } from '../storage/pictureStore.ts';
import type { Shelf } from './shelf.svelte.ts';
import { letGoPictures } from './sweepPictures.ts';

/**
 * The pictures that files have brought which are not imported yet. They lie on the device before anyone says whether they
 * are wanted; where they are not, they go at once.
 */
export class BroughtPictures {
	readonly #shelf: Shelf;
	/** Names the import that is shown and waits for an answer. */
	#shown: string | undefined;

	constructor(shelf: Shelf) {
		this.#shelf = shelf;
	}

	/** Names an import that begins. */
	begin = (): string => makeId();

	/** Where the pictures of an import are kept. */
	keeper(by: string) {
		const { pictures } = this.#shelf.session;
		return {
			keep: (picture: WholePicture) => pictures.keep(picture, by),
			announce: () => pictures.announce(),
		};
	}

	/** An import is shown, in the place of the one before it. */
	show(by: string): void {
		this.letGo();
		this.#shown = by;
	}

	/** What is shown is wanted. */
	accept(): void {
		this.#shown = undefined;
	}

	/** An import is not wanted: its pictures go, but for what prints have, or another import has brought too. */
	letGo(by = this.#shown): void {
		if (by === this.#shown) this.#shown = undefined;
		if (by !== undefined) void letGoPictures(this.#shelf, by);
	}
}
