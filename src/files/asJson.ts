/** How deep what is written may be nested; below that only its kind is said. */
const deepest = 100;

/** Any value that a browser can store, in a form that JSON has; what JSON lacks is named: `{ "Map": [...] }`. */
export function asJson(value: unknown, around: readonly object[] = []): unknown {
	if (typeof value === 'number') return Number.isFinite(value) ? value : { number: String(value) };
	if (typeof value === 'bigint') return { bigint: String(value) };
	if (value === undefined) return { undefined: true };
	if (typeof value !== 'object' || value === null) return value;
	const kind = Object.prototype.toString.call(value).slice(8, -1);
	if (around.includes(value)) return { again: kind };
	if (around.length >= deepest) return { [kind]: 'nested too deep to be written' };
	const inner = (each: unknown) => asJson(each, [...around, value]);
	if (Array.isArray(value)) return Array.from(value, inner);
	if (value instanceof Date) return { Date: Number.isNaN(value.getTime()) ? null : value.toISOString() };
	if (value instanceof Map) return { Map: [...value].map(inner) };
	if (value instanceof Set) return { Set: [...value].map(inner) };
	if (value instanceof ArrayBuffer) return { ArrayBuffer: [...new Uint8Array(value)] };
	if (ArrayBuffer.isView(value))
		return { [kind]: [...new Uint8Array(value.buffer, value.byteOffset, value.byteLength)] };
	const record: unknown = Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inner(each)]));
	return kind === 'Object' ? record : { [kind]: record };
}
