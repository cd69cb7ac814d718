import { expect, test } from 'vitest';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { oneStage } from '../screens/oneStage.ts';
import {
	activeCell,
	at,
	cell,
	paste,
	press,
	seen,
	seenIn,
	startTyping,
	stepsFollowed,
	withPrints,
} from '../screens/prints.ts';
import { copied, said, selected, withNumbered } from './cells.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true });

const rowCount = (page: Parameters<typeof said>[0]) =>
	page.getByRole('grid').evaluate((grid) => Number(grid.getAttribute('aria-rowcount')) - 2);

test('cells as spreadsheets put them on the clipboard: line breaks and tabs in quotes, marks doubled, CRLF, a last line end', () =>
	play(async (page) => {
		await startTyping(page);
		await press(page, 'Home');
		await paste(
			page,
			'1\t"Two\nlines"\t3:2\r\n2\t"Before\tafter"\t\t45,6 cm\t306\r\n3\t"Say ""so"""\t\t16½"\t11"\r\n4\tPlain\t\t"18"" "\t12 in\r\n',
		);
		expect(await rowCount(page)).toBe(4);
		expect(
			await cell(page, 0, 'title')
				.locator('span')
				.first()
				.evaluate((each) => each.textContent),
		).toBe('Two\nlines');
		expect(
			await cell(page, 1, 'title')
				.locator('span')
				.first()
				.evaluate((each) => each.textContent),
		).toBe('Before\tafter');
		expect(await seen(page, 2, 'title')).toBe('Say "so" typed');
		expect(await seenIn(page, 1, 'picture width', 'picture height')).toEqual(['456 typed', '306 typed']);
		expect(await seenIn(page, 2, 'picture width', 'picture height')).toEqual(['419.1 typed', '279.4 typed']);
		expect(await seenIn(page, 3, 'picture width', 'picture height')).toEqual(['457.2 typed', '304.8 typed']);
		expect(await selected(page), 'what was pasted is selected').toBe('0 number to 3 picture height');
		expect(await said(page)).toMatch(/^Paste: 15 cells typed, 3 prints added$/);

		await cell(page, 0, 'title').click();
		await cell(page, 3, 'title').click({ modifiers: ['Shift'] });
		expect((await copied(page))['text/plain']).toBe('"Two\nlines"\n"Before\tafter"\n"Say ""so"""\nPlain\n');
		await cell(page, 0, 'title').click();
		await press(page, 'F2');
		expect(await page.getByRole('textbox', { name: 'Title, row 1' }).inputValue()).toBe('Two↵lines');
		await press(page, 'Enter');
		expect((await copied(page))['text/plain'], 'nothing was typed').toBe(
			'Before\tafter'.replace(/^.*$/, '"Before\tafter"'),
		);
		await press(page, 'ArrowUp', 'F2', 'End', '!', 'Enter', 'ArrowUp');
		expect((await copied(page))['text/plain'], 'its line end stays').toBe('"Two\nlines!"');
	}));

test('decimal commas are read; a comma before three figures is not guessed, and stays as typed, marked', () =>
	play(async (page) => {
		await withPrints(page, [['Low water', '', '']]);
		await cell(page, 0, 'picture width').click();
		await paste(page, '300,5\t200,25\n1,000\t200\n');
		expect(await seenIn(page, 0, 'picture width', 'picture height')).toEqual(['300.5 typed', '200.3 typed']);
		expect(await seen(page, 1, 'picture width')).toBe('1,000 typed');
		expect(await cell(page, 1, 'picture width').getAttribute('aria-invalid')).toBe('true');
		expect(await said(page)).toBe('Paste: 4 cells typed, 1 print added, 1 cell not understood, kept as pasted');
	}));

