// Lists that are far too large, read and worked out: each soon, which is two seconds on a machine with nothing else to do.
import { bench, describe } from 'vitest';
import { withEditionClashes } from '../../src/core/findings/editionClashes.ts';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import { readRows } from '../../src/files/csv.ts';
import { equalEditions, equalIds, largeCells, manyCells, manyColumns } from '../unit/hostile/largeLists.ts';

const { settings } = readSettings({});
const fewTimes = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

function readAndWorkOut(list: string): void {
	const read = readRows(list, settings, (place, attempt) => `made ${place}.${attempt}`);
	if ('problem' in read) throw new Error(read.problem);
	withEditionClashes(
		read.rows,
		read.rows.map((row) => judgeRow(row, settings)),
		settings,
	);
}

describe('a list that is far too large', () => {
	const lists: readonly (readonly [what: string, list: string])[] = [
		['100,000 columns', manyColumns()],
		['100,000 cells without a header', manyCells()],
		['5,000 equal print ids', equalIds()],
		['5,000 equal editions', equalEditions()],
	];
	for (const [what, list] of lists) bench(what, () => readAndWorkOut(list), fewTimes);
});

describe('a cell of 5 MB in a column of lengths', () => {
	for (const [what, cell] of largeCells(5_000_000))
		bench(what, () => readAndWorkOut(`number,picture width,side\n1,${cell},70\n`), fewTimes);
});
