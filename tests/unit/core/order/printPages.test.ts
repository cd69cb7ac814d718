import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { printPages } from '../../../../src/core/order/printPages.ts';
import { whatToPrint } from '../../../../src/core/order/whatToPrint.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';

test('what there is to say of a picture stands under its line by its name, where nothing is cut off', () => {
	const { settings } = readSettings({});
	const rows = [0, 1].map((order) => ({ id: `r${order}`, order, typed: { shape: '3:2', paper: 'A5' } }));
	const results = rows.map((row) => judgeRow(row, settings));
	const [paper] = whatToPrint(rows, results, settings).papers;
	const [first, last] = paper!.pictures;
	const [finding] = first!.said;
	const pictures = [{ ...first!, said: [finding!, { ...finding!, message: 'Its margin is narrow.' }] }, last!];
	const note = { name: 'Row 3', words: 'It has no paper yet.' };
	const notesOf = ({ place }: { place: number }) => (place === 0 ? ['Trim it.'] : []);
	const pages = printPages([{ ...paper!, pictures }], [note], (place) => `Row ${place + 1}`, notesOf, 'A4');
	const said = pages
		.flat()
		.flatMap(({ items }) => items.map((item) => (item.pictures ? item.pictures.length : item.note)));
	const heights = pages.flat().flatMap(({ items }) => items.flatMap((item) => (item.pictures ? [] : [item.mm])));
	expect(heights.at(-1), 'no higher than its line').toBeLessThan(6);
	expect(said).toEqual([
		2,
		...[finding!.message, 'Its margin is narrow.', 'Trim it.'].map((words) => ({ name: 'Row 1', words })),
		...last!.said.map(({ message }) => ({ name: 'Row 2', words: message })),
		note,
	]);
});
