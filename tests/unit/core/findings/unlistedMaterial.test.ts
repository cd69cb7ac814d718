import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';

const { settings } = readSettings({
	glazing: [{ name: 'Clear', width: 1000, height: 800 }],
	backing: [{ name: 'Brown', width: 1000, height: 800 }],
});
const unread = (typed: Typed) =>
	judgeRow({ id: 'r', order: 1, typed: { shape: '3:2', ...typed } }, settings).findings.filter(
		({ code }) => code === 'not-read',
	);

test.each<Typed>([
	{},
	{ glazing: 'none', backing: 'none' },
	{ glazing: 'glass' },
	{ glazing: 'Acrylic' },
	{ glazing: ' clear', backing: 'BROWN' },
])('%j is in the lists', (typed) => expect(unread(typed)).toEqual([]));

test('a name that is in no list is not read, and the names of the list are offered', () => {
	const [glazing, backing] = unread({ glazing: 'Velvet', backing: 'glass' });
	expect(glazing).toMatchObject({ level: 'stop', cells: ['glazing'] });
	expect(glazing!.message).toContain('“Velvet” is not a glazing. Choose Clear, none, glass or acrylic');
	expect(backing).toMatchObject({ level: 'stop', cells: ['backing'] });
});
