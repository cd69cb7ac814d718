import 'fake-indexeddb/auto';
import { AsyncLocalStorage } from 'node:async_hooks';
import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, expect, test, vi } from 'vitest';
import { importText } from '../../../src/app/importFile.ts';
import { openSession } from '../../../src/app/openSession.ts';
import { openShelf } from '../../../src/app/openShelf.ts';
import type { Session } from '../../../src/app/session.svelte.ts';
import type { Shelf } from '../../../src/app/shelf.svelte.ts';
import { Update } from '../../../src/app/update.svelte.ts';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import { otherTabsInTheWay } from '../../../src/core/device/storageProblem.ts';
import { difference, rowIdOf } from '../../../src/core/show/edit.ts';
import type { Row } from '../../../src/core/show/row.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { schemaVersion } from '../../../src/storage/schema.ts';
import { openShowStore } from '../../../src/storage/showStore.ts';
import { isSoak, runs } from '../../soak.ts';
import { eventually } from '../eventually.ts';
import { on } from './edits.ts';

const numRuns = runs(10, 3000);

/** Columns that hold any text. */
const columns = ['title', 'maker', 'note', 'wall'] as const satisfies readonly ColumnName[];

interface Step {
	readonly tab: 0 | 1;
	/** What is waited for before the next step: nothing, one turn of the clock, or all that this tab has to write. */
	readonly then: 'at once' | 'a turn' | 'saved';
	/** Which row, column, show or how much room, as far as there are so many. */
	readonly which: number;
	readonly act: 'type' | 'add' | 'remove' | 'undo' | 'redo' | 'import' | 'switch' | 'fill' | 'make room' | 'update';
}

const step: fc.Arbitrary<Step> = fc.record({
	tab: fc.constantFrom(0, 1),
	then: fc.constantFrom('at once', 'at once', 'a turn', 'saved'),
	which: fc.nat(11),
	act: fc.oneof(
		{ weight: 6, arbitrary: fc.constantFrom('type' as const) },
		{ weight: 3, arbitrary: fc.constantFrom('add' as const, 'undo' as const, 'import' as const) },
		{ weight: 2, arbitrary: fc.constantFrom('remove' as const, 'switch' as const, 'fill' as const) },
		{ weight: 2, arbitrary: fc.constantFrom('redo' as const, 'make room' as const, 'update' as const) },
	),
});

/** A text that was typed or imported: no two are the same. */
interface Text {
	readonly showId: string;
	readonly rowId: string;
	readonly column: ColumnName;
	readonly text: string;
	readonly tab: number;
	/** Whether a screen has called it saved. */
	isSaved: boolean;
	/** Whether somebody has typed over it, deleted its row or taken it back. */
	isReplaced: boolean;
}

/** How many more records each tab has room for: what one is refused, the other may still be granted. */
const room = [Infinity, Infinity];
/** The tab that is acting, also in all that follows from it. */
const acting = new AsyncLocalStorage<number>();

function limitRoom(): void {
	for (const name of ['put', 'add'] as const) {
		const put = Reflect.get(IDBObjectStore.prototype, name) as (value: unknown, key?: IDBValidKey) => IDBRequest;
		vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(function (this: IDBObjectStore, value, key) {
			if (room[acting.getStore() ?? 0]!-- <= 0) throw new DOMException('no room', 'QuotaExceededError');
			return put.call(this, value, key) as IDBRequest<IDBValidKey>;
		});
	}
}

afterEach(() => vi.restoreAllMocks());

/** The rows on disk, whatever form the database is in. */
async function rowsOnDisk(databaseName: string): Promise<ReadonlyMap<string, Row>> {
	const opening = indexedDB.open(databaseName);
	const db = await new Promise<IDBDatabase>((resolve) => (opening.onsuccess = () => resolve(opening.result)));
	const rows = db.transaction('rows').objectStore('rows');
	const [keys, values] = [rows.getAllKeys(), rows.getAll()];
	await new Promise((resolve) => (values.onsuccess = resolve));
	db.close();
	return new Map(keys.result.map((key, place) => [(key as readonly string[]).join(','), values.result[place] as Row]));
}

const isIn = (rows: ReadonlyMap<string, Row>, { showId, rowId, column, text }: Text): boolean =>
	rows.get(`${showId},${rowId}`)?.typed[column] === text;

