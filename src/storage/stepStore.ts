import type { Edit } from '../core/show/edit.ts';
import { readingEdit } from '../core/show/readEdit.ts';
import { finish } from '../core/values/finish.ts';
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

/** How many rows the steps may have that are read at once: the page does nothing else while they are handed over. */
const rowsAtOnce = 500;

/** The first and the last key of the steps that are read at once; a long one is read by itself. */
function stretchesOf(keys: readonly StepKey[]): readonly (readonly [first: StepKey, last: StepKey])[] {
	const stretches: [StepKey, StepKey][] = [];
	let rows = Infinity;
	for (const key of keys) {
		rows += rowsOf(key);
		const open = stretches.at(-1);
		if (open && rows <= rowsAtOnce) open[1] = key;
		else {
			stretches.push([key, key]);
			rows = rowsOf(key);
		}
	}
	return stretches;
}

const isStepKey = (key: unknown): key is StepKey =>
	Array.isArray(key) &&
	key.length === 5 &&
	(key[1] === 0 || key[1] === 1) &&
	[key[2], key[4]].every(Number.isFinite) &&
	typeof key[3] === 'string';

const isKept = (value: unknown): value is KeptStep => isRecord(value) && Number.isSafeInteger(value['revision']);

/** Does work that may be long in steps; see `src/app/inSlices.ts`. */
export type InSteps = <Result>(steps: Generator<void, Result>) => Promise<Result>;

/**
 * The kept steps of a show, oldest first, those undone after the others. One that cannot be used is dropped: without it
 * the others still undo what they did.
 */
export async function readSteps(
	connection: Connection,
	showId: string,
	inSteps: InSteps = (steps) => Promise.resolve(finish(steps)),
): Promise<readonly StepFound[]> {
	const tx = await connection.begin((db) => db.transaction('steps'));
	const keys = await tx.store.getAllKeys(rangeOfShow(showId));
	const values: unknown[] = [];
	for (const [first, last] of stretchesOf(keys))
		values.push(...(await tx.store.getAll(IDBKeyRange.bound(first, last))));
	const damaged: StepKey[] = [];
	const found: StepFound[] = [];
	await inSteps(
		(function* () {
			for (const [place, key] of keys.entries()) {
				const value = values[place];
				const edit = isStepKey(key) && isKept(value) ? yield* readingEdit(value.edit) : undefined;
				if (edit === undefined) damaged.push(key);
				else found.push({ key, edit, revision: (value as KeptStep).revision });
			}
		})(),
	);
	if (damaged.length > 0) {
		const dropped = write(connection, (writing, request) => {
			for (const key of damaged) request(writing.objectStore('steps').delete(key));
			return Promise.resolve();
		});
		await dropped.catch(() => undefined);
	}
	return found;
}
