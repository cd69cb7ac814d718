import type { Edit } from '../core/show/edit.ts';
import { readEdit } from '../core/show/readEdit.ts';
import { isRecord } from '../core/values/isRecord.ts';
import type { Connection } from './connection.ts';
import type { KeptStep, StepKey } from './schema.ts';
import { rangeOfShow, type Requests, write, type Writing } from './writing.ts';

/** How many steps of a show are kept, and how many of those undone. */
export const mostSteps = 100;
/** How many changed rows they may have together: of longer ones fewer are kept, the last one always. */
const mostRows = 40_000;

/** What becomes of the kept steps of a show with an edit; in the transaction of that edit. */
export type StepsChange =
	| {
			/** The steps that are no longer where they were; one that is put again goes on with the revision that it made. */
			readonly remove: readonly StepKey[];
			readonly put?: { readonly key: StepKey; readonly edit: Edit };
			/** Whether something new was done: what was undone before cannot be done again. */
			readonly isNew: boolean;
	  }
	/** There is no room for them. */
	| 'forget';

/** A kept step and where it is. */
export interface StepFound extends KeptStep {
	readonly key: StepKey;
}

const rangeOf = (showId: string, isUndone: 0 | 1) => IDBKeyRange.bound([showId, isUndone], [showId, isUndone, []]);

/** Changes the kept steps of a show. @param revision the one that the edit makes */
export async function changeSteps(
	tx: Writing,
	request: Requests,
	showId: string,
	change: StepsChange,
	revision: number,
): Promise<void> {
	const store = tx.objectStore('steps');
	if (change === 'forget') return request(store.delete(rangeOfShow(showId)));
	const { remove, put, isNew } = change;
	const moved = put && (await Promise.all(remove.map((key) => store.get(key)))).find(isKept);
	for (const key of remove) request(store.delete(key));
	if (isNew) request(store.delete(rangeOf(showId, 1)));
	if (put) request(store.put({ edit: put.edit, revision: moved?.revision ?? revision }, put.key));
	for (const isUndone of [0, 1] as const) {
		let [steps, rows] = [0, 0];
		for (const key of (await store.getAllKeys(rangeOf(showId, isUndone))).reverse()) {
			rows += rowsOf(key);
			if (++steps > mostSteps || (steps > 1 && rows > mostRows)) request(store.delete(key));
		}
	}
}

/** How many rows a step changes, as its key says; what is no key of ours goes first. */
const rowsOf = (key: unknown): number => (isStepKey(key) ? key[4] : Infinity);

const isStepKey = (key: unknown): key is StepKey =>
	Array.isArray(key) &&
	key.length === 5 &&
	(key[1] === 0 || key[1] === 1) &&
	[key[2], key[4]].every(Number.isFinite) &&
	typeof key[3] === 'string';

const isKept = (value: unknown): value is KeptStep => isRecord(value) && Number.isSafeInteger(value['revision']);

/**
 * The kept steps of a show, oldest first, those undone after the others. One that cannot be used is dropped: without it
 * the others still undo what they did.
 */
export async function readSteps(connection: Connection, showId: string): Promise<readonly StepFound[]> {
	const tx = await connection.begin((db) => db.transaction('steps'));
	const range = rangeOfShow(showId);
	const [keys, values] = await Promise.all([tx.store.getAllKeys(range), tx.store.getAll(range)]);
	const damaged: StepKey[] = [];
	const found = keys.flatMap((key, place): StepFound[] => {
		const value: unknown = values[place];
		const edit = isStepKey(key) && isKept(value) ? readEdit(value.edit) : undefined;
		if (edit === undefined) damaged.push(key);
		return edit === undefined ? [] : [{ key, edit, revision: (value as KeptStep).revision }];
	});
	if (damaged.length > 0) {
		const dropped = write(connection, (writing, request) => {
			for (const key of damaged) request(writing.objectStore('steps').delete(key));
			return Promise.resolve();
		});
		await dropped.catch(() => undefined);
	}
	return found;
}
