import 'fake-indexeddb/auto';
import { expect, onTestFinished, test } from 'vitest';
import { tickFor } from '../../../src/core/bench/ticks.ts';
import { compareShow, differingSettings } from '../../../src/app/compareShow.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import { importReviewed } from '../../../src/app/importFile.ts';
import { readBackup, writeBackup } from '../../../src/files/backupFile.ts';
import { FileDesk } from '../../../src/pages/fileDesk.svelte.ts';
import { on } from './edits.ts';

async function open(name: string): Promise<Session> {
	const session = await openSession({ databaseName: name });
	onTestFinished(() => session.close());
	on(session).rename('Spring');
	on(session).addRows([{ cells: { 'print id': 'P-1', shape: '3:2', mount: 'small', side: '70' } }], 0, 'Add row');
	return session;
}
const incoming = {
	fileName: 'spring.json',
	source: '“spring.json”',
	label: 'Import “spring.json”',
};

test('what else differs between two shows is said, and the settings and the stock can be taken afterwards', async () => {
	const [session, other] = [await open('compare here'), await open('compare there')];
	const sizes = (width: string) => ({ sizes: [{ name: 'small', width, height: '400' }] });
	on(session).changeSettings({ ...sizes('500'), border: '60' });
	on(other).changeSettings({
		...sizes('510'),
		border: '65',
		boards: [{ name: 'white', width: '1200', height: '800' }],
		walls: [{ name: 'North', length: '4 m' }],
		...{ commission: '40 %', vat: '20 %', priceStep: '5', costInPrice: 'yes' },
	});
	on(other).rename('Spring, hung');
	const cut = { row: 1, copy: 1, part: 'mount', side: 'left' } as const;
	on(other).tickCuts([tickFor(other.show.rows[0]!, other.results[0]!, other.settings, cut)!], true, 'Tick');
	on(other).changeSettings({ unit: 'in' });
	const taken = await compareShow(session, other.show, incoming);
	expect(differingSettings(session, { ...other.show, rows: [] })?.change).toEqual(
		taken.kind === 'reported' && taken.report.settings,
	);
	if (taken.kind !== 'reported') throw new Error(`asked: ${taken.kind}`);
	const { sentences, settings } = taken.report;
	expect(sentences).toEqual([
		'1 row already here, left as it is.',
		expect.stringMatching(
			/^The rows of the file were worked out with other settings: unit in \(here mm\), .*border .* in \(here 60 mm\).*These settings differ in the file: sizes by name, boards, walls, commission, VAT, rounding of prices and cost in the price\.$/,
		),
		'The file calls the show “Spring, hung”; it keeps its name here.',
		'Work done differs in the file: 1 cut ticked off. Yours stays. To have the file’s, open it as a new show.',
	]);
	on(session).changeSettings(settings!);
	expect(session.settings).toEqual(other.settings);
	expect(session.results[0]?.solved).toEqual(other.results[0]?.solved);
	const same = await compareShow(session, other.show, incoming);
	expect(same.kind === 'reported' && same.report.settings).toBeUndefined();
	session.undo();
	expect(session.settings.unit).toBe('mm');
});

test('a show of a backup is compared with the one of this device that it was, by the names of its rows', async () => {
	const shelf = await openShelf({ databaseName: 'compare backup', showId: undefined });
	onTestFinished(() => shelf.close());
	const desk = new FileDesk(shelf);
	const { session } = shelf;
	on(session).rename('Spring');
	on(session).addRows([{ cells: { title: 'Pier', price: '100' } }, { cells: { title: 'Quay' } }], 0, 'Add rows');
	await session.whenSaved();
	const backup = readBackup(writeBackup([{ show: session.show, isArchived: false }]));
	const { show } = 'value' in backup ? backup.value[0]! : { show: session.show };
	on(session).typeCells([{ id: session.show.rows[0]!.id, cells: { title: 'Pier, day' } }], 'Type');
	on(session).removeRows([session.show.rows[1]!.id]);
	const autumn = await shelf.create();
	await shelf.open(autumn!);
	await desk.compare(show, incoming, show.id);
	expect(shelf.session.show).toMatchObject({ id: show.id, name: 'Spring' });
	const { step } = desk;
	if (step?.kind !== 'review') throw new Error('not compared');
	const { review } = step;
	// Nothing was exchanged: it cannot be told that the backup is the older one.
	expect(review.merge.rows).toMatchObject([
		{ kind: 'changed', cells: [{ column: { name: 'title' }, changedBy: 'unknown' }] },
		{ kind: 'added', there: { typed: { title: 'Quay' } } },
	]);
	review.chooseEverything('there');
	await importReviewed(shelf.session, review);
	expect(shelf.session.show.rows).toEqual(show.rows);
	shelf.session.undo();
	expect(shelf.session.show.rows.map(({ typed }) => typed.title)).toEqual(['Pier, day']);
});
