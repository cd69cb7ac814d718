import { expect, test } from 'vitest';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { giveFrames } from '../../../src/core/frameChoice/giveFrames.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { frameRows } from '../../../src/ui/across/frameRows.ts';

const frame = { name: 'Oak', width: 400, height: 300, depth: 40, moulding: 20, lip: 6 };

/** What stands before and after of a print that names no frame. */
const cellsOf = (typed: Record<string, string>, show: object) => rowsOf(typed, show)[0]!.cells;

function rowsOf(typed: Record<string, string>, show: object) {
	const { settings } = readSettings({ frames: [frame], ...show });
	const rows = [{ id: 'a', order: 1, typed }];
	const results = rows.map((row) => judgeRow(row, settings));
	return frameRows(giveFrames(rows, settings).rows, rows, results, settings);
}

test('a frame that stays is named as what is typed, and the mount’s size is not said again', () => {
	const [now, proposed, changes] = cellsOf({ shape: '3:2' }, { mountSize: '400 x 300 mm' });
	expect(now).toEqual({ text: 'Oak', below: '400 × 300 mm' });
	expect(proposed).toEqual({ text: 'Oak', below: 'Mount stays' });
	expect(changes).toMatchObject({ text: '' });
	expect(rowsOf({ shape: '3:2' }, { mountSize: '400 x 300 mm' })[0]).toMatchObject({
		isChanging: true,
		kept: 'Oak, 400 × 300 mm',
	});
	expect(rowsOf({ shape: '3:2' }, { mountSize: '500 x 400 mm' })[0]).toMatchObject({
		isChanging: true,
		kept: undefined,
	});
	// What is typed into the mount cell changes neither; a portrait has the same frame as a landscape.
	expect(rowsOf({ shape: '2:3', mount: '300 x 400' }, {})[0]).toMatchObject({ kept: 'Oak, 400 × 300 mm' });
});

test('a mount that changes is said before and after', () => {
	const [now, proposed] = cellsOf({ shape: '3:2' }, { mountSize: '500 x 400 mm' });
	expect(now).toEqual({ text: 'No frame', below: '500 × 400 mm' });
	expect(proposed).toEqual({ text: 'Oak', below: '400 × 300 mm' });
});
