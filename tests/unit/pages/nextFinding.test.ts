import { expect, test } from 'vitest';
import type { Finding } from '../../../src/core/findings/finding.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import type { RowResult } from '../../../src/core/findings/rowResult.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { nextFinding } from '../../../src/pages/nextFinding.ts';
import { columnIndexOf } from '../../../src/ui/grid/gridColumns.ts';

const blank = judgeRow({ id: 'a', order: 1, typed: {} }, readSettings({}).settings);
const finding = (...cells: string[]): Finding => ({
	code: 'signed-on-mount',
	level: 'look',
	cells,
	figures: {},
	message: '',
	mends: [],
});
const results = [[finding('side'), finding('pictureWidth')], [], [finding('bottom weight')]].map(
	(findings): RowResult => ({ ...blank, findings }),
);

test.each([
	{ from: [0, 'number'], by: 1, to: { index: 0, key: 'picture width' } },
	{ from: [0, 'picture width'], by: 1, to: { index: 0, key: 'side' } },
	{ from: [0, 'side'], by: 1, to: { index: 2, key: 'bottom weight' } },
	{ from: [2, 'bottom weight'], by: 1, to: { index: 0, key: 'picture width' } },
	{ from: [2, 'bottom weight'], by: -1, to: { index: 0, key: 'side' } },
	{ from: [0, 'picture width'], by: -1, to: { index: 2, key: 'bottom weight' } },
] as const)('from $from by $by', ({ from: [index, key], by, to }) => {
	expect(nextFinding({ results, columnOf: columnIndexOf }, index, key, by)).toEqual(to);
});

test('what is said of a hidden column is found at the words, and where they are hidden too, at the title', () => {
	const hiding = (...hidden: string[]) => ({
		results,
		columnOf: (key: string) => (hidden.includes(key) ? -1 : columnIndexOf(key)),
	});
	expect(nextFinding(hiding('side'), 0, 'picture width', 1)).toEqual({ index: 0, key: 'findings' });
	expect(nextFinding(hiding('side', 'findings'), 0, 'number', 1)).toEqual({ index: 0, key: 'title' });
});

test('nothing said: nowhere to go', () => {
	expect(nextFinding({ results: [], columnOf: columnIndexOf }, 0, 'title', 1)).toBeUndefined();
});
