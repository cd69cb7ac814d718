import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { backupStandings } from '../../../src/app/backupStandings.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { readBackup, writeBackup } from '../../../src/files/backupFile.ts';
import { FileDesk } from '../../../src/pages/fileDesk.svelte.ts';
import { on } from '../app/edits.ts';
import { eventually } from '../eventually.ts';

let databaseName = '';
beforeEach(({ task }) => {
	databaseName = task.id;
});
afterEach(() => {
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
});

async function open(): Promise<{ desk: FileDesk; shelf: Shelf }> {
	const shelf = await openShelf({ databaseName, showId: undefined });
	onTestFinished(() => shelf.close());
	return { desk: new FileDesk(shelf), shelf };
}
const csv = (name: string, text: string) => new File([text], name);
const typed = ({ session }: Shelf) => session.show.rows.map((row) => row.typed);

test('what columns hold can be said again: what came in goes out, and comes in as it is said, as one edit', async () => {
	const { desk, shelf } = await open();
	await desk.importFiles([csv('list.csv', 'name;width;Kiste\nPier;456;30\n')]);
	await desk.answerColumns({ name: 'title', width: 'mount width' });
	expect([typed(shelf), desk.canAskAgain]).toEqual([[{ title: 'Pier', 'mount width': '456' }], true]);
	await desk.askAgain();
	expect(desk.step).toMatchObject({ kind: 'columns', said: { name: 'title', width: 'mount width' } });
	await desk.answerColumns({ name: 'title', width: 'picture width', Kiste: 'picture height' });
	const said = [{ title: 'Pier', 'picture width': '456', 'picture height': '30' }];
	expect([typed(shelf), desk.report?.sentences]).toEqual([said, ['1 row added.']]);
	shelf.session.undo();
	expect(typed(shelf)).toEqual([]);
	// And the new answer is the one that is remembered.
	await desk.importFiles([csv('other.csv', 'Name;Width;KISTE\nPier;456;30\n')]);
	expect(typed(shelf)).toEqual(said);
});

test('a report that only says what is done goes as one goes on, and is found again; one that names more stays', async () => {
	const { desk, shelf } = await open();
	await desk.importFiles([csv('list.csv', 'title\nPier\n')]);
	expect([desk.report?.title, desk.past]).toEqual(['1 row read', undefined]);
	desk.goneOn();
	expect([desk.report, desk.past?.title, desk.past?.sentences]).toEqual([undefined, '1 row read', ['1 row added.']]);
	// What is kept unread, what came beside it, what could not be read.
	for (const files of [
		[csv('list.csv', 'title,side\nMole,wide\n')],
		[csv('list.csv', 'title\nQuay\n'), csv('other.csv', 'title\nWeir\n')],
		[csv('twice.csv', 'title,title\na,b\n')],
	]) {
		await desk.importFiles(files);
		const { report } = desk;
		expect(report?.isBrief ?? false).toBe(false);
		desk.goneOn();
		expect([desk.report, desk.past]).toEqual([report, undefined]);
		desk.close();
	}
	expect(typed(shelf).map(({ title }) => title)).toEqual(['Pier', 'Mole', 'Quay']);
});

test('columns are said again without taking back what was typed since', async () => {
	const { desk, shelf } = await open();
	await desk.importFiles([csv('list.csv', 'number;title;Kiste\n1;Pier;30\n')]);
	await desk.askAgain();
	on(shelf.session).typeCells([{ id: shelf.session.show.rows[0]!.id, cells: { note: 'hung' } }], 'Type');
	await desk.answerColumns({ Kiste: 'picture height' });
	expect(typed(shelf)[0]).toMatchObject({ title: 'Pier', note: 'hung' });
	expect(desk.step?.kind, 'compared, since something was typed').toBe('review');
	desk.leave();
	expect(desk.step).toBeUndefined();
});