const rowsOf = ({ id, rows }: Show): ReadonlyMap<string, Row> => new Map(rows.map((row) => [`${id},${row.id}`, row]));

/** Two tabs of one browser, and what was typed in them. */
class Play {
	readonly texts: Text[] = [];
	/** Texts of imports that have not come in. */
	readonly left: string[] = [];
	readonly tabs: Shelf[] = [];
	readonly #shows: string[] = [];
	readonly #switching: Promise<unknown>[] = [];
	/** The tabs that are being shown again: nobody types there until they are. */
	readonly #reloading = new Set<number>();
	readonly #running: Promise<unknown>[] = [];
	/** The rows that were deleted, or taken back, in either tab. */
	readonly #removed = new Set<string>();
	/** The tabs that were shown again by a newer version of the app that this one cannot read from. */
	readonly #gone = new Set<number>();
	readonly #databaseName: string;
	#count = 0;

	constructor(databaseName: string) {
		this.#databaseName = databaseName;
	}

	async begin(): Promise<void> {
		for (const tab of [0, 1]) this.tabs[tab] = await this.#open();
		const [one] = this.tabs;
		this.#shows.push(one!.session.show.id, (await one!.create())!);
	}

	#open = (showId?: string): Promise<Shelf> => openShelf({ databaseName: this.#databaseName, showId });

	async take({ tab, then, which, act }: Step): Promise<void> {
		const running = acting.run(tab, () => this.#act(tab, act, which));
		running.catch(() => undefined); // it is waited for at the end, and may have failed before
		this.#running.push(running);
		if (then === 'saved') await this.tabs[tab]!.session.whenSaved().catch(() => undefined);
		else if (then === 'a turn') await new Promise((resolve) => setTimeout(resolve));
		this.#note();
		if (then === 'saved') this.#areKept(await rowsOnDisk(this.#databaseName));
	}

	async #act(tab: number, act: Step['act'], which: number): Promise<void> {
		if (this.#reloading.has(tab)) return;
		const { session } = this.tabs[tab]!;
		const { rows } = session.show;
		const row = rows[which % Math.max(1, rows.length)];
		const column = columns[which % columns.length]!;
		switch (act) {
			case 'type':
				if (row)
					this.#does(tab, () => on(session).typeCells([{ id: row.id, cells: { [column]: this.#text() } }], 'Type'));
				return;
			case 'add':
				return this.#does(tab, () => on(session).addRows([{ cells: { [column]: this.#text() } }], which, 'Add'));
			case 'remove':
				if (row) this.#does(tab, () => on(session).removeRows([row.id]));
				return;
			case 'undo':
				return this.#takesBack(tab);
			case 'redo':
				return this.#does(tab, () => session.redo());
			case 'import':
				return this.#imports(tab, session, which);
			case 'switch':
				this.#switching[tab] = this.tabs[tab]!.open(this.#shows[which % this.#shows.length]!);
				if (await this.#switching[tab]) this.#isLeft(tab, session);
				return;
			case 'fill':
				room[tab] = which;
				return;
			case 'make room':
				room[tab] = Infinity;
				return;
			case 'update':
				return this.#updates(tab);
		}
	}

	#text = () => `t${this.#count++}`;

	/** Does something to the show that is open in a tab, and writes down which texts it brings and which it replaces. */
	#does(tab: number, act: () => unknown): void {
		const { session } = this.tabs[tab]!;
		const before = session.show;
		act();
		this.#write(tab, before, session.show);
	}

	#write(tab: number, before: Show, after: Show): void {
		for (const diff of difference(before, after, '').rows) {
			const rowId = rowIdOf(diff);
			const here = this.texts.filter((old) => old.showId === before.id && old.rowId === rowId);
			if (!diff.after) {
				for (const old of here) old.isReplaced = true;
				this.#removed.add(rowId);
				continue;
			}
			for (const column of columns) {
				const [was, text] = [diff.before?.typed[column], diff.after.typed[column]];
				if (was === text) continue;
				const inCell = here.filter((old) => old.column === column);
				for (const old of inCell) old.isReplaced = true;
				// What comes back with a row, or by Undo, was written down when it was typed.
				if (text === undefined || inCell.some((old) => old.text === text)) continue;
				// Of what two tabs do to one cell or row at once, before either hears of the other, the last to be written counts.
				const isAtOnce = this.#removed.has(rowId) || inCell.some((old) => old.tab !== tab && old.text !== was);
				this.texts.push({ showId: before.id, rowId, column, text, tab, isSaved: false, isReplaced: isAtOnce });
			}
		}
	}

