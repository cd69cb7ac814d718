import type { PlainRecord } from './isRecord.ts';

/** Whether two plain values (texts, numbers, lists and records of such) hold the same. */
export function isSameValue(a: unknown, b: unknown): boolean {
	if (Object.is(a, b)) return true;
	if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
	if (Array.isArray(a) !== Array.isArray(b)) return false;
	const [left, right] = [a as PlainRecord, b as PlainRecord]; // a list is a record by its places
	const keys = Object.keys(left);
	return (
		keys.length === Object.keys(right).length &&
		keys.every((key) => Object.hasOwn(right, key) && isSameValue(left[key], right[key]))
	);
}
