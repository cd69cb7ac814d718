import type { Show } from '../core/show/show.ts';
import { putParts } from './partStores.ts';
import { getSound } from './putAside.ts';
import type { ShowRecord } from './schema.ts';
import type { Requests, Writing } from './writing.ts';

/** Puts a whole show in place of what is kept of it. @returns the revision that it makes */
export async function putShow(
	tx: Writing,
	request: Requests,
	show: Show,
	{ seen = 0, ...more }: { readonly seen?: number } & Partial<Omit<ShowRecord, keyof Show | 'revision'>> = {},
): Promise<number> {
	const before = await getSound(tx, request, 'shows', show.id);
	const revision = Math.max(seen, before?.revision ?? 0) + 1;
	await putParts(tx, request, { ...before, ...more, id: show.id, revision }, show);
	return revision;
}
