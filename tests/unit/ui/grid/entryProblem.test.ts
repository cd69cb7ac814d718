import { expect, test } from 'vitest';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../../src/core/show/columns.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { entryProblem } from '../../../../src/ui/grid/entryProblem.ts';

const row: Row = {
	id: 'a',
	order: 0,
	typed: {
		'picture width': '300',
		'picture height': '200',
		'mount width': '400',
		'mount height': '300',
		frame: 'Plain',
	},
};
const { settings } = readSettings({ frames: [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }] });

test.each<readonly [ColumnName, string, RegExp | undefined]>([
	['picture width', '310', undefined],
	['picture width', 'about 310', /./],
	['shape', '3 to', /./],
	['title', 'no such word at all', undefined],
	['mounting', 'nailed', /Choose/],
	['drop', '12', undefined],
	['drop', '900', /more than the frame is high/],
])('%s: %s', (column, text, problem) => {
	const found = entryProblem(row, column, text, settings);
	if (problem) expect(found?.message).toMatch(problem);
	else expect(found).toBeUndefined();
	// What is refused is what would stand in the cell unread, and nothing else.
	const typed = { ...row, typed: { ...row.typed, [column]: text } };
	expect(found?.message).toBe(workOut(typed, settings).read.unread.find((cell) => cell.column === column)?.problem);
});