test('leaving the columns of another file does not go back to the comparison of the one before', async () => {
	const { desk, shelf } = await open();
	const list = csv('list.csv', 'number;title;side;Kiste\n1;Pier;70;30\n');
	await desk.importFiles([list]);
	on(shelf.session).typeCells([{ id: shelf.session.show.rows[0]!.id, cells: { side: '60' } }], 'Type');
	await desk.importFiles([list]);
	const compared = desk.step;
	if (compared?.kind !== 'review') throw new Error(`not compared, but: ${compared?.kind}`);
	await desk.matchColumns(compared.review);
	expect(desk.step?.kind).toBe('columns');
	desk.leaveColumns();
	expect(desk.step, 'back to the comparison').toBe(compared);
	await desk.matchColumns(compared.review);
	await desk.importFiles([csv('other.csv', 'name;width;Kiste\nPier;456;30\n')]);
	expect(desk.step).toMatchObject({ kind: 'columns', incoming: { source: '“other.csv”' } });
	desk.leaveColumns();
	expect(desk.step).toBeUndefined();
});

test('a comparison waits, with what was chosen, where it was left; a question about columns and another show do not', async () => {
	const { desk, shelf } = await open();
	await desk.importFiles([csv('list.csv', 'print id,title,side\na,Pier,70\n')]);
	const other = csv('other.csv', 'print id,title,side\na,Pier,60\n');
	await desk.importFiles([other]);
	const compared = desk.step;
	if (compared?.kind !== 'review') throw new Error(`not compared, but: ${compared?.kind}`);
	compared.review.chooseEverything('here');
	desk.leavePlace('prints', 'boards');
	expect(desk.step).toBeUndefined();
	desk.leavePlace('boards', 'bench');
	expect(desk.step, 'not at another place').toBeUndefined();
	desk.leavePlace('bench', 'prints');
	expect(desk.step).toBe(compared);
	expect(compared.review.choices.size).toBeGreaterThan(0);
	// It is left for good as any question is.
	desk.leave();
	desk.leavePlace('prints', 'boards');
	desk.leavePlace('boards', 'prints');
	expect(desk.step).toBeUndefined();
	// So is a question about columns as its place is left.
	await desk.importFiles([csv('list.csv', 'name;width;Kiste\nPier;456;30\n')]);
	expect(desk.step?.kind).toBe('columns');
	desk.leavePlace('prints', 'boards');
	desk.leavePlace('boards', 'prints');
	expect(desk.step).toBeUndefined();
	// And what would be compared with a show that is not open any more.
	await desk.importFiles([other]);
	expect(desk.step?.kind).toBe('review');
	desk.leavePlace('prints', 'shows');
	await shelf.open((await shelf.create())!);
	desk.leavePlace('shows', 'prints');
	expect(desk.step).toBeUndefined();
});

test('only what has columns in doubt is asked about again', async () => {
	const { desk } = await open();
	for (const [text, can] of [
		['title,side\nPier,70\n', false],
		['title,side,hue\nQuay,70,red\n', true],
		['{"format":"evenhang-show","version":99}', false],
		['hue,shade\n1,2\n', false],
	] as const) {
		await desk.importFiles([csv('list.csv', text)]);
		expect(desk.canAskAgain, text).toBe(can);
	}
});

test.each(['title\nPier\n', 'name\nPier\n'])(
	'of several files one comes in, and it is said that the others wait, a question between or not: %j',
	async (text) => {
		const { desk, shelf } = await open();
		await desk.importFiles([csv('one.csv', text), csv('two.csv', text), csv('three.csv', text)]);
		if (desk.step) await desk.answerColumns({ name: 'title' });
		expect(typed(shelf)).toEqual([{ title: 'Pier' }]);
		expect(desk.report?.sentences).toEqual([
			'1 row added.',
			'The 2 other files were not imported. Import one file at a time.',
		]);
		await desk.importFiles([csv('four.csv', 'title\nQuay\n')]);
		expect(desk.report?.sentences).toEqual(['1 row added.']);
	},
);

test('a file that is left while it is read or worked out leaves nothing behind', async () => {
	const { desk, shelf } = await open();
	const { show } = shelf.session;
	const large = csv(
		'large.csv',
		`number,title,picture width\n${Array.from({ length: 3000 }, (_, at) => `${at},Pier,456\n`).join('')}`,
	);
	const taking = desk.importFiles([large]);
	await eventually(() => expect(desk.progress?.doing).toBe('working out'));
	desk.leave();
	await taking;
	expect([shelf.session.show, desk.progress, desk.report, desk.step]).toEqual([show, undefined, undefined, undefined]);
	expect(shelf.session.lastStep !== undefined).toBe(false);
});

