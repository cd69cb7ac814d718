import 'fake-indexeddb/auto';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { previewRows } from '../../../src/app/previewRows.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { writeBackup } from '../../../src/files/backupFile.ts';
import { writeShowFile } from '../../../src/files/showFile.ts';
import { FileDesk } from '../../../src/pages/fileDesk.svelte.ts';
import { on } from '../app/edits.ts';
import { countDecoded } from '../files/countDecoded.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});

async function open(): Promise<{ desk: FileDesk; shelf: Shelf }> {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => shelf.close());
	return { desk: new FileDesk(shelf), shelf };
}
const show = { id: 'a', name: 'Spring', settings: {}, rows: [{ id: 'p', order: 1, typed: { title: 'Pier' } }] };
const typeSomething = ({ session }: Shelf) => on(session).addRows([{ cells: { title: 'Quay' } }], 0, 'Add row');

test.each<[string, string, (desk: FileDesk, shelf: Shelf) => Promise<void> | void]>([
	['a list that only adds', 'title,side\nPier,70\n', () => undefined],
	[
		'a list whose columns are asked about, looked at and said again',
		'name;width;Breite\nPier;456;30\n',
		async (desk, shelf) => {
			const { step } = desk;
			if (step?.kind !== 'columns') throw new Error('not asked');
			expect(previewRows(shelf.session, step.incoming, { name: 'title' }).rows).toHaveLength(1);
			await desk.answerColumns({ name: 'title', width: 'mount width' });
			await desk.askAgain();
			await desk.answerColumns({ name: 'title', width: 'picture width' });
			expect(shelf.session.show.rows).toHaveLength(2);
		},
	],
	[
		'a show that is compared',
		writeShowFile(show),
		async (desk) => {
			if (desk.step?.kind !== 'show') throw new Error('not asked');
			await desk.compare(desk.step.show, desk.step.incoming);
			expect(desk.report?.title).toBe('1 row read');
		},
	],
	[
		'a backup',
		writeBackup([{ show, isArchived: false }]),
		(desk) => expect(desk.step).toMatchObject({ kind: 'backup', shows: [{ show }] }),
	],
	['a damaged show', '{"format":"evenhang-show"', (desk) => expect(desk.report?.isProblem).toBe(true)],
])('%s is decoded once', async (_, text, next) => {
	const timesDecoded = countDecoded();
	const { desk, shelf } = await open();
	typeSomething(shelf);
	await desk.importFiles([new File([text], 'list')]);
	await next(desk, shelf);
	expect(timesDecoded()).toBe(1);
});

test('a text that is pasted is not decoded', async () => {
	const timesDecoded = countDecoded();
	const { desk, shelf } = await open();
	await desk.paste('name\tside\nPier\t70\n');
	await desk.answerColumns({ name: 'title' });
	expect(shelf.session.show.rows).toHaveLength(1);
	expect(timesDecoded()).toBe(0);
});
