import 'fake-indexeddb/auto';
import { expect, onTestFinished, test, vi } from 'vitest';
import { tickFor } from '../../../src/core/bench/ticks.ts';
import { mm } from '../../../src/core/length/length.ts';
import { giveRows, giveShow, fileName } from '../../../src/app/giveFile.ts';
import { type IncomingList, isList, openPasted } from '../../../src/app/incoming.ts';
import type { MergeReview } from '../../../src/app/mergeReview.svelte.ts';
import { openSession } from '../../../src/app/openSession.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import { previewRows } from '../../../src/app/previewRows.ts';
import {
	importFile,
	type ImportOutcome,
	importReviewed,
	importText,
	loadExample,
} from '../../../src/app/importFile.ts';
import type { FileReport } from '../../../src/core/imports/fileReports.ts';
import { on } from './edits.ts';

async function open(name: string): Promise<Session> {
	const session = await openSession({ databaseName: name });
	onTestFinished(() => session.close());
	return session;
}
/** What was told, where nothing was asked. */
function told(outcome: ImportOutcome): FileReport {
	if (outcome.kind !== 'reported') throw new Error(`asked: ${outcome.kind}`);
	return outcome.report;
}
/** The comparison, where one was asked for. */
function review(outcome: ImportOutcome): MergeReview {
	if (outcome.kind !== 'review') throw new Error(`not compared: ${JSON.stringify(outcome)}`);
	return outcome.review;
}
/** A list that was pasted. */
async function list(text: string): Promise<IncomingList> {
	const incoming = await openPasted(text);
	if (!('value' in incoming) || !isList(incoming.value)) throw new Error('no list');
	return incoming.value;
}
const file = (name: string, ...parts: BlobPart[]) => new File(parts, name);
const titles = (session: Session) => session.show.rows.map(({ typed }) => typed.title);

/** What is handed out while something is done, as the browser would save it. */
async function given(act: () => Promise<unknown>): Promise<File> {
	const files: File[] = [];
	const link = { href: '', download: '', click: () => undefined };
	vi.stubGlobal('document', { createElement: () => link });
	vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => `blob:${files.push(blob as File)}`);
	await act();
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
	expect(link).toMatchObject({ href: 'blob:1', download: files[0]!.name });
	return files[0]!;
}

test('rows of a CSV are added, and what they change is asked first, all as one edit', async () => {
	const session = await open('take rows');
	on(session).addRows([{ cells: { 'print id': 'P-1', title: 'Pier' } }], 0, 'Add row');
	const { show } = session;
	const compared = review(await importFile(session, file('spring.csv', 'print id;title\nP-1;Quay\nP-2;Mole\n')));
	expect(session.show, 'nothing has changed').toBe(show);
	compared.chooseRows(compared.merge.rows, 'there');
	expect(told(await importReviewed(session, compared))).toEqual({
		title: '2 rows read',
		isProblem: false,
		isBrief: true,
		sentences: ['1 row added.', '1 row changed as chosen.'],
		unread: undefined,
		settings: undefined,
	});
	expect(titles(session)).toEqual(['Quay', 'Mole']);
	expect(session.lastStep?.label).toBe('Import “spring.csv”');
	session.undo();
	expect(titles(session)).toEqual(['Pier']);
});

test('rows that are only new come in at once', async () => {
	const session = await open('only new');
	on(session).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row');
	expect(told(await importText(session, 'title\nQuay\n')).sentences).toEqual(['1 row added.']);
	expect(titles(session)).toEqual(['Pier', 'Quay']);
});

test('a price list changes prices, not sizes, and removes no print that it does not list', async () => {
	const session = await open('price list');
	on(session).addRows([{ cells: { 'print id': 'P-1', 'picture width': '456', price: '120' } }], 0, 'Add row');
	on(session).addRows([{ cells: { 'print id': 'P-2', price: '90' } }], 1, 'Add row');
	await given(() => giveRows(session));
	const compared = review(await importText(session, 'print id\tprice\nP-1\t150\n'));
	expect(compared.merge.rows.map(({ kind }) => kind)).toEqual(['changed', 'removed there']);
	await importReviewed(session, compared);
	expect(session.show.rows.map(({ typed }) => typed)).toEqual([
		{ 'print id': 'P-1', 'picture width': '456', price: '150' },
		{ 'print id': 'P-2', price: '90' },
	]);
});