test('a backup that comes back only in part says which shows are back', async () => {
	const { desk, shelf } = await open();
	const row = (title: string) => [{ id: 'a', order: 1, typed: { title } }];
	const shows = ['Spring', 'Autumn', 'Winter'].map((name) => ({
		show: { id: name, name, settings: {}, rows: row(name) },
		isArchived: false,
	}));
	const read = readBackup(writeBackup(shows));
	if (!('value' in read)) throw new Error(read.problem);
	const keep = shelf.keep.bind(shelf);
	vi.spyOn(shelf, 'keep').mockImplementation(async (kept, ...more) => {
		if (kept.some(({ name }) => name !== 'Winter')) return keep(kept, ...more);
		vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
			throw new DOMException('full', 'QuotaExceededError');
		});
		return keep(kept, ...more);
	});
	await desk.restore(await backupStandings(shelf, read.value));
	expect(desk.report).toMatchObject({ title: '2 shows restored', isProblem: true });
	expect(desk.report?.sentences.join(' ')).toMatch(/“Spring”, “Autumn”\. The others were not\. There is no room left/);
	vi.restoreAllMocks();
	await desk.restore(await backupStandings(shelf, read.value));
	expect(desk.report).toMatchObject({ title: '1 show restored', isProblem: false });
	expect((await backupStandings(shelf, read.value)).map(({ standing }) => standing)).toEqual(['same', 'same', 'same']);
});

test('a show that was deleted comes back as itself where it is the same, else beside; twice is no more than once', async () => {
	const { desk, shelf } = await open();
	on(shelf.session).rename('Spring');
	await shelf.session.whenSaved();
	const spring = shelf.session.show;
	const backup = [
		{ show: spring, isArchived: false },
		{ show: { ...spring, id: 'autumn', name: 'Autumn' }, isArchived: false },
	];
	await shelf.keep([{ ...spring, id: 'autumn', name: 'Autumn, changed' }]);
	for (const id of [spring.id, 'autumn']) await shelf.delete(id);
	const shown = () =>
		shelf.shows
			.filter(({ deletedAt }) => deletedAt === undefined)
			.map(({ name }) => name)
			.sort();
	await desk.restore(await backupStandings(shelf, backup));
	expect(shown()).toEqual(['Autumn', 'New show', 'Spring']);
	expect(shelf.shows.find(({ id }) => id === spring.id)?.deletedAt).toBeUndefined();
	await desk.restore((await backupStandings(shelf, backup)).slice(0, 1));
	expect(shown()).toEqual(['Autumn', 'New show', 'Spring']);
});

test('what differs in the show on this device is counted, and its name said', async () => {
	const { shelf } = await open();
	on(shelf.session).rename('Spring');
	on(shelf.session).addRows([{ cells: { title: 'Ebb' } }, { cells: { title: 'Flood' } }], 0, 'Add rows');
	await shelf.session.whenSaved();
	const { show } = shelf.session;
	const [ebb, flood] = show.rows;
	const here = async (rows: typeof show.rows) =>
		(await backupStandings(shelf, [{ show: { ...show, name: 'Salt', rows }, isArchived: false }]))[0]!.here;
	expect(await here(show.rows)).toEqual({ name: 'Spring', prints: 2, differing: 0 });
	expect(await here([ebb!, { ...flood!, typed: { title: 'Slack' } }])).toMatchObject({ prints: 2, differing: 1 });
	expect(await here([ebb!, { ...flood!, id: 'other' }])).toMatchObject({ prints: 2, differing: 2 });
});

test('fifty shows come back as they were', async () => {
	const { desk, shelf } = await open();
	const shows = Array.from({ length: 50 }, (_, at) => ({
		show: { id: `s${at}`, name: `Show ${at}`, settings: {}, rows: [{ id: 'a', order: 1, typed: { title: `${at}` } }] },
		isArchived: at % 2 === 1,
	}));
	await desk.restore(await backupStandings(shelf, shows));
	const standings = await backupStandings(shelf, shows);
	expect(standings.every(({ standing }) => standing === 'same')).toBe(true);
	expect(shelf.shows.filter(({ isArchived }) => isArchived)).toHaveLength(25);
});
