import { expect, test } from 'vitest';
import { workOut } from '../../../src/core/row/workOut.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { hangingList } from '../../../src/core/walls/hangingList.ts';
import { writeHangingList } from '../../../src/files/hangingCsv.ts';
import { hangPages } from '../../../src/core/order/hangPages.ts';
import { print, rowsOf } from '../core/walls/wallOf.ts';

const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20, weight: 0 }];

function listOf(hanging: object) {
	const walls = [{ name: 'North', length: 4000 }];
	const { settings } = readSettings({ frames, hanging, walls });
	const rows = rowsOf([print('500x400', { frame: 'Plain' }), print('300x200', { frame: 'none' })]);
	const lines = hangingList(
		rows.map((row) => workOut(row, settings)),
		settings,
	);
	return { lines, settings, text: writeHangingList(lines, settings, (place) => `=print ${place + 1}`) };
}

test('each print with what is marked for it, and how far from the mark before', () => {
	// gaps (4000 − 800) / 3 = 1066⅔; without slack the hook is at the rings, 100 under the top
	const { text } = listOf({ rings: '100 mm', slack: 0, nail: '12 mm' });
	expect(text.split('\r\n')).toEqual([
		'wall,order,print,left (mm),centre (mm),mark,mark left (mm),mark height (mm),from last (mm),weight (kg),fixing',
		"North,1,'=print 1,1067,1450,nail,1317,1562,,1.658,cord on one hook but flat: lower the rings or let it rise further",
		"North,2,'=print 2,2633,1450,corner,2633,1550,1316,0.071,no frame: fixed as it suits the print",
		'',
	]);
});

test('two hooks and a rail say what they need', () => {
	expect(listOf({ kind: 'two hooks' }).text).toContain('"two hooks, 440 mm apart"');
	expect(listOf({ kind: 'rail', nail: 2600, rings: '100 mm' }).text).toContain('two cords of 1050 mm from the rail');
});

test('on paper the cautions stand first, then each wall with its drawing and prints', () => {
	const { lines, settings } = listOf({});
	const [page] = hangPages(lines, ['7 Quay'], settings, 'A4');
	expect(page!.map(({ head, items }) => [head, items.map(({ kind }) => kind).join(' ')])).toEqual([
		['Before you hang', 'words words words words'],
		['North', 'drawing line line'],
		['Hangs on no wall', 'words'],
	]);
	expect(hangPages([], [], settings, 'A4')).toEqual([]);
});