test('an import that is undone is as if it had never been: the same file is asked about again', async () => {
	const session = await open('undone');
	on(session).addRows([{ cells: { 'print id': 'P-1', title: 'Pier' } }], 0, 'Add row');
	await given(() => giveRows(session));
	const text = 'print id\ttitle\nP-1\tQuay\n';
	await importReviewed(session, review(await importText(session, text)));
	expect(titles(session)).toEqual(['Quay']);
	session.undo();
	await session.whenSaved();
	expect((await session.exchanges.all()).map(({ direction }) => direction)).toEqual(['given']);
	await importReviewed(session, review(await importText(session, text)));
	expect(titles(session)).toEqual(['Quay']);
	session.undo();
	session.redo();
	await session.whenSaved();
	expect((await session.exchanges.all()).map(({ direction }) => direction)).toEqual(['taken', 'given']);
	expect(told(await importText(session, text)).sentences).toEqual(['1 row already here, left as it is.']);
});

test('what only here was changed stays, and is not asked about; what both have changed is', async () => {
	const session = await open('both');
	on(session).addRows([{ cells: { 'print id': 'P-1', title: 'Pier', price: '100', note: 'a' } }], 0, 'Add row');
	await given(() => giveRows(session));
	const { id } = session.show.rows[0]!;
	on(session).typeCells([{ id, cells: { price: '120', note: 'b' } }], 'Type');
	const compared = review(await importText(session, 'print id\ttitle\tprice\tnote\nP-1\tPier\t130\ta\n'));
	expect(compared.merge.rows).toMatchObject([
		{
			kind: 'changed',
			cells: [
				{ column: { name: 'price' }, changedBy: 'both' },
				{ column: { name: 'note' }, changedBy: 'here' },
			],
		},
	]);
	compared.chooseEverything('there');
	expect(compared.edit().rows[0]?.after?.typed).toMatchObject({ price: '130', note: 'b' });
	compared.suggest();
	await importReviewed(session, compared);
	expect(session.show.rows[0]?.typed).toMatchObject({ price: '120', note: 'b' });
});

test('a print that was removed here, and rows that are left out, are not said to be here', async () => {
	const session = await open('left out');
	await importText(session, 'print id\ttitle\nP-1\tPier\nP-2\tQuay\n');
	on(session).removeRows([session.show.rows[1]!.id]);
	const compared = review(await importText(session, 'print id\ttitle\nP-1\tPier\nP-2\tQuay\n'));
	expect(compared.merge.rows).toMatchObject([{ kind: 'removed here', isChangedThere: false }]);
	expect(told(await importReviewed(session, compared)).sentences).toEqual([
		'1 row already here, left as it is.',
		'1 row of the file is not here, as chosen.',
	]);
	expect(titles(session)).toEqual(['Pier']);
});

test('a file keeps its lengths where the show gets another unit while it is compared', async () => {
	const session = await open('unit meanwhile');
	on(session).addRows([{ cells: { 'print id': 'P-1', 'picture width': '456' } }], 0, 'Add row');
	const compared = review(await importText(session, 'print id\tpicture width\nP-1\t300\nP-2\t200\n'));
	const before = compared.merge.rows.map(({ id }) => id);
	on(session).changeSettings({ unit: 'in' });
	compared.refresh();
	expect(compared.merge.rows.map(({ id }) => id)).toEqual(before);
	compared.chooseEverything('there');
	await importReviewed(session, compared);
	expect(session.results.map(({ solved }) => solved.pictureWidth)).toEqual([mm(300), mm(200)]);
	const again = await importText(session, 'print id\tpicture width (mm)\nP-1\t300\nP-2\t200\n');
	expect(told(again).sentences).toEqual(['2 rows already here, left as they are.']);
});

test('pasted text is rows, and the same rows again are no edit', async () => {
	const session = await open('take text');
	await importText(session, 'print id\ttitle\nP-1\tPier\n');
	const { show } = session;
	expect(told(await importText(session, 'print id\ttitle\nP-1\tPier\n')).sentences).toEqual([
		'1 row already here, left as it is.',
	]);
	expect(session.show).toBe(show);
	expect(told(await importText(session, 'title')).sentences).toEqual(['The file has column names, but no rows.']);
});

