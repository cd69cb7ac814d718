import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { whatToPrint } from '../../../src/core/order/whatToPrint.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { writePrintList } from '../../../src/files/printListCsv.ts';

test('the print list as CSV: exact lengths, what each paper comes to, and what is not printed, formulas made harmless', () => {
	const { settings } = readSettings({
		mountSize: '700 x 600 mm',
		currency: 'EUR',
		proofs: 1,
		papers: [
			{ name: 'Rag', width: 329, height: 483, margin: 5, price: '42', pack: 25 },
			{ name: 'Roll', width: 432, roll: '15 m', margin: 3 },
		],
	});
	const size = { 'picture width': '300', 'picture height': '200.3' };
	const typed = [
		{ ...size, number: '1', title: '=Ebb', paper: 'Rag', copies: '2' },
		{ ...size, title: 'Slip', paper: 'Roll' },
		{ ...size, title: 'Kelp' },
		size,
	];
	const rows = typed.map((cells, place) => ({ id: `r${place}`, order: place, typed: cells }));
	const results = rows.map((row) => judgeRow(row, settings));
	const text = writePrintList(whatToPrint(rows, results, settings), { rows, results, settings });
	const { data } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
	const filled = data.map((record) => Object.fromEntries(Object.entries(record).filter(([, cell]) => cell !== '')));
	expect(filled).toEqual([
		{
			...{ kind: 'print', paper: 'Rag', print: '1 =Ebb', number: '1', title: "'=Ebb", 'way up': 'landscape' },
			...{ 'picture width (mm)': '300', 'picture height (mm)': '200.3' },
			...{ 'paper width (mm)': '483', 'paper height (mm)': '329' },
			...{ 'margin left (mm)': '91.5', 'margin top (mm)': '64.35', 'margin right (mm)': '91.5' },
			...{ 'margin bottom (mm)': '64.35', copies: '2', proofs: '1', sheets: '3' },
		},
		{
			...{ kind: 'paper', paper: 'Rag', copies: '2', proofs: '1', sheets: '3', 'in stock': '0', packs: '1' },
			...{ cost: '42.00', note: '329 × 483 mm' },
		},
		{
			...{ kind: 'print', paper: 'Roll', print: 'Slip', title: 'Slip', 'way up': 'landscape' },
			...{ 'picture width (mm)': '300', 'picture height (mm)': '200.3' },
			...{ 'paper width (mm)': '306', 'paper height (mm)': '432' },
			...{ 'margin left (mm)': '3', 'margin top (mm)': '115.85', 'margin right (mm)': '3' },
			...{ 'margin bottom (mm)': '115.85', copies: '1', proofs: '1', 'roll (m)': '0.612' },
		},
		{
			...{ kind: 'paper', paper: 'Roll', copies: '1', proofs: '1', 'roll (m)': '0.612', 'in stock': '0.000' },
			...{ packs: '1', note: '432 mm' },
		},
		{ kind: 'not printed', print: 'Kelp', title: 'Kelp', note: 'It has no paper yet.' },
		{ kind: 'not printed', print: 'Row 4', note: 'It has no paper yet.' },
	]);
});
