import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.svelte.ts';
import { readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { plannedSheet, showOf } from '../core/sheets/sheetsOf.ts';
import { on } from './edits.ts';
import { openInOwnDatabase } from './openInOwnDatabase.ts';

const open = openInOwnDatabase();

/** What the device holds, as a tab opened now would see it. */
const kept = async (session: Session) => {
	await session.whenSaved();
	return (await open()).show.cutSheets ?? [];
};

test('a sheet marked as cut is there after a reload and in the show file; undo takes it back, redo brings it', async () => {
	const session = await open();
	on(session).replaceShow(showOf(4), 'Open');
	const sheet = plannedSheet(session.show);
	on(session).markCut([sheet], 'Mark a sheet as cut');
	expect(session.show.cutSheets).toHaveLength(1);
	expect(await kept(session)).toEqual(session.show.cutSheets);
	const read = readShowFile(writeShowFile(session.show));
	const asCut = sheet.blanks.map((blank) => ({ ...blank, row: 0 }));
	expect(read).toMatchObject({ value: { cutSheets: [{ id: sheet.id, cuts: sheet.cuts, blanks: asCut }] } });
	session.undo();
	expect(await kept(session)).toEqual([]);
	session.redo();
	expect(await kept(session)).toEqual(session.show.cutSheets);
	on(session).spoilSheet(session.show.cutSheets![0]!, 'Mark a sheet as spoilt');
	expect(await kept(session)).toMatchObject([{ isSpoilt: true }]);
	on(session).handBack(session.show.cutSheets!, 'Hand a sheet back');
	expect(await kept(session)).toEqual([]);
});

test('a change that leaves a cut blank over asks first; left, nothing is changed; made, it is one step of undo', async () => {
	const session = await open();
	on(session).replaceShow(showOf(4), 'Open');
	on(session).markCut([plannedSheet(session.show)], 'Mark a sheet as cut');
	const before = session.show;
	const [first] = before.rows;
	const type = (cells: Record<string, string>) => on(session).typeCells([{ id: first!.id, cells }], 'Type mount size');
	type({ title: 'Ebb' });
	expect(session.question, 'what leaves the blank as it is').toBeUndefined();
	session.undo();
	type({ mount: '500 x 400 mm' });
	expect(session.question).toMatchObject({ label: 'Type mount size', wronged: [], leftOver: [{ index: 0 }] });
	expect(session.show.rows).toEqual(before.rows);
	session.answer('leave');
	expect([session.show.rows, session.question]).toEqual([before.rows, undefined]);
	type({ mount: '500 x 400 mm' });
	session.answer('keep');
	expect(session.show.rows[0]?.typed.mount).toBe('500 x 400 mm');
	expect(session.show.cutSheets).toEqual(before.cutSheets);
	session.undo();
	expect(session.show.rows).toEqual(before.rows);
});
