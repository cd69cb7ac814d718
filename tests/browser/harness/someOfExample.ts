import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ShowOfFile } from './openShow.ts';

interface Example extends ShowOfFile {
	readonly settings: Readonly<Record<string, unknown>>;
	readonly rows: readonly { readonly typed: Readonly<Record<string, string>> }[];
}

const file = fileURLToPath(new URL('../../../shared/samples/example.evenhang.json', import.meta.url));
const example = JSON.parse(readFileSync(file, 'utf8')) as Example;

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
