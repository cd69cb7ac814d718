import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ShowOfFile } from './openShow.ts';

interface Example extends ShowOfFile {
	readonly settings: Readonly<Record<string, unknown>>;
	readonly rows: readonly { readonly typed: Readonly<Record<string, string>> }[];
}

const file = fileURLToPath(new URL('../../../shared/samples/example.evenhang.json', import.meta.url));
const example = JSON.parse(readFileSync(file, 'utf8')) as Example;

/** The numbers of all of its prints. */
export const thirty = example.rows.map(({ typed }) => Number(typed['number']));

/** Prints of the example of every kind that it has: each mount, frame, glazing and mounting, and some that cannot be cut yet. */
export const ofEveryKind = [1, 2, 3, 4, 7, 9, 10, 12, 14, 15, 18, 21, 26, 28, 30];

/**
 * The example with some of its thirty prints, which are drawn, ordered and planned in less time.
 * @param numbers the prints, by their numbers
 * @param settings the settings that count. Default: all of them
 */
export function someOfExample(numbers: readonly number[], settings = Object.keys(example.settings)): Example {
	return {
		...example,
		settings: Object.fromEntries(Object.entries(example.settings).filter(([key]) => settings.includes(key))),
		rows: example.rows.filter(({ typed }) => numbers.includes(Number(typed['number']))),
	};
}
