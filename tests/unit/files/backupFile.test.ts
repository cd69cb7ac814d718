import { expect, test } from 'vitest';
import type { Show } from '../../../src/core/show/show.ts';
import { readBackup, writeBackup } from '../../../src/files/backupFile.ts';

const show = (id: string, more: Partial<Show> = {}): Show => ({
	...{ id, name: `Show ${id}`, settings: { unit: 'mm', border: '70' } },
	rows: [
		{ id: 'a', order: 1, typed: { title: 'Pier', side: '7' }, units: { side: 'cm' }, extra: { lab: '=1' } },
		{ id: 'b', order: 2.5, typed: { note: 'two\nlines' } },
	],
	...more,
});
const ticks = [{ row: 'a', copy: 1, part: 'mount', side: 'spoilt', times: 2 }] as const;

test('every show of a backup is what it was, put away or not, under its own id', () => {
	const shows = [
		{ show: show('s1', { ticks }), isArchived: false },
		{ show: show('s2', { rows: [] }), isArchived: true },
	];
	expect(readBackup(writeBackup(shows))).toEqual({ value: shows });
});

test('a show of an older version in a backup is brought to the newest', () => {
	const old = { id: 's1', format: 'evenhang-show', version: 1, name: 'Old', settings: {}, rows: [] };
	const backup = JSON.stringify({ format: 'evenhang-backup', version: 1, shows: [old] });
	expect(readBackup(backup)).toMatchObject({ value: [{ show: { id: 's1', name: 'Old' } }] });
});

const one = (stored: object) => ({ format: 'evenhang-backup', version: 1, shows: [stored] });
test.each([
	[{ format: 'evenhang-show', version: 1 }, 'no backup'],
	[{ format: 'evenhang-backup', shows: [] }, 'its version is not given'],
	[{ format: 'evenhang-backup', version: 0, shows: [] }, 'its version is 0'],
	[{ format: 'evenhang-backup', version: 99, shows: [] }, 'newer than the 1 that this app opens'],
	[{ format: 'evenhang-backup', version: 1 }, 'shows is not a list'],
	[one([]), 'shows[0] is not a record'],
	[one({ format: 'evenhang-show', version: 1 }), 'shows[0].id'],
	[one({ id: 's', format: 'other' }), 'shows[0]: this is no show file'],
	[one({ id: 's', format: 'evenhang-show', version: 999 }), 'newer'],
	[one({ id: 's', format: 'evenhang-show', version: 1, rows: [{}] }), 'rows[0].id is not a text'],
])('%j is told in a sentence', (document, says) => {
	const read = readBackup(JSON.stringify(document));
	expect('problem' in read && read.problem).toContain(says);
});

test('a backup that breaks off, or names two shows alike, is told', () => {
	const text = writeBackup([{ show: show('s1'), isArchived: false }]);
	expect(readBackup(text.slice(0, -20))).toHaveProperty('problem');
	const twice = writeBackup([1, 2].map(() => ({ show: show('s1'), isArchived: false })));
	expect(readBackup(twice)).toEqual({ problem: 'this backup is damaged: shows[1].id is not a name of its own' });
});
