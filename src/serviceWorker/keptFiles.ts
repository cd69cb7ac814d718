import type { BuiltFile } from './builtFiles.ts';
import { fetchBuilt, integrityOf } from './fetchBuilt.ts';
import { pageOfLock } from './protocol.ts';

declare const self: ServiceWorkerGlobalScope;

/** How many files are fetched at a time. */
const atATime = 4;

/** The header of a kept file that says what its bytes must be; older versions' files are known to be sound by it. */
const soundness = 'x-evenhang-integrity';

/** The files of one version of the app, kept on this device. Each version has a cache of its own. */
export class KeptFiles {
	readonly #files: ReadonlyMap<string, BuiltFile>;
	readonly #scope: string;
	/** How the caches of this app's versions begin; another copy of the app, in another folder, has others. */
	readonly #prefix: string;
	/** The name of the cache: another one for every build that differs in a byte. */
	readonly #name: Promise<string>;

	/** @param scope the address of the app's folder */
	constructor(files: readonly BuiltFile[], scope: string) {
		this.#files = new Map(files.map((file) => [new URL(file.url, scope).href, file]));
		this.#scope = scope;
		this.#prefix = `evenhang files ${scope} `;
		const list = new TextEncoder().encode(JSON.stringify(files));
		this.#name = integrityOf(list).then((version) => this.#prefix + version);
	}

	/** Whether the address is that of a file of this version. */
	has(address: string): boolean {
		return this.#files.has(addressOfFile(address, this.#scope));
	}

	/** Whether the address is one of the app's folder. */
	isInside(address: string): boolean {
		return address.startsWith(this.#scope);
	}

	/**
	 * Keeps every file, each only as it was built. What is kept already, by an attempt that broke off or by another
	 * version, is not fetched again.
	 * @returns rejects, naming a file, where one does not come
	 */
	async install(): Promise<void> {
		try {
			await this.#keepAll();
		} catch (cause) {
			// Where there is no room, half a version must not take up what there is.
			if ((cause as Error).name === 'QuotaExceededError') await caches.delete(await this.#name);
			throw cause;
		}
	}

	/**
	 * Looks whether every file is kept as it was built, and fetches those that are not.
	 * @returns whether all of them are there then
	 */
	check(): Promise<boolean> {
		return this.#keepAll().then(
			() => true,
			() => false,
		);
	}

	/** The file of this version at an address that it `has`. Rejects where it is neither kept nor to be had. */
	async file(address: string): Promise<Response> {
		const place = addressOfFile(address, this.#scope);
		const file = this.#files.get(place)!;
		const cache = await this.#open();
		return asKept(
			file,
			(await soundBytes(cache, place, file.integrity)) ?? (await this.#fetchInto(cache, place, file)),
		);
	}

	/** A file of another version, for a page of it that is still open. */
	async fileOfOthers(address: string): Promise<Response | undefined> {
		for (const name of await this.#others()) {
			const response = await (await caches.open(name)).match(address, { ignoreSearch: true });
			if (response && (await isSound(response.clone()))) return response;
		}
		return undefined;
	}

	/**
	 * Lets go of the files of other versions, but for those of which a page is still open.
	 * @param which `older`: only those that came before this one; a newer one may be on its way
	 */
	async letGo(which: 'older' | 'all'): Promise<void> {
		const { held = [] } = await navigator.locks.query();
		const scripts = held.flatMap(({ name = '' }) => pageOfLock(name) ?? []).filter((script) => this.isInside(script));
		const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
		// A page that is only beginning holds no lock yet, and nobody knows of which version it is.
		if (windows.filter(({ url }) => this.isInside(url)).length > scripts.length) return;
		for (const name of await this.#others(which)) {
			const cache = await caches.open(name);
			const inUse = await Promise.all(scripts.map((script) => cache.match(script)));
			if (inUse.every((response) => response === undefined)) await caches.delete(name);
		}
		if (which === 'all') await caches.delete(`workbox-precache-v2-${this.#scope}`); // of the first versions of all
	}

	/** The names of the caches of other versions; they are listed in the order in which they came. */
	async #others(which: 'older' | 'all' = 'all'): Promise<readonly string[]> {
		const names = (await caches.keys()).filter((name) => name.startsWith(this.#prefix));
		const own = await this.#name;
		return which === 'older' ? names.slice(0, Math.max(0, names.indexOf(own))) : names.filter((name) => name !== own);
	}

	async #keepAll(): Promise<void> {
		const cache = await this.#open();
		const waiting = [...this.#files];
		const worker = async () => {
			for (let next = waiting.shift(); next; next = waiting.shift()) await this.#keepFile(cache, ...next);
		};
		try {
			await Promise.all(Array.from({ length: atATime }, worker));
		} finally {
			waiting.length = 0; // the others need not begin anything more
		}
	}

	async #open(): Promise<Cache> {
		return caches.open(await this.#name);
	}

	async #keepFile(cache: Cache, address: string, file: BuiltFile): Promise<void> {
		if (await soundBytes(cache, address, file.integrity)) return;
		for (const name of await this.#others()) {
			const bytes = await soundBytes(await caches.open(name), address, file.integrity);
			if (bytes) return cache.put(address, asKept(file, bytes));
		}
		await this.#fetchInto(cache, address, file);
	}

	async #fetchInto(cache: Cache, address: string, file: BuiltFile): Promise<ArrayBuffer> {
		const bytes = await fetchBuilt(file, address);
		await cache.put(address, asKept(file, bytes));
		return bytes;
	}
}

/** The address of the file that answers to an address: what follows a `?` or `#` says nothing, and the folder is its page. */
function addressOfFile(address: string, scope: string): string {
	const { origin, pathname } = new URL(address);
	const plain = origin + pathname;
	return plain === scope ? new URL('index.html', scope).href : plain;
}

const asKept = ({ type, integrity }: BuiltFile, bytes: ArrayBuffer): Response =>
	new Response(bytes, { headers: { 'content-type': type, [soundness]: integrity } });

/** What is kept at an address, if its bytes are what they must be. */
async function soundBytes(cache: Cache, address: string, wanted: string): Promise<ArrayBuffer | undefined> {
	const bytes = await (await cache.match(address))?.arrayBuffer();
	return bytes && (await integrityOf(bytes)) === wanted ? bytes : undefined;
}

async function isSound(response: Response): Promise<boolean> {
	const wanted = response.headers.get(soundness);
	return wanted !== null && (await integrityOf(await response.arrayBuffer())) === wanted;
}
