import { asJson } from './asJson.ts';

/** A record that was put aside because it was damaged. */
interface PutAside {
	readonly store: string;
	readonly key: unknown;
	readonly value: unknown;
	readonly problem: string;
	readonly at: number;
}

/** What marks a file of records that were put aside. */
export const putAsideFormat = 'evenhang-damaged';

/** Writes records that were put aside into one file, each as it was: there may be anything in them. */
export function writePutAside(records: readonly PutAside[]): string {
	const written = records.map(({ store, key, value, problem, at }) => ({
		...{ store, problem, putAside: new Date(at).toISOString() },
		key: asJson(key),
		value: asJson(value),
	}));
	return `${JSON.stringify({ format: putAsideFormat, version: 1, records: written }, null, '\t')}\n`;
}