test('one cell, one column and one text over a whole range', () =>
	play(async (page) => {
		await withNumbered(page, 4);
		await cell(page, 1, 'side').click();
		await paste(page, '70\n');
		expect(await seenIn(page, 1, 'side')).toEqual(['70 typed']);
		expect(await rowCount(page), 'a line end alone is no row').toBe(4);
		await cell(page, 0, 'side').click();
		await paste(page, '71\r\n');
		expect(await seen(page, 1, 'side'), 'nor does it clear the next one').toBe('70 typed');
		await cell(page, 0, 'maker').click();
		await paste(page, 'Ada\nBo\n\nDan');
		expect(await Promise.all([0, 1, 2, 3].map((row) => seen(page, row, 'maker')))).toEqual([
			'Ada typed',
			'Bo typed',
			'',
			'Dan typed',
		]);
		await press(page, 'Control+Space');
		await paste(page, 'Eve');
		expect(await Promise.all([0, 1, 2, 3].map((row) => seen(page, row, 'maker')))).toEqual(Array(4).fill('Eve typed'));
		await press(page, 'Control+z');
		expect(await seen(page, 2, 'maker'), 'one step takes it all back').toBe('');
		await cell(page, 0, 'maker').click();
		await paste(page, '\nCy');
		expect([await seen(page, 0, 'maker'), await seen(page, 1, 'maker')], 'a blank clears').toEqual(['', 'Cy typed']);
	}));

test('across the frozen columns, past the last row and past the last column; what is only worked out is counted', () =>
	play(async (page) => {
		await withNumbered(page, 2);
		await press(page, 'ArrowDown');
		await paste(page, '8\tEight\t3:2\n9\tNine\t4:3\n10\tTen\t1:1\n');
		expect(await rowCount(page)).toBe(4);
		expect(await seenIn(page, 3, 'number', 'title', 'shape')).toEqual(['10 typed', 'Ten typed', '1:1 typed']);
		await cell(page, 0, 'mount height').click();
		await paste(page, '400\t1, 2\tfine');
		expect(await said(page)).toMatch(/1 cell typed, 2 cells skipped, as they are always worked out$/);
		await press(page, 'End');
		await paste(page, 'note\tno column');
		expect(await said(page)).toMatch(/1 cell left out, past the last column/);
		expect(await seen(page, 0, 'note')).toBe('note typed');
		await page.getByRole('group', { name: 'The paste' }).getByRole('button', { name: 'Close' }).click();
		expect(await page.getByRole('group', { name: 'The paste' }).count()).toBe(0);
		expect(await activeCell(page), 'and one goes on in the grid').toBe(at(0, 'note'));
	}));

test('a paste types over worked-out cells too; one tap leaves them alone, and one undo takes all of it back', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
		]);
		const before = await seenIn(page, 0, 'window width', 'window height', 'side');
		await cell(page, 0, 'picture height').click();
		await paste(page, '220\t280\t214\n230');
		expect(await seenIn(page, 0, 'picture height', 'window width', 'window height')).toEqual([
			'220 typed',
			'280 typed',
			'214 typed',
		]);
		const note = page.getByRole('group', { name: 'The paste' });
		expect(await note.innerText()).toContain('2 of them had been worked out');
		await note.getByRole('button', { name: 'Don’t paste over worked-out cells' }).click();
		expect(await seenIn(page, 0, 'picture height', 'window width', 'window height')).toEqual([
			'220 typed',
			'294 worked-out',
			'214 worked-out',
		]);
		expect(await seen(page, 1, 'picture height')).toBe('230 typed');
		expect(await said(page)).toMatch(/2 worked-out cells left alone$/);
		expect(await activeCell(page)).toBe(at(0, 'picture height'));
		expect(await note.count()).toBe(0);
		await press(page, 'Control+z');
		expect(await seenIn(page, 0, 'window width', 'window height', 'side')).toEqual(before);
		expect(await seen(page, 1, 'picture height')).toBe('210 typed');
		expect(await selected(page)).toBe('0 picture height to 0 picture height');

		await paste(page, '220\t280');
		await press(page, 'F9');
		expect(await seenIn(page, 0, 'picture height', 'window width')).toEqual(['220 typed', '294 worked-out']);
	}));

