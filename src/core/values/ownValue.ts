/**
 * What a record holds under a key that comes from outside, such as the name of a column: `constructor` and its like,
 * which every record of the language answers to, are keys like any other.
 * @returns undefined where the record has no such key of its own
 */
export const ownValue = <Value>(record: Readonly<Record<string, Value>> | undefined, key: string): Value | undefined =>
	record !== undefined && Object.hasOwn(record, key) ? record[key] : undefined;
