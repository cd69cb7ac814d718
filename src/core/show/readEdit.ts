import { finish } from '../values/finish.ts';
import { isRecord } from '../values/isRecord.ts';
import { nestingProblem } from '../values/nesting.ts';
import type { Edit } from './edit.ts';
import { everyPart } from './everyPart.ts';
import type { KeyedItems } from './keyedList.ts';
import type { Part } from './parts.ts';

/** How many items of a list are looked at in a step. */
const atATime = 500;

/** An edit as it was kept, read at once; see `readingEdit`. */
export const readEdit = (kept: unknown): Edit | undefined => finish(readingEdit(kept));

/**
 * An edit as it was kept, by who knows which version of the app, read in steps.
 * @returns undefined where it is none that can be made: it then changes nothing
 */
export function* readingEdit(kept: unknown): Generator<void, Edit | undefined> {
	if (!isRecord(kept) || typeof kept['label'] !== 'string' || !Array.isArray(kept['rows'])) return undefined;
	const { label: _label, exchange, focus, ...diffs } = kept;
	const known = new Map(everyPart);
	for (const [name, diff] of Object.entries(diffs)) {
		const part = known.get(name);
		if (part === undefined || (diff !== undefined && !(yield* readingDiff(part, diff)))) return undefined;
	}
	if (exchange !== undefined && !isExchange(exchange)) return undefined;
	if (focus !== undefined && (!isRecord(focus) || nestingProblem(focus) !== undefined)) return undefined;
	return kept as unknown as Edit;
}

/** Whether every value that a diff names is one of its part, by the way in which that is written to files and read. */
function* readingDiff(part: Part<unknown, unknown>, diff: unknown): Generator<void, boolean> {
	const isOne = (value: unknown): boolean => {
		try {
			return 'value' in part.read(part.write(value));
		} catch {
			return false; // what is damaged may not even be written
		}
	};
	const sides = part.sides(diff);
	if (sides === undefined) return false;
	for (const value of sides) {
		if (value === part.nothing) continue;
		const isLong = part.apart !== undefined && Array.isArray(value) && value.length > atATime;
		if (isLong ? !(yield* readingLong(part.apart, value as object[], isOne)) : !isOne(value)) return false;
		yield;
	}
	return true;
}

/** Whether each stretch of a long list is one of its part, and no item is in it twice, which no stretch shows. */
function* readingLong(
	items: KeyedItems<object>,
	list: readonly object[],
	isOne: (stretch: readonly object[]) => boolean,
): Generator<void, boolean> {
	const keys = new Set<string>();
	for (let from = 0; from < list.length; from += atATime) {
		const stretch = list.slice(from, from + atATime);
		if (!isOne(stretch)) return false;
		for (const item of stretch) keys.add(JSON.stringify(items.keyOf(item)));
		yield;
	}
	return keys.size === list.length;
}

const isExchange = (exchange: unknown): boolean =>
	isRecord(exchange) &&
	Object.entries(exchange).every(([side, id]) => ['before', 'after'].includes(side) && typeof id === 'string');
