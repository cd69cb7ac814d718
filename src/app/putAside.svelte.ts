import type { RecordPutAside } from '../storage/schema.ts';
import { openPutAsideStore, type PutAsideStore } from '../storage/putAsideStore.ts';

/** The damaged records that were put aside on this device: reported once, and kept until they are wanted as a file. */
export class PutAside {
	#records = $state.raw<readonly RecordPutAside[]>([]);
	readonly #store: PutAsideStore;

	/** @param databaseName replaced in tests */
	constructor(databaseName = 'evenhang') {
		this.#store = openPutAsideStore(databaseName);
	}

	/** How many there are. */
	get count(): number {
		return this.#records.length;
	}

	/** How many of them the person has not been shown. */
	get unreported(): number {
		return this.#records.filter(({ isTold }) => !isTold).length;
	}

	/** Looks what there is. */
	async refresh(): Promise<void> {
		this.#records = await this.#store.list().catch(() => this.#records);
	}

	/** The person has seen the report of all that there are. */
	async noteReported(): Promise<void> {
		this.#records = this.#records.map((record) => ({ ...record, isTold: true }));
		await this.#store.noteReported().catch(() => undefined); // then it is said once more the next time
	}

	/** All of them. */
	get records(): readonly RecordPutAside[] {
		return this.#records;
	}

	/** Lets go of the database. */
	close(): void {
		this.#store.close();
	}
}