	/** Undo gives back what its own step has changed, and touches nothing else. */
	#takesBack(tab: number): void {
		const { session } = this.tabs[tab]!;
		const own = session.lastStep;
		const before = session.show;
		this.#does(tab, () => session.undo());
		if (!own || session.lastStep === own) return; // it is closing
		const steps = new Map(own.rows.map((diff) => [rowIdOf(diff), diff]));
		for (const { before: now, after: then } of difference(before, session.show, '').rows) {
			const { before: wanted, after: made } = steps.get((now ?? then)!.id) ?? {};
			expect(wanted ?? made, 'a row that its step has not touched').toBeDefined();
			if (!now || !then) {
				expect([now !== undefined, then !== undefined], 'undo adds what was removed, removes what was added').toEqual([
					made !== undefined,
					wanted !== undefined,
				]);
				continue;
			}
			for (const column of columns) {
				const isOwn = wanted?.typed[column] !== made?.typed[column];
				expect(then.typed[column], column).toBe(isOwn ? wanted?.typed[column] : now.typed[column]);
			}
		}
	}

	async #imports(tab: number, session: Session, which: number): Promise<void> {
		const texts = Array.from({ length: 1 + (which % 3) }, this.#text);
		const before = session.show;
		const outcome = await importText(session, `title,note\n${texts.map((text) => `${text},\n`).join('')}`).catch(
			() => undefined,
		);
		const step = outcome?.kind === 'reported' ? outcome.step : undefined;
		if (step)
			this.#write(tab, { ...before, rows: [] }, { ...before, rows: step.rows.flatMap(({ after }) => after ?? []) });
		else this.left.push(...texts);
	}

	/** The newer version of the app is started in one tab: it is asked for, and the page is shown again. */
	async #updates(tab: number): Promise<void> {
		const old = this.tabs[tab]!;
		const due = this.texts.filter((text) => text.tab === tab && text.showId === old.session.show.id);
		let reloading: Promise<void> | undefined;
		const update: Update = new Update(
			() => Promise.resolve(update.wasReplaced()),
			() => old.session.whenSaved(),
			() => {
				// The page would end here, and with it what is not on disk.
				reloading = Promise.all([rowsOnDisk(this.#databaseName), this.#reloads(tab, old)]).then(([rows]) => {
					const lost = due.filter((text) => !text.isReplaced && !isIn(rows, text));
					expect(lost, 'typed before the page was shown again, and not on disk').toEqual([]);
				});
			},
		);
		await update.apply().catch(() => undefined);
		await reloading;
	}

	async #reloads(tab: number, old: Shelf): Promise<void> {
		this.#reloading.add(tab);
		await this.#switching[tab]; // a browser would end that; here it would go on behind the new page
		const { id } = old.session.show;
		const isClosed = await old.close().then(
			() => true,
			() => false,
		);
		if (isClosed) {
			this.#isLeft(tab, old.session);
			await this.#open(id).then(
				(shelf) => (this.tabs[tab] = shelf),
				() => this.#gone.add(tab),
			);
		}
		this.#reloading.delete(tab);
	}

	/** A show has been left: as good as called saved. */
	#isLeft(tab: number, { show, isOpen }: Session): void {
		if (!isOpen) for (const text of this.texts) if (text.tab === tab && text.showId === show.id) text.isSaved = true;
	}

	/** Writes down what the screens call saved. */
	#note(): void {
		for (const [tab, { session }] of this.tabs.entries())
			if (session.saved.state === 'saved')
				for (const text of this.texts) if (text.tab === tab && text.showId === session.show.id) text.isSaved = true;
	}

	/** Makes room, types once more in each tab, and sees that all is the same everywhere. */
	async end(): Promise<void> {
		await Promise.all(this.#running);
		for (const { session } of this.tabs) await session.whenSaved().catch(() => undefined);
		room.fill(Infinity);
		for (const tab of this.tabs.keys()) await this.#act(tab, 'add', tab);
		for (const { session } of this.tabs) await session.whenSaved();
		const store = openShowStore(this.#databaseName);
		for (const { session } of this.tabs) {
			const { show } = await store.read(session.show.id);
			await expect.poll(() => session.show, { interval: 2, timeout: 20_000 }).toEqual(show);
		}
		store.close();
		for (const text of this.texts) text.isSaved = true;
		const rows = await rowsOnDisk(this.#databaseName);
		this.#areKept(rows);
		const kept = new Set([...rows.values()].flatMap(({ typed }) => Object.values(typed)));
		expect(
			this.left.filter((text) => kept.has(text)),
			'not imported, and yet there',
		).toEqual([]);
		await Promise.all(this.tabs.map((shelf) => shelf.close()));
	}

	/** A newer version of the app, in a third tab, brings the database to a newer form while the others write. */
	async endByUpgrade(): Promise<void> {
		const opening = indexedDB.open(this.#databaseName, schemaVersion + 1);
		await new Promise((resolve) => (opening.onsuccess = resolve));
		opening.result.close();
		await Promise.all(this.#running);
		this.#note();
		const there = [...this.tabs.entries()].filter(([tab]) => !this.#gone.has(tab));
		for (const [tab, { session }] of there) {
			await session.whenSaved().catch(() => undefined);
			expect(session.saved).toMatchObject({
				state: 'failed',
				problem: expect.stringMatching(/newer version/) as string,
			});
			await this.#act(tab, 'add', tab);
			await expect(session.whenSaved()).rejects.toThrow('newer version');
			const { id: _, ...show } = session.show;
			expect(readShowFile(writeShowFile(show))).toEqual({ value: show });
		}
		const rows = await rowsOnDisk(this.#databaseName);
		this.#areKept(rows);
		const seen = [rows, ...there.map(([, { session }]) => rowsOf(session.show))];
		const lost = this.texts.filter((text) => !text.isReplaced && !seen.some((each) => isIn(each, text)));
		expect(lost, 'neither on disk nor on a screen').toEqual([]);
		for (const { session } of this.tabs) await session.close().catch(() => undefined);
	}

	#areKept(rows: ReadonlyMap<string, Row>): void {
		const lost = this.texts.filter((text) => text.isSaved && !text.isReplaced && !isIn(rows, text));
		expect(lost, 'called saved, and not on disk').toEqual([]);
	}
}

let played = 0;
const play = fc.record({
	steps: fc.array(step, { maxLength: 24 }),
	isUpgraded: fc.boolean(),
});

test(
	`${numRuns} plays of two tabs that type, undo, delete, import, switch, fill up, update and are upgraded at random`,
	async () => {
		limitRoom();
		await fc.assert(
			fc.asyncProperty(play, async ({ steps, isUpgraded }) => {
				const name = `several tabs ${played++}`;
				room.fill(Infinity);
				const both = new Play(name);
				await both.begin();
				for (const each of steps) await both.take(each);
				await (isUpgraded ? both.endByUpgrade() : both.end());
				indexedDB.deleteDatabase(name);
			}),
			{ numRuns },
		);
	},
	isSoak ? 900_000 : 60_000,
);

test('a tab with an older version of the app in the way of an upgrade is waited for, said, and loses nothing', async () => {
	const databaseName = 'an older tab in the way';
	const older = await openDB(databaseName, 1, {
		upgrade(db) {
			db.createObjectStore('shows', { keyPath: 'id' });
			for (const store of ['rows', 'ticks']) db.createObjectStore(store);
		},
	});
	const type = (id: string, title: string) => older.put('rows', { id, order: 1, typed: { title } }, ['show', id]);
	await older.put('shows', { id: 'show', name: 'Low tide', settings: {}, revision: 7 });
	await type('a', 'Pier');
	const said: string[] = [];
	const opening = openSession({ databaseName, onWaiting: (sentence) => said.push(sentence) });
	await eventually(() => expect(said).toEqual([otherTabsInTheWay]));
	await type('b', 'Quay');
	older.close();
	const session = await opening;
	expect(session.show.rows.map(({ typed }) => typed.title)).toEqual(['Pier', 'Quay']);
	on(session).typeCells([{ id: 'a', cells: { title: 'Mole' } }], 'Type');
	await session.whenSaved();
	expect(said).toHaveLength(1);
	await session.close();
});
