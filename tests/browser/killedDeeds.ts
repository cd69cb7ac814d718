import type { Page } from 'playwright-core';
import { storedVersion } from '../../src/core/show/upgrade.ts';
import { backupFormat, backupVersion } from '../../src/files/backupFile.ts';
import { showFormat } from '../../src/files/showFile.ts';
import { chooseFile } from './harness/chooseFile.ts';
import { cell, paste, press } from './screens/prints.ts';
import { goByAddress } from './harness/goByAddress.ts';

/** The number of the deed of a round during which the browser is killed. */
export const lastDeed = 99;

/** The note that a deed types or imports. */
export const noteOf = (round: number, at: number): string => `round ${round}, note ${at}`;

/** The print that is ticked off, or the tick of which is taken off, as the browser is killed. */
export const lastTicked = 'Kiln door';

/** What goes to disk all together or not at all. */
export interface Whole {
	/** What the rows have in them that belong to it. */
	readonly text: string;
	/** How many they are. */
	readonly count: number;
	/** The show, or the file that counts as compared, that is there with them, and only then. */
	readonly name?: string;
}

/** What is done in a round, over and over until the browser is killed. */
export interface Deed {
	readonly name: string;
	/** How many records it sends to the database, about. */
	readonly puts: number;
	/** Does it, up to the last press of a button or a key. */
	readonly act: (page: Page, round: number, at: number) => Promise<void>;
	/** Waits until it is done, and leaves its screens. */
	readonly settle?: (page: Page) => Promise<void>;
	/** What of it must never be on disk by half. */
	readonly wholes?: (round: number, at: number) => readonly Whole[];
}

const places = { prints: 'Prints', shows: 'Shows' } as const;

const goTo = async (page: Page, place: keyof typeof places): Promise<void> => {
	await goByAddress(page, place);
	if (place === 'prints') await page.getByRole('gridcell').first().waitFor();
};

/** What follows an import: it is reported, and the report closed. */
const closeReport = (said: RegExp) => async (page: Page) => {
	await page.getByText(said).first().waitFor();
	await page.getByRole('button', { name: 'Close', exact: true }).first().click();
};

/** How many prints a file adds that is compared with the show. */
const added = 20;

/** The prints that such a file has with another note than the show. */
const changed = ['Low water', 'Kiln door'];

const addedTitle = (round: number, at: number, place: number) => `From the other ${round}.${at}.${place}`;

/** A list of some prints: two with other notes, and new ones. */
function listOf(round: number, at: number): string {
	const titles = [...changed, ...Array.from({ length: added }, (_, place) => addedTitle(round, at, place))];
	return ['title,note', ...titles.map((title) => `${title},"${noteOf(round, at)}"`)].join('\n');
}

/** A row as it is kept, or in a file. */
interface KeptRow {
	readonly id: string;
	readonly typed?: Readonly<Record<string, string>>;
}

/** The rows of the show that is open: that which was opened last. */
const rowsOfOpen = (page: Page): Promise<readonly KeptRow[]> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['shows', 'rows']);
		const shows = tx.objectStore('shows').getAll();
		const [keys, rows] = [tx.objectStore('rows').getAllKeys(), tx.objectStore('rows').getAll()];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		const found = shows.result as { id: string; openedAt?: number }[];
		const [open] = found.sort((one, other) => (other.openedAt ?? 0) - (one.openedAt ?? 0));
		const own = rows.result.filter((_, place) => (keys.result[place] as string[])[0] === open!.id);
		return (own as (KeptRow & { order: number })[]).sort((one, other) => one.order - other.order);
	});

/** The file of the whole show that another has changed in the same places. */
async function showOf(page: Page, round: number, at: number): Promise<string> {
	const note = noteOf(round, at);
	const rows = (await rowsOfOpen(page)).map((row) =>
		changed.includes(row.typed?.['title'] ?? '') ? { ...row, typed: { ...row.typed, note } } : row,
	);
	const order = rows.length * 1000;
	const more = Array.from({ length: added }, (_, place) => {
		const title = addedTitle(round, at, place);
		return { id: title, order: order + place, typed: { title, note } };
	});
	return JSON.stringify({
		...{ format: showFormat, version: storedVersion, name: 'Of the other' },
		...{ settings: { unit: 'mm' }, rows: [...rows, ...more] },
	});
}

