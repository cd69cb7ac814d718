/** Whether two plain values (texts, numbers, lists and records of such) hold the same. */
export function isSameValue(a: unknown, b: unknown): boolean {
	if (Object.is(a, b)) return true;
	if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
	if (Array.isArray(a) !== Array.isArray(b)) return false;
	const [left, right] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
	return (
		left.size === right.size && [...left].every(([key, value]) => right.has(key) && isSameValue(value, right.get(key)))
	);
}
