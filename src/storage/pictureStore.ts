import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Picture } from '../core/pictures/picture.ts';
import { isHash } from '../core/show/rowJson.ts';
import { isRecord } from '../core/values/isRecord.ts';
import { abort } from './abort.ts';
import { alsoWithoutEnd } from './connection.ts';

/** A picture made small. */
export interface KeptImage {
	readonly type: string;
	readonly bytes: ArrayBuffer;
}

/** In which sizes a picture is kept: at most 1024 and 320 pixels a side. */
export type ImageSize = 'preview' | 'small';

/** A picture with all that is kept of it. */
export interface WholePicture extends Picture {
	readonly preview: KeptImage;
	readonly small: KeptImage;
}

/** What is kept of a picture beside its images. */
interface PictureRecord extends Picture {
	/** How many bytes its images hold. */
	readonly size: number;
	/** How many were kept before it, or more: rows that came by CSV have the first of their file's name. */
	readonly place: number;
	/** Since when no row has it, in milliseconds since 1970; absent: a row has it, or may get it back. */
	readonly unusedSince?: number;
	/** The import that alone has brought it; absent where another has brought it too. */
	readonly by?: string;
}

interface PictureSchema extends DBSchema {
	pictures: { key: string; value: PictureRecord };
	preview: { key: string; value: KeptImage };
	small: { key: string; value: KeptImage };
}

/** So long a picture is kept that no row has: undo, in any tab, may bring the row back. In milliseconds. */
export const unusedKept = 24 * 60 * 60 * 1000;

const stores = ['pictures', 'preview', 'small'] as const;

/** What makes each form of the stores into the next, the first of nothing. */
const steps: readonly ((db: IDBPDatabase<PictureSchema>) => void)[] = [
	(db) => {
		for (const name of stores) db.createObjectStore(name);
	},
];

/**
 * The pictures on this device, each once by the hash of its file's bytes. They lie in a database of their own: whatever
 * goes wrong with it, shows open and nothing typed is lost; the files can be dropped again.
 * @param onSuperseded called where a newer version of the app, in another tab, renews the database
 */
