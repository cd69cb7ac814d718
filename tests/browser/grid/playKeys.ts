import { inspect, isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { chooseFile } from '../harness/chooseFile.ts';
import { cellInPage } from '../screens/cellInPage.ts';
import { isAnswering, paste, seenAt } from '../screens/prints.ts';
import { said, selected } from './cells.ts';
import type { KeyLine, Then } from './keyTable.ts';

/** The columns that the table names, and those beside them: to draw all others too took a quarter of the time. */
const shownColumns = gridColumns
	.map(({ key }) => key)
	.filter((key) =>
		/^(number|title|shape|picture|side|top|bottom|mount|steps|surface|board|frame|glazing|signed on)/.test(key),
	)
	.filter((key) => !['picture', 'picture file', 'mounting', 'mount width', 'mount height'].includes(key));
const cell = (page: Page, row: number, key: string) =>
	page.locator(
		cellInPage(
			row,
			shownColumns.findIndex((each) => each === key),
		),
	);

/** The show that the table begins with. */
const show = {
	format: 'evenhang-show',
	version: 3,
	name: 'Keys',
	settings: {
		boards: [
			{ name: 'Chalk', kind: 'sheet', width: 1200, height: 900 },
			{ name: 'Slate', kind: 'sheet', width: 1200, height: 900 },
		],
		frames: [{ name: 'Oak', width: '500 mm', height: '400 mm' }],
		views: {
			inHand: 'Keys',
			list: [{ name: 'Keys', hidden: gridColumns.map(({ key }) => key).filter((key) => !shownColumns.includes(key)) }],
		},
	},
	rows: [1, 2, 3, 4].map((place) => ({
		id: `row-${place}`,
		order: place,
		typed: { title: `Print ${place}`, 'picture width': '300', 'picture height': '200' },
	})),
};

export async function setUp(page: Page): Promise<void> {
	await chooseFile(page, 'Import a file', 'keys.evenhang.json', JSON.stringify(show));
	await page.locator('[role=grid][aria-rowcount="6"]').waitFor();
	await page.getByText('Saved', { exact: true }).waitFor();
	await forgetSteps(page); // what has been done so far cannot be undone then
	await page.reload();
	await page.locator('[role=grid][aria-rowcount="6"]').waitFor();
	await isAnswering(page);
}

/** Takes the steps that can be undone from the device; the page still has them until it is opened again. */
const forgetSteps = (page: Page): Promise<void> =>
	page.evaluate(
		() =>
			new Promise((resolve, reject) => {
				const opening = indexedDB.open('evenhang');
				opening.onerror = () => reject(opening.error!);
				opening.onsuccess = () => {
					const tx = opening.result.transaction('steps', 'readwrite');
					tx.objectStore('steps').clear();
					tx.oncomplete = () => resolve(opening.result.close());
				};
			}),
	);

const placeOf = (place: string) => {
	const [row = '', ...key] = place.split(' ');
	return [Number(row), key.join(' ')] as const;
};

/** Goes to a cell from another, pressed a second time it would be opened: from the one beside it, for which no other print is drawn. */
async function goTo(page: Page, from: string): Promise<void> {
	const [row, key] = placeOf(from);
	const wanted = cell(page, row, key);
	const isActive = await wanted.evaluate((element) => element.contains(document.activeElement));
	if (isActive) await page.keyboard.press(key === shownColumns[0] ? 'ArrowRight' : 'ArrowLeft');
	await wanted.click({ force: true });
}

async function pressAll(page: Page, keys: string): Promise<void> {
	for (const [key] of keys.matchAll(/'[^']*'|\S+/g)) {
		if (key.startsWith("'")) await page.keyboard.type(key.slice(1, -1));
		else if (key.startsWith('paste:')) {
			await page.locator('[role=grid] :focus').waitFor({ state: 'attached' }); // pasted beside the grid, it would be a list that comes in
			await paste(page, key.slice('paste:'.length));
		} else await page.keyboard.press(key);
	}
}

/** Leaves the editor and undoes whatever was done, for the next line. */
async function undoAll(page: Page): Promise<void> {
	await page.keyboard.press('Escape');
	await page.evaluate(async () => {
		const undo = [...document.querySelectorAll<HTMLElement>('.foot button')].find(
			({ textContent }) => textContent === 'Undo',
		)!;
		while (undo.getAttribute('aria-disabled') === 'false') {
			undo.click();
			await new Promise((resolve) => setTimeout(resolve)); // it is drawn again
		}
		document.querySelector<HTMLElement>('[role=group][aria-label=Note] button')?.click();
		await new Promise((resolve) => setTimeout(resolve));
	});
}

const input = (page: Page) => page.locator('[role=grid] input');

/** Looks at what a line of the table names. */
async function look(page: Page, then: Then): Promise<Then> {
	const found: { -readonly [Key in keyof Then]: Then[Key] } = {};
	if (then.at !== undefined)
		found.at = await page.evaluate((keys) => {
			const active = document.activeElement?.closest<HTMLElement>('[data-row]');
			return active ? `${active.dataset['row']} ${keys[Number(active.dataset['column'])]}` : 'none';
		}, shownColumns);
	if (then.editor !== undefined)
		found.editor = (await input(page).count()) === 0 ? 'closed' : await input(page).inputValue();
	if (then.chosen !== undefined)
		found.chosen = await page.evaluate(() => {
			const { activeElement } = document;
			if (!(activeElement instanceof HTMLInputElement)) return 'no editor';
			return activeElement.value.slice(activeElement.selectionStart ?? 0, activeElement.selectionEnd ?? 0);
		});
	if (then.cells !== undefined) found.cells = await cellsOf(page, then.cells);
	if (then.rows !== undefined) found.rows = Number(await page.getByRole('grid').getAttribute('aria-rowcount')) - 2;
	if (then.range !== undefined) found.range = await selected(page, shownColumns);
	if (then.list !== undefined) found.list = await listOf(page);
	if (then.said !== undefined) {
		const heard = await said(page);
		found.said = then.said.test(heard) ? then.said : new RegExp(heard);
	}
	if (then.note !== undefined) {
		const note = (await page.getByRole('group', { name: 'Note' }).allInnerTexts()).join();
		found.note = then.note.test(note) ? then.note : new RegExp(note || 'none');
	}
	if (then.undo !== undefined) {
		await page.keyboard.press('Control+z');
		found.undo = await cellsOf(page, then.undo);
	}
	return found;
}

async function cellsOf(page: Page, cells: NonNullable<Then['cells']>): Promise<Record<string, string>> {
	const found = Object.keys(cells).map(async (place) => [place, await seenAt(cell(page, ...placeOf(place)))] as const);
	return Object.fromEntries(await Promise.all(found));
}

/** What the list offers that the field says it has; the word that it says is active, in brackets. */
const listOf = (page: Page): Promise<string> =>
	page.evaluate(() => {
		const field = document.activeElement;
		if (field?.getAttribute('aria-expanded') !== 'true') return 'none';
		const list = document.getElementById(field.getAttribute('aria-controls') ?? '');
		const active = field.getAttribute('aria-activedescendant');
		const words = [...(list?.querySelectorAll('[role=option]') ?? [])].map((option) => {
			const isActive = option.id === active;
			if ((option.getAttribute('aria-selected') === 'true') !== isActive) return 'two are active';
			return isActive ? `[${option.textContent.trim()}]` : option.textContent.trim();
		});
		return words.join(', ');
	});

/** The lines that did not come true, each with what happened instead. */
export async function wrongLines(page: Page, lines: readonly KeyLine[]): Promise<string[]> {
	const wrong: string[] = [];
	for (const [state, from, keys, then] of lines) {
		await goTo(page, from);
		await pressAll(page, keys);
		const found = await look(page, then);
		if (!isDeepStrictEqual(found, then))
			wrong.push(`${state}: ${from}, ${keys}: ${inspect(found)}, not ${inspect(then)}`);
		await undoAll(page);
	}
	return wrong;
}
