import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import type { Stage } from '../harness/stage.ts';
import { oneStage } from '../screens/oneStage.ts';
import { cell, press, withPrints } from '../screens/prints.ts';
import { said, withNumbered } from './cells.ts';

const { length: count } = gridColumns;

const play = oneStage({
	isPlanned: false,
	isInOnePage: true,
	reducedMotion: 'reduce',
	viewport: { width: 1336, height: 820 },
});

/** What has the focus, as the browser hands it to a screen reader: its role and name, what it holds, what describes it. */
async function heard(page: Page, stage: Stage): Promise<string> {
	const debug = await stage.context.newCDPSession(page);
	const { nodes } = await debug.send('Accessibility.getFullAXTree');
	await debug.detach();
	const focused = nodes.find(
		({ role, properties }) =>
			role?.value !== 'RootWebArea' &&
			properties?.some(({ name, value }) => name === 'focused' && value.value === true),
	);
	if (!focused) return 'nothing';
	const { role, name, value, description } = focused;
	return [role, name, value, description].map((each) => String(each?.value ?? '')).join(' | ');
}

/** Two prints, the second with a width that cannot be read, in the view for sizing. */
async function withTwo(page: Page): Promise<void> {
	await withPrints(page, [
		['Low water', '300', '200'],
		['Salt road', 'abc', '210'],
	]);
	await page.getByRole('radio', { name: 'Sizing' }).press('Space');
	await press(page, 'Escape', 'Control+Home');
	await cell(page, 0, 'number').waitFor();
}

test('the grid is heard with its heads, what was typed and what was not, and what is to be said', () =>
	play(async (page) => {
		await withTwo(page);
		await press(page, 'ArrowRight', 'Shift+ArrowDown');
		expect(await page.getByRole('grid').ariaSnapshot()).toMatchInlineSnapshot(`
			"- grid "Prints":
			  - rowgroup:
			    - row "Print Picture, mm Window, mm Borders, mm Mount Checks":
			      - columnheader "Print"
			      - columnheader "Picture, mm"
			      - columnheader "Window, mm"
			      - columnheader "Borders, mm"
			      - columnheader "Mount"
			      - columnheader "Checks"
			    - row "Number Title Shape Picture width, mm Picture height, mm Window width, mm Window height, mm Side border, mm Top border, mm Bottom border, mm Mount size Checks in words":
			      - columnheader "Number"
			      - columnheader "Title"
			      - columnheader "Shape"
			      - columnheader "Picture width, mm"
			      - columnheader "Picture height, mm"
			      - columnheader "Window width, mm"
			      - columnheader "Window height, mm"
			      - columnheader "Side border, mm"
			      - columnheader "Top border, mm"
			      - columnheader "Bottom border, mm"
			      - columnheader "Mount size"
			      - columnheader "Checks in words"
			  - rowgroup:
			    - row "no number Low water 300 , typed 200 , typed 294 , worked out 194 , worked out 103 , worked out 98 , worked out 108 , worked out 500 × 400 , from the show":
			      - rowheader "no number"
			      - rowheader "Low water" [selected]
			      - gridcell
			      - gridcell "300 , typed"
			      - gridcell "200 , typed"
			      - gridcell "294 , worked out"
			      - gridcell "194 , worked out"
			      - gridcell "103 , worked out"
			      - gridcell "98 , worked out"
			      - gridcell "108 , worked out"
			      - gridcell "500 × 400 , from the show"
			      - gridcell
			    - 'row "no number, can’t cut Salt road abc , typed, can’t cut 210 , typed 370 , worked out 204 , worked out 65 , worked out, check 93 , worked out, check 103 , worked out 500 × 400 , from the show Can’t cut: Picture width: “abc” is not a length. Type a number, with or without a unit, such as 70, 7.5 cm or 2 5/8 in. (and 2 more)"':
			      - rowheader "no number, can’t cut"
			      - rowheader "Salt road" [selected]
			      - gridcell
			      - gridcell "abc , typed, can’t cut" [invalid]
			      - gridcell "210 , typed"
			      - gridcell "370 , worked out"
			      - gridcell "204 , worked out"
			      - gridcell "65 , worked out, check"
			      - gridcell "93 , worked out, check"
			      - gridcell "103 , worked out"
			      - gridcell "500 × 400 , from the show"
			      - 'gridcell "Can’t cut: Picture width: “abc” is not a length. Type a number, with or without a unit, such as 70, 7.5 cm or 2 5/8 in. (and 2 more)"'"
		`);
	}));