export function openPictureStore(databaseName: string, onSuperseded?: () => void) {
	let opened: Promise<IDBPDatabase<PictureSchema>> | undefined;

	function open(): Promise<IDBPDatabase<PictureSchema>> {
		const forget = () => (opened = undefined);
		opened ??= openDB<PictureSchema>(`${databaseName} pictures`, steps.length, {
			upgrade: (db, oldVersion) => {
				for (const step of steps.slice(oldVersion)) step(db);
			},
			blocking(_current, _wanted, event) {
				(event.target as IDBDatabase).close();
				forget();
				onSuperseded?.();
			},
			terminated: forget,
		});
		opened.catch(forget);
		return opened;
	}

	async function writing(work: (tx: ReturnType<typeof begin>) => Promise<void>): Promise<void> {
		const tx = begin(await open());
		try {
			await work(tx);
			await tx.done;
		} catch (cause) {
			abort(tx);
			await tx.done.catch(() => undefined);
			throw tx.error ?? cause;
		}
	}

	const begin = (db: IDBPDatabase<PictureSchema>) =>
		alsoWithoutEnd(db.transaction(stores, 'readwrite', { durability: 'strict' }));

	return {
		/** All pictures, without their images, the one first kept first. Damaged records are passed over; the file, dropped again, takes their place. */
		async list(): Promise<readonly Picture[]> {
			const tx = alsoWithoutEnd((await open()).transaction('pictures'));
			const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
			const sound = values.flatMap((value, at) => {
				const picture = soundPicture(keys[at], value);
				return picture ? [{ picture, place: placeOf(value) ?? 0 }] : [];
			});
			return sound.toSorted((a, b) => a.place - b.place).map(({ picture }) => picture);
		},

		/**
		 * Keeps a picture; where it is here already and sound, only its names are added: a file may say of it what it likes. On
		 * disk before the promise resolves.
		 * @param by names the import that brings it, for `letGo`
		 */
		keep: ({ preview, small, ...picture }: WholePicture, by?: string): Promise<void> =>
			writing(async (tx) => {
				const { hash } = picture;
				const record: unknown = await tx.objectStore('pictures').get(hash);
				const before = soundPicture(hash, record);
				const place = placeOf(record) ?? lastPlace(await tx.objectStore('pictures').getAll()) + 1;
				const names = [...new Set([...(before?.names ?? []), ...picture.names])];
				const here = [await tx.objectStore('preview').get(hash), await tx.objectStore('small').get(hash)];
				const isHere = before !== undefined && here.every(isImage);
				const [large, little] = isHere ? (here as [KeptImage, KeptImage]) : [preview, small];
				const { pixels } = isHere ? before : picture;
				const size = large.bytes.byteLength + little.bytes.byteLength;
				// What was here before is not this import's to take away, nor another's any more.
				const only = before === undefined || bringerOf(record) === by ? by : undefined;
				const kept = { hash, names, pixels, size, place, ...(only !== undefined && { by: only }) };
				const puts: Promise<unknown>[] = [tx.objectStore('pictures').put(kept, hash)];
				if (!isHere) puts.push(tx.objectStore('preview').put(large, hash), tx.objectStore('small').put(little, hash));
				await Promise.all(puts);
			}),

		/** An image of a picture; undefined where there is none, or none that can be shown. */
		async image(hash: string, size: ImageSize): Promise<KeptImage | undefined> {
			const image: unknown = await alsoWithoutEnd((await open()).transaction(size)).store.get(hash);
			return isImage(image) ? image : undefined;
		},

		/**
		 * Notes which pictures no row has any more, and forgets those that none has had for long.
		 * @param used the hashes that rows have, those of deleted shows too
		 * @param keptFor how long unused ones are kept, in milliseconds
		 * @returns how many were forgotten
		 */
		async sweep(used: ReadonlySet<string>, now: number, keptFor = unusedKept): Promise<number> {
			let forgotten = 0;
			await writing(async (tx) => {
				const pictures = tx.objectStore('pictures');
				const [keys, values] = await Promise.all([pictures.getAllKeys(), pictures.getAll()]);
				const requests: Promise<unknown>[] = [];
				for (const [place, key] of keys.entries()) {
					const { unusedSince, ...record } = values[place]!;
					if (used.has(key)) {
						if (unusedSince !== undefined) requests.push(pictures.put(record, key));
					} else if (keptFor <= 0 || (typeof unusedSince === 'number' && now - unusedSince >= keptFor)) {
						forgotten++;
						requests.push(...stores.map((name) => tx.objectStore(name).delete(key)));
					} else if (unusedSince === undefined) requests.push(pictures.put({ ...record, unusedSince: now }, key));
				}
				await Promise.all(requests);
			});
			return forgotten;
		},

		/**
		 * Forgets what one import alone has brought, and no row has.
		 * @param used as for `sweep`
		 * @returns how many were forgotten
		 */
		async letGo(used: ReadonlySet<string>, by: string): Promise<number> {
			let forgotten = 0;
			await writing(async (tx) => {
				const pictures = tx.objectStore('pictures');
				const [keys, values] = await Promise.all([pictures.getAllKeys(), pictures.getAll()]);
				const gone = keys.filter((key, place) => bringerOf(values[place]) === by && !used.has(key));
				forgotten = gone.length;
				await Promise.all(gone.flatMap((key) => stores.map((name) => tx.objectStore(name).delete(key))));
			});
			return forgotten;
		},

		close: () => void opened?.then((db) => db.close()).catch(() => undefined),
	};
}

/** See `openPictureStore`. */
export type PictureStore = ReturnType<typeof openPictureStore>;

/** A record as it may be on a disk that has suffered. */
function soundPicture(key: unknown, value: unknown): Picture | undefined {
	if (!isRecord(value) || !isHash(key) || value['hash'] !== key) return undefined;
	const { names, pixels } = value;
	if (!Array.isArray(names) || !names.every((name) => typeof name === 'string') || !isRecord(pixels)) return undefined;
	const { width, height } = pixels;
	if (!isCount(width) || !isCount(height)) return undefined;
	return { hash: key, names, pixels: { width, height } };
}

const placeOf = (record: unknown): number | undefined =>
	isRecord(record) && Number.isSafeInteger(record['place']) ? (record['place'] as number) : undefined;

const bringerOf = (record: unknown): string | undefined =>
	isRecord(record) && typeof record['by'] === 'string' ? record['by'] : undefined;

const lastPlace = (records: readonly unknown[]): number =>
	records.reduce((last: number, record) => Math.max(last, placeOf(record) ?? 0), 0);

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) > 0;

const imageTypes = ['image/webp', 'image/jpeg', 'image/png'];

/** Whether a value is an image that may be shown: of a kind that we write ourselves. */
const isImage = (value: unknown): value is KeptImage =>
	isRecord(value) && imageTypes.includes(value['type'] as string) && value['bytes'] instanceof ArrayBuffer;
