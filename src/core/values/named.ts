import { isSameWord } from './words.ts';

/** A name as names are told apart: whatever its capitals, and the spaces round it. */
export const nameKey = (name: string): string => name.trim().toLowerCase();

/** The first of a list that has a name; undefined where none has it, or none is asked for. */
export function named<Entry extends { readonly name: string }>(
	name: string | undefined,
	list: readonly Entry[],
): Entry | undefined {
	const wanted = nameKey(name ?? '');
	return wanted === '' ? undefined : list.find((entry) => nameKey(entry.name) === wanted);
}

/** The same where hyphens may be spaces: the one that is spelt so goes before one that is only alike. */
export const namedOrAlike = <Entry extends { readonly name: string }>(
	name: string,
	list: readonly Entry[],
): Entry | undefined => named(name, list) ?? list.find((entry) => isSameWord(entry.name, name));