/** How many prints each show of a backup has. */
const backedUp = 30;

const restoredTitle = (round: number, at: number, show: string, place?: number) =>
	`Restored ${round}.${at} ${show}${place === undefined ? '' : `.${place}`}`;

/** A backup of two shows that are not on the device. */
function backupOf(round: number, at: number): string {
	const shows = ['one', 'two'].map((show) => ({
		...{ id: restoredTitle(round, at, show), name: restoredTitle(round, at, show) },
		...{ format: showFormat, version: storedVersion, settings: { unit: 'mm' } },
		rows: Array.from({ length: backedUp }, (_, place) => {
			const title = restoredTitle(round, at, show, place);
			return { id: title, order: place + 1, typed: { title } };
		}),
	}));
	return JSON.stringify({ format: backupFormat, version: backupVersion, shows });
}

/** Imports all that a file has which is not as it is here. */
async function importAll(page: Page): Promise<void> {
	await page.getByRole('heading', { name: /^What differs/ }).waitFor();
	await page.getByRole('button', { name: 'Use all of theirs' }).click();
	await page.getByRole('button', { name: 'Import as chosen' }).first().click();
}

const oneMerge =
	(end: string) =>
	(round: number, at: number): readonly Whole[] => [
		{ text: noteOf(round, at), count: changed.length + added, name: noteOf(round, at) + end },
	];

/** A list is compared with the show, and all of it imported. */
export const comparing: Deed = {
	name: 'a list compared',
	puts: 27,
	async act(page, round, at) {
		await goTo(page, 'prints');
		await page.getByRole('button', { name: 'Files' }).first().click();
		await chooseFile(page, 'Import rows', `${noteOf(round, at)}.csv`, listOf(round, at));
		await importAll(page);
	},
	settle: closeReport(/rows read$/),
	wholes: oneMerge('.csv'),
};

/** What is typed, imported, compared, restored or ticked off; `npm test` compares a list. */
export const deeds: readonly Deed[] = [
	{
		name: 'typing',
		puts: 3,
		async act(page, round, at) {
			await page.getByRole('gridcell').last().click(); // whichever rows are on the screen
			await press(page, 'Control+Home');
			await cell(page, 0, 'note').click();
			await page.keyboard.type(noteOf(round, at));
			await press(page, 'Tab');
		},
	},
	comparing,
	{
		name: 'ticking',
		puts: 2,
		async act(page, _round, at) {
			await goByAddress(page, 'cut');
			const next = page.getByRole('button', { name: 'Next', exact: true });
			await next.waitFor();
			const prints = page.locator('[aria-pressed]');
			if ((await prints.count()) === 0) await next.click(); // the test cut comes first
			await prints.filter({ hasText: at === lastDeed ? lastTicked : 'Low water' }).click();
		},
	},
	{
		name: 'a backup restored',
		puts: 62,
		async act(page, round, at) {
			await goTo(page, 'shows');
			await chooseFile(page, 'Open a file or a backup', 'backup.json', backupOf(round, at));
			await page.getByRole('button', { name: 'Restore the 2 missing shows' }).click();
		},
		settle: closeReport(/shows restored/),
		wholes: (round, at) =>
			['one', 'two'].map((show) => {
				const name = restoredTitle(round, at, show);
				return { text: `"${name}.`, count: backedUp, name };
			}),
	},
	{
		name: 'pasting',
		puts: 54,
		async act(page, round, at) {
			await page.getByRole('button', { name: 'Add print' }).click();
			await press(page, 'Home');
			await paste(page, Array.from({ length: 50 }, (_, row) => `${round}.${at}.${row}\tPrint`).join('\n'));
		},
		wholes: (round, at) => [{ text: `"${round}.${at}.`, count: 50 }],
	},
	{
		name: 'a show compared',
		puts: 27,
		async act(page, round, at) {
			await goTo(page, 'prints');
			await page.getByRole('button', { name: 'Files' }).first().click();
			await chooseFile(page, 'Open a show', `${noteOf(round, at)}.json`, await showOf(page, round, at));
			await page.getByRole('button', { name: /^Compare its prints/ }).click();
			await importAll(page);
		},
		settle: closeReport(/rows read$/),
		wholes: oneMerge('.json'),
	},
];