test('columns that may mean more than one thing are asked about, once for a set of headers', async () => {
	const session = await open('columns');
	const kept = new Map<string, object>();
	const memory = {
		matching: (key: string) => Promise.resolve(kept.get(key) as never),
		keepMatching: () => Promise.resolve(),
	};
	const text = 'name,width,height\nPier,456,306\n';
	const asked = await importText(session, text, { memory });
	if (asked.kind !== 'columns') throw new Error(asked.kind);
	expect(asked.columns.columns.map(({ text: header, guesses }) => [header, guesses[0]])).toEqual([
		['name', 'title'],
		['width', 'picture width'],
		['height', 'picture height'],
	]);
	kept.set(asked.columns.key, { name: 'title', width: 'mount width', height: 'mount height' });
	await importText(session, text, { memory });
	expect(session.show.rows[0]?.typed).toEqual({ title: 'Pier', 'mount width': '456', 'mount height': '306' });
});

test('an answer from before is asked for again where it leaves a column in doubt', async () => {
	const session = await open('columns in doubt');
	const memory = { matching: () => Promise.resolve({ name: 'title' } as const), keepMatching: () => Promise.resolve() };
	const asked = await importText(session, 'name,window\nPier,big\n', { memory });
	expect(asked.kind).toBe('columns');
	expect(told(await importText(session, 'Name,window\nPier,45 x 30 cm\n', { memory })).sentences).toEqual([
		'1 row added.',
	]);
});

test('the first rows are shown where the beginning of a file breaks off within a quote', async () => {
	const session = await open('preview');
	const text = `name,width,note\nPier,456,${'"a\nb"\n'.replace('b', 'long\n'.repeat(6000))}`;
	const matching = { name: 'title', width: 'picture width' } as const;
	const { problem, rows } = previewRows(session, await list(text), matching);
	expect([problem, rows.map(({ title }) => title)]).toEqual([undefined, ['Pier']]);
	const broken = previewRows(session, await list('name,width\n"Pier,456\n'), matching);
	expect(broken.problem).toContain('never closed');
});

test.each([
	[104_000_000, 104],
	[50_100_000, 51],
])('a file of %i bytes is told at once, and not read', async (size, said) => {
	const session = await open(`large ${size}`);
	const large = Object.assign(file('film.csv', 'title\n'), { arrayBuffer: () => Promise.reject(new Error('read')) });
	Object.defineProperty(large, 'size', { value: size });
	expect(told(await importFile(session, large)).sentences[0]).toBe(
		`It holds ${said} MB, and a list or a show at most 50: is it the right file?`,
	);
});

test.each([
	{ name: 'photo.csv', parts: [new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10, 0, 0, 0, 13])], says: 'not text' },
	{ name: 'empty.csv', parts: [''], says: 'empty' },
	{ name: 'list.csv', parts: ['Pier;456\nQuay;300\n'], says: 'no header is known' },
	{ name: 'twice.csv', parts: ['title,Title\na,b\n'], says: 'stands twice' },
	{ name: 'newer.json', parts: ['{"format":"evenhang-show","version":99}'], says: 'newer' },
	{ name: 'broken.json', parts: ['{"format":"evenhang-show",'], says: 'breaks off' },
])('$name is told in a sentence, and changes nothing', async ({ name, parts, says }) => {
	const session = await open(`bad ${name}`);
	on(session).addRows([{ cells: { title: 'Pier' } }], 0, 'Add row');
	const { show } = session;
	const { title, isProblem, sentences } = told(await importFile(session, file(name, ...parts)));
	expect([title, isProblem]).toEqual([`“${name}” could not be read`, true]);
	expect(sentences[0]).toContain(says);
	expect(sentences[0]).toMatch(/^[A-Z].*\.$/s);
	expect(session.show).toBe(show);
});

test('columns that are not known are named, and cells that could not be read are counted', async () => {
	const session = await open('unknown');
	on(session).addRows([{ cells: { side: 'wide' } }], 0, 'Add row'); // was there before: not counted
	const taken = told(await importText(session, 'title\thue\tside\ttop\nPier\tA3\tbroad\t70\nQuay\tA4\t70\thigh\n'));
	expect(taken.sentences).toEqual([
		'2 rows added.',
		'2 cells not understood, kept as typed and marked.',
		'Column “hue” is not known; it is left as it is.',
	]);
	expect(taken.unread).toEqual({ id: session.show.rows[1]?.id, column: 'side' });
	const many = Array.from({ length: 9 }, (_, at) => `x${at}`);
	expect(told(await importText(session, `title\t${many.join('\t')}\nMole\n`)).sentences[1]).toBe(
		'Columns “x0”, “x1”, “x2”, “x3”, “x4”, “x5” and 3 more are not known; they are left as they are.',
	);
});