test('the grid’s own cells stay what they are, over the real clipboard: only those typed are pasted as typed', () =>
	play(async (page) => {
		await withPrints(page, [
			['Low water', '300', '200'],
			['Salt road', '310', '210'],
		]);
		await cell(page, 1, 'window width').click();
		await page.keyboard.type('290');
		await press(page, 'Enter');
		await cell(page, 0, 'picture width').click();
		await cell(page, 0, 'window height').click({ modifiers: ['Shift'] });
		await press(page, 'Control+c');
		expect(await said(page)).toBe('Copied: 4 cells');
		await cell(page, 1, 'picture width').click();
		await press(page, 'Control+v');
		await expect
			.poll(() => seenIn(page, 1, 'picture width', 'picture height', 'window width', 'window height'))
			.toEqual(['300 typed', '200 typed', '294 worked-out', '194 worked-out']);
		await press(page, 'Control+x');
		await expect.poll(() => seen(page, 1, 'picture width')).not.toContain('typed');
		await press(page, 'Control+z');
		expect(await seen(page, 1, 'picture width')).toBe('300 typed');
	}));

test('rows copied in full and pasted back as text change no size', () =>
	play(async (page) => {
		await startTyping(page);
		await press(page, 'Home');
		await paste(page, '1\tLow water\t3:2\n2\tSalt road\t\t16½ in\t11 in\n3\tKiln door\t1:1\n');
		const keys = gridColumns.filter(({ solved }) => solved).map(({ key }) => key);
		const figures = async () =>
			(await Promise.all([0, 1, 2].map((row) => seenIn(page, row, ...keys)))).map((row) =>
				row.map((text) => text.split(' ')[0]),
			);
		const before = await figures();
		await stepsFollowed(page); // they are copied too
		await press(page, 'Control+a');
		const text = (await copied(page))['text/plain']!;
		expect(text.split('\n')[0]).toContain('376.5');
		expect(
			text
				.replace(/\n$/, '')
				.split('\n')
				.map((line) => line.split('\t').length),
		).toEqual(Array(3).fill(gridColumns.length));
		await paste(page, text);
		expect(await figures()).toEqual(before);
		expect((await seenIn(page, 0, ...keys)).every((each) => each.endsWith(' typed'))).toBe(true);
		expect(await page.locator('[aria-invalid=true]').count()).toBe(0);
		// What is said of them may be graver: a size that is typed could be another.
		const withoutSaid = (lines: string) =>
			lines.split('\n').map((line) => line.split('\t').filter((_, column) => gridColumns[column]?.key !== 'findings'));
		await stepsFollowed(page);
		expect(withoutSaid((await copied(page))['text/plain']!), 'and copied again it is the same').toEqual(
			withoutSaid(text),
		);
	}));

test('five hundred rows pasted are five hundred rows, and what could not be read is there, marked', () =>
	play(async (page) => {
		await startTyping(page);
		await press(page, 'Home');
		const line = (index: number) =>
			`${index + 1}\tPrint ${index + 1}\t\t${index % 50 === 7 ? 'about 30' : 300 + (index % 97)}\t${200 + (index % 61)}`;
		await paste(page, `${Array.from({ length: 500 }, (_, index) => line(index)).join('\r\n')}\r\n`);
		expect(await rowCount(page)).toBe(500);
		expect(await said(page)).toBe('Paste: 2000 cells typed, 499 prints added, 10 cells not understood, kept as pasted');
		await press(page, 'Control+End', 'Home');
		expect(await seenIn(page, 499, 'number', 'title', 'picture width')).toEqual([
			'500 typed',
			'Print 500 typed',
			'314 typed',
		]);
		await press(page, 'Control+Home');
		expect(await seen(page, 7, 'picture width')).toBe('about 30 typed');
		expect(await cell(page, 7, 'picture width').getAttribute('aria-invalid')).toBe('true');
		await press(page, 'Control+z');
		expect(await rowCount(page)).toBe(1);
		await press(page, 'Control+y');
		expect(await rowCount(page)).toBe(500);
		await page.getByText('Saved', { exact: true }).waitFor();
	}));