test('a cell is heard with how it comes about and what is said of it; the editor says that it is one, and what is wrong', () =>
	play(async (page, stage) => {
		await withTwo(page);
		const all: string[] = [];
		const hear = async (...keys: string[]) => {
			await press(page, ...keys);
			all.push(`${keys.join(' ')}: ${await heard(page, stage)}`);
		};
		await hear('Control+Home');
		await hear('End');
		await hear('Home', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight');
		await hear('ArrowDown', 'ArrowRight', 'ArrowRight');
		await hear('F2');
		await page.keyboard.type('1,000');
		await hear('Enter');
		await hear('ArrowDown');
		await hear('Escape', 'Control+Home', 'ArrowUp');
		expect(all).toMatchInlineSnapshot(`
			[
			  "Control+Home: rowheader | no number |  | ",
			  "End: gridcell |  |  | ",
			  "Home ArrowRight ArrowRight ArrowRight ArrowRight ArrowRight: gridcell | 294 , worked out |  | The picture’s 300 − 2 × 3 overlap = 294 mm.",
			  "ArrowDown ArrowRight ArrowRight: gridcell | 65 , worked out, check |  | 65 mm is the show’s border. Side 65 and top 93 differ by 28 mm, 43 %. You allow 15 %.",
			  "F2: textbox | Side border, row 2 |  | Editing. Enter keeps it, Escape leaves the cell as it was.",
			  "Enter: textbox | Side border, row 2 | 1,000 | “1,000” can be read in more than one way: 1000 or 1.000?",
			  "ArrowDown: button | 1000 |  | ",
			  "Escape Control+Home ArrowUp: columnheader | Number |  | ",
			]
		`);
	}));

test('what a typed cell brings about is said politely', () =>
	play(async (page) => {
		await withTwo(page);
		await cell(page, 0, 'picture width').click();
		await page.keyboard.type('640');
		await press(page, 'F2');
		expect(await page.locator('#said').getAttribute('aria-live')).toBeNull(); // a status is polite
		expect(await said(page)).toMatchInlineSnapshot(
			`"The mount is 764 × 331 mm, not the show’s 500 × 400 mm. Clear picture width and picture height to get back to it."`,
		);
	}));

test('menus, the bar and its panels are heard', () =>
	play(async (page) => {
		await withTwo(page);
		await press(page, 'F7');
		expect(await page.getByRole('menu').ariaSnapshot()).toMatchInlineSnapshot(`
			"- menu "Number":
			  - menuitem "Sort, smallest first"
			  - menuitem "Sort, largest first"
			  - menuitem "Hanging order" [disabled]
			  - menuitem "Select the column"
			  - menuitem "Wider"
			  - menuitem "Narrower"
			  - menuitem "Move left" [disabled]
			  - menuitem "Move right" [disabled]
			  - menuitem "Hide" [disabled]"
		`);
		await press(page, 'Enter');
		await page.getByRole('button', { name: 'Filter' }).press('Enter');
		await page.getByRole('combobox', { name: 'Checks' }).selectOption('stop');
		expect(await page.locator('.bar').ariaSnapshot()).toMatchInlineSnapshot(`
			"- searchbox "Find prints"
			- button "Filter (1)" [expanded]
			- button "Columns"
			- group "Selected cells":
			  - button "Copy"
			  - button "Cut cells"
			  - button "Paste"
			- group "View":
			  - text: View
			  - radio "Every column"
			  - text: Every column
			  - radio "Sizing" [checked]
			  - text: Sizing
			  - radio "Overlap and reveal"
			  - text: Overlap and reveal
			  - radio "Cutting"
			  - text: Cutting
			  - radio "Materials"
			  - text: Materials
			  - radio "Framing"
			  - text: Framing
			  - radio "Hanging"
			  - text: Hanging
			  - radio "Labels"
			  - text: Labels
			  - radio "Prices"
			  - text: Prices
			- paragraph: "1 of 2 prints, sorted by number: can’t be cut yet"
			- button "Show all prints"
			- button "Hanging order"
			- button "Save this order"
			- region "Filter":
			  - heading "Filter" [level=2]
			  - group "Only prints with":
			    - text: Checks
			    - combobox "Checks":
			      - option "Any"
			      - option "Can’t be cut yet" [selected]
			      - option "To check"
			      - option "Notes"
			      - option "Nothing to check"
			      - option "Needs a size"
			      - option "Not understood"
			      - option "Uneven borders"
			    - text: Mount size
			    - combobox "Mount size":
			      - option "Any" [selected]
			      - option "500 × 400 mm"
			    - text: Board
			    - combobox "Board":
			      - option "Any" [selected]
			    - text: Frame
			    - combobox "Frame":
			      - option "Any" [selected]
			    - text: Maker
			    - combobox "Maker":
			      - option "Any" [selected]
			    - text: At the bench
			    - combobox "At the bench":
			      - option "Any" [selected]
			      - option "Not cut yet"
			      - option "Partly cut"
			      - option "Cut"
			  - button "Close""
		`);
		expect(await page.getByRole('columnheader', { name: 'Number', exact: true }).getAttribute('aria-sort')).toBe(
			'ascending',
		);
	}));

test('places in a long list are true, sorted and filtered as well', () =>
	play(async (page) => {
		await withNumbered(page, 300);
		const place = () =>
			page.evaluate(() => {
				const cell = document.activeElement!;
				const [row, grid] = [cell.closest('[role=row]')!, cell.closest('[role=grid]')!];
				const [of, columns] = [grid.getAttribute('aria-rowcount'), grid.getAttribute('aria-colcount')];
				return `row ${row.getAttribute('aria-rowindex')} of ${of}, column ${cell.getAttribute('aria-colindex')} of ${columns}`;
			});
		await press(page, 'Control+End');
		expect(await place()).toBe(`row 302 of 302, column ${count} of ${count}`);
		await press(page, 'Home', 'F7');
		await page.getByRole('menuitem', { name: 'Sort, largest first' }).press('Enter');
		await expect.poll(place).toBe(`row 3 of 302, column 1 of ${count}`);
		await press(page, 'Control+f');
		await page.keyboard.type('29');
		await press(page, 'Enter');
		await expect.poll(place).toBe(`row 3 of 15, column 1 of ${count}`);
	}));
