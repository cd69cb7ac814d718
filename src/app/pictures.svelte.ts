import { isFullOfPictures } from '../core/device/picturesProblem.ts';
import {
	countNotHere,
	fileOfRow,
	knownPictures,
	type KnownPictures,
	type Picture,
	pictureOfRow,
	picturesOfRow,
} from '../core/pictures/picture.ts';
import type { Row } from '../core/show/row.ts';
import { changedRange } from '../core/values/changedRange.ts';
import { type ImageSize, openPictureStore, type PictureStore, type WholePicture } from '../storage/pictureStore.ts';
import { PictureAddresses } from './pictureAddresses.ts';
import { storageRoom } from './storageRoom.ts';

/**
 * The pictures on this device, for whoever draws a row. Nothing of them is looked at before a row names a file; what is
 * asked for and not there yet comes by itself.
 */
export class Pictures {
	#known = $state.raw<KnownPictures>(knownPictures([]));
	#isListed = $state(false);
	readonly #addresses: PictureAddresses;
	readonly #store: PictureStore;
	readonly #channelName: string;
	#channel: BroadcastChannel | undefined;
	#listing: Promise<void> | undefined;
	#isClosed = false;
	/** The rows, as they were asked about last, of which none names a file: of what stands there too nothing is asked. */
	#withoutFiles: readonly Row[] = [];

	/** Use `picturesOf`. */
	constructor(databaseName: string) {
		this.#store = openPictureStore(databaseName);
		this.#addresses = new PictureAddresses((key) => {
			const [size, hash] = key.split(' ') as [ImageSize, string];
			return this.#store.image(hash, size);
		});
		this.#channelName = `${databaseName} pictures`;
	}

	/** The picture of a row; undefined where it has none here, or none yet. */
	of(row: Row): Picture | undefined {
		if (fileOfRow(row) === undefined) return undefined;
		void this.whenListed();
		return pictureOfRow(row, this.#known);
	}

	/** The address of a row's picture; undefined where it has none here, or none yet. */
	addressOf(row: Row, size: ImageSize = 'preview'): string | undefined {
		const picture = this.of(row);
		return picture && this.addressOfHash(picture.hash, size);
	}

	/** The address of a picture; undefined where it is not listed, or not read yet. */
	addressOfHash(hash: string, size: ImageSize = 'preview'): string | undefined {
		return this.#known.byHash.has(hash) ? this.#addresses.get(keyOf(hash, size)) : undefined;
	}

	/** Resolves when it is known which pictures there are. */
	whenListed(): Promise<void> {
		return (this.#listing ??= this.#list());
	}

	/** How many pictures rows name that are not on this device; 0 until it is known which there are. */
	countNotHere(rows: readonly Row[]): number {
		const { from, to } = changedRange(this.#withoutFiles, rows);
		if (!rows.slice(from, to).some((row) => fileOfRow(row) !== undefined)) {
			this.#withoutFiles = rows;
			return 0;
		}
		void this.whenListed();
		return this.#isListed ? countNotHere(rows, this.#known) : 0;
	}

	/** All pictures, once they are listed. */
	get known(): KnownPictures {
		return this.#known;
	}

	/**
	 * Keeps a picture; on disk before the promise resolves. Other tabs hear of it with `announce`. Rejects as the browser
	 * does where there is no room, and before that: some is left for what is typed.
	 * @param by names the import that brings it, which may be left: see `letGo`
	 */
	async keep(picture: WholePicture, by?: string): Promise<void> {
		const { usage, quota } = await storageRoom();
		if (isFullOfPictures(usage, quota) && !(await this.#isHere(picture)))
			throw new DOMException('no room for pictures', 'QuotaExceededError');
		await this.#store.keep(picture, by);
		for (const size of ['preview', 'small'] as const) this.#addresses.forget(keyOf(picture.hash, size));
	}

	/** Has what was kept seen, here and in other tabs. */
	async announce(): Promise<void> {
		await (this.#listing = this.#list());
		this.#channel?.postMessage('more');
	}

	/** An image of a picture, to be written to a file. */
	image(hash: string, size: ImageSize): ReturnType<PictureStore['image']> {
		return this.#store.image(hash, size);
	}

	/** Forgets pictures that no row has had for long. @param rows of all shows, the deleted ones and those that undo brings back too */
	async sweep(rows: Iterable<Row>, now: number): Promise<void> {
		await this.whenListed();
		if (this.#known.byHash.size === 0) return;
		if ((await this.#store.sweep(this.#usedBy(rows), now)) > 0) await this.announce();
	}

	/** Forgets pictures that an import alone has brought and no row has. @param rows as for `sweep` */
	async letGo(rows: Iterable<Row>, by: string): Promise<void> {
		if ((await this.#store.letGo(this.#usedBy(rows), by)) > 0) await this.announce();
	}

	#usedBy(rows: Iterable<Row>): ReadonlySet<string> {
		const used = new Set<string>();
		for (const row of rows) {
			for (const { hash } of picturesOfRow(row, this.#known)) used.add(hash);
		}
		return used;
	}

	close(): void {
		this.#isClosed = true;
		this.#store.close();
		this.#channel?.close();
		this.#channel = undefined;
		this.#addresses.close();
	}

	async #isHere({ hash }: Picture): Promise<boolean> {
		return (await this.#store.image(hash, 'preview')) !== undefined;
	}

	async #list(): Promise<void> {
		if (!this.#channel && !this.#isClosed) {
			this.#channel = new BroadcastChannel(this.#channelName);
			this.#channel.onmessage = () => void (this.#listing = this.#list());
		}
		const pictures = await this.#store.list().catch(() => undefined);
		if (!pictures) return;
		this.#addresses.forgetAll();
		this.#known = knownPictures(pictures);
		this.#isListed = true;
	}
}

const keyOf = (hash: string, size: ImageSize): string => `${size} ${hash}`;

const opened = new Map<string, Pictures>();

/** The pictures that shows of a database have: one for all sessions of a page. */
export function picturesOf(databaseName: string): Pictures {
	const pictures = opened.get(databaseName) ?? new Pictures(databaseName);
	opened.set(databaseName, pictures);
	return pictures;
}

/** Lets go of the pictures of a database. */
export function closePicturesOf(databaseName: string): void {
	opened.get(databaseName)?.close();
	opened.delete(databaseName);
}