test('the settings that rows were worked out with are said where they differ, and can be taken', async () => {
	const session = await open('settings of rows');
	on(session).changeSettings({ mountSize: '500 x 400 mm', border: '65 mm', bottomWeight: '10 %', reveal: '4 mm' });
	const stated = 'unit=mm; ruler=1 mm; mount=600 x 450 mm; border=70 mm; weight=12 %; overlap=3 mm';
	const taken = told(await importText(session, `shape\tresult side (mm)\tresult settings\n3:2\t72\t${stated}\n`));
	expect(taken.sentences.slice(1)).toEqual([
		'The results of 1 row in the file are not what is worked out here.',
		'The rows of the file were worked out with other settings: mount size 600 × 450 mm (here 500 × 400 mm), ' +
			'border 70 mm (here 65 mm), bottom weight 12 % (here 10 %), reveal none (here 4 mm).',
	]);
	on(session).changeSettings(taken.settings!);
	expect(told(await importText(session, `shape\tresult settings\n3:2\t${stated}\n`)).settings).toBeUndefined();
	expect(session.settings.reveal).toBeUndefined();
	expect(session.results[0]?.solved.side).toBe(mm(72));
});

test('where something of the bench would go wrong, rows wait for a word', async () => {
	const session = await open('rows wait');
	on(session).addRows([{ cells: { 'print id': 'P-1', shape: '3:2' } }], 0, 'Add row');
	const { show, results, settings } = session;
	const cut = { row: 1, copy: 1, part: 'mount', side: 'left' } as const;
	on(session).tickCuts([tickFor(show.rows[0]!, results[0]!, settings, cut)!], true, 'Tick');
	const compared = review(await importText(session, 'print id\tshape\nP-1\t1:1\n'));
	compared.chooseRows(compared.merge.rows, 'there');
	const taken = told(await importReviewed(session, compared));
	expect(session.question).toBeDefined();
	expect(taken.sentences[0]).toContain('Nothing has changed yet');
});

test('a file that the device does not give is told too', async () => {
	const session = await open('unreadable');
	const gone = Object.assign(file('gone.csv', 'title\n'), {
		arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotReadableError')),
	});
	expect(told(await importFile(session, gone)).sentences[0]).toContain('NotReadableError');
});

test('the example takes the place of a show in which nothing was typed, and undo brings that back', async () => {
	const session = await open('example');
	const { show } = session;
	expect(loadExample(session)).toMatchObject({ isProblem: false, sentences: ['30 prints.'] });
	expect(session.show.rows).toHaveLength(30);
	expect(session.settingsProblems).toEqual([]);
	session.undo();
	expect(session.show).toEqual(show);
});

test('a show that is handed out is the same when it is opened elsewhere', async () => {
	const [here, there] = [await open('here'), await open('there')];
	loadExample(here);
	on(here).rename('Spring: a “show”');
	const saved = await given(() => giveShow(here));
	expect(saved.name).toBe('Spring a “show”.evenhang.json');
	const taken = told(await importFile(there, saved));
	expect(taken).toMatchObject({ title: '“Spring: a “show”” opened', sentences: ['30 prints.'] }); // nothing was there
	expect(there.show).toEqual({ ...here.show, id: there.show.id });
	await there.whenSaved();
});

test('rows that are handed out are the same, and worked out the same, when they are taken in again', async () => {
	const [here, there] = [await open('rows here'), await open('rows there')];
	loadExample(here);
	const csv = await given(() => giveRows(here));
	expect(csv.name).toBe('Salt and slate, Kiln Lane Rooms.csv');
	expect(told(await importFile(here, csv)).sentences).toEqual(['30 rows already here, left as they are.']);
	on(there).changeSettings(here.show.settings);
	expect(told(await importFile(there, csv)).sentences).toEqual(['30 rows added.']);
	expect(there.results).toEqual(here.results);
	// Elsewhere, with other settings, the results are compared and the difference is told.
	const other = await open('rows other');
	on(other).changeSettings({ ...here.show.settings, border: '90 mm' });
	expect(told(await importFile(other, csv)).sentences[1]).toMatch(/^The results of \d+ rows in the file are not what/);
});

test.each([
	{ show: 'Spring', file: 'Spring.csv' },
	{ show: ' a/b\\c: "d" ', file: 'a b c d.csv' },
	{ show: '...', file: 'show.csv' },
	{ show: '', file: 'show.csv' },
	{ show: 'x'.repeat(300), file: `${'x'.repeat(100)}.csv` },
])('the show “$show” becomes a file of a name that every system takes', ({ show, file: name }) => {
	expect(fileName(show, 'csv')).toBe(name);
});
