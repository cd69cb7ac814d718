import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { openFirstShow, showOf } from '../harness/openShow.ts';

interface Example {
	readonly settings: Readonly<Record<string, unknown>>;
	readonly rows: readonly { readonly typed: Readonly<Record<string, string>> }[];
}

const file = fileURLToPath(new URL('../../../shared/samples/example.evenhang.json', import.meta.url));
const { settings, rows } = JSON.parse(readFileSync(file, 'utf8')) as Example;

const only = <Value>(all: Readonly<Record<string, Value>>, keys: readonly string[]) =>
	Object.fromEntries(Object.entries(all).filter(([key]) => keys.includes(key)));

/** Some prints of the example, those of the usual mount, with what their windows need; without boards, which take long to plan. */
const benchShow = showOf(
	'Salt',
	only(settings, ['unit', 'ruler', 'sizes', 'mountSize', 'border', 'leastBorder', 'bottomWeight', 'overlap']),
	rows
		.filter(({ typed }) => typed['mount'] === undefined)
		.slice(0, 6)
		.map(({ typed }) => only(typed, ['number', 'title', 'maker', 'shape', 'picture width', 'picture height'])),
);

/** Opens the show of the bench in an app that has just been opened for the first time. */
export const openBenchShow = (page: Page): Promise<void> => openFirstShow(page, benchShow);
