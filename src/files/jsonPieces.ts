import { isRecord } from '../core/values/isRecord.ts';

/** How many items a list has that is written one by one. */
const long = 50;

/** The text that `JSON.stringify(value, null, '\t')` gives, in pieces that take little time each. */
export function* jsonPieces(value: unknown, indent = ''): Generator<string, void, undefined> {
	const isList = Array.isArray(value);
	if (!holdsLong(value) || !(isList || isRecord(value))) {
		yield JSON.stringify(value ?? null, null, '\t').replaceAll('\n', `\n${indent}`);
		return;
	}
	const inner = `${indent}\t`;
	const items = isList ? value.entries() : Object.entries(value).filter(([, each]) => each !== undefined);
	let isFirst = true;
	for (const [key, item] of items) {
		yield `${isFirst ? (isList ? '[' : '{') : ','}\n${inner}${isList ? '' : `${JSON.stringify(key)}: `}`;
		isFirst = false;
		yield* jsonPieces(item, inner);
	}
	yield `\n${indent}${isList ? ']' : '}'}`;
}

function holdsLong(value: unknown): boolean {
	if (Array.isArray(value)) return value.length > long || value.some(holdsLong);
	return isRecord(value) && Object.values(value).some(holdsLong);
}
