import { expect, test } from 'vitest';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { recordLines } from '../../../src/pages/recordLines.ts';

const boards = [
	{ name: 'Chalk', width: '1200', height: '900', thickness: '1.4', colour: 'warm white', price: '86.00', pack: 5 },
	{ name: 'Slate', kind: 'blank', width: '60 cm', height: '45 cm', count: 3, price: '7' },
	{ name: 'Torn', width: 'wide', height: '900', price: '1' },
];
const { settings } = readSettings({ unit: 'mm', currency: 'EUR', boards, ruler: '1 mm' });

test('the line of a board says its name, what it is known by, its size and its price', () => {
	const [chalk, slate, torn] = recordLines('boards', boards, settings);
	expect(chalk).toEqual({
		...{ name: 'Chalk', more: 'warm white, 1.4 mm', size: '1200 × 900 mm', price: '86.00 EUR for 5' },
		swatch: { kind: 'card', size: { width: 1, height: 0.75 }, colour: 'oklch(0.965 0.014 80)' },
	});
	expect(slate).toMatchObject({ more: 'ready cut, 3 in stock', size: '600 × 450 mm', price: '7.00 EUR' });
	expect(slate!.swatch).toEqual({ kind: 'card', size: { width: 0.5, height: 0.375 } });
	expect(torn, 'one that cannot be read says what was typed').toEqual({
		...{ name: 'Torn', more: '', size: 'wide × 900', price: '1' },
	});
});

test.each([
	['frames', { name: 'Oak', width: '500', height: '400', price: '38' }, 'Oak', '500 × 400 mm', '38.00 EUR', 'frame'],
	['frames', { name: 'Ash', stick: '3 m' }, 'Ash', 'made to measure', '', 'frame'],
	['papers', { name: 'Rag', width: '610', roll: '15 m' }, 'Rag', '610 × 15000 mm roll', '', 'paper'],
	['glazing', { name: 'Clear', width: '1500', height: '1200' }, 'Clear', '1500 × 1200 mm', '', 'glass'],
	['offcuts', { board: 'chalk', width: '560', height: '430', count: 2 }, 'chalk', '560 × 430 mm', '', 'card'],
	['supplies', { kind: 'tape', pack: 50, price: '4.20' }, 'tape', '', '4.20 EUR for 50 m', undefined],
] as const)('a line of %s: %o', (key, record, name, size, price, kind) => {
	const [line] = recordLines(key, [record], settings);
	expect([line!.name, line!.size, line!.price, line!.swatch?.kind]).toEqual([name, size, price, kind]);
});

test('an offcut says of how many pieces there are, which a bare number would not', () => {
	const piece = { board: 'chalk', width: '560', height: '430' };
	const more = (count: number) => recordLines('offcuts', [{ ...piece, count }], settings)[0]!.more;
	expect([more(1), more(2)]).toEqual(['1 piece', '2 pieces']);
});

test('an offcut has the colour of its board', () => {
	const [line] = recordLines('offcuts', [{ board: 'CHALK', width: '560', height: '430' }], settings);
	expect(line!.swatch!.colour).toBe('oklch(0.965 0.014 80)');
});

test('the line of a paper says its surface and that its edge is a deckle', () => {
	const paper = { name: 'Rag', width: '600', height: '400', surface: 'matt' };
	const more = (edge: object) => recordLines('papers', [{ ...paper, ...edge }], settings)[0]!.more;
	expect([more({ edge: 'deckle' }), more({ edge: 'straight' }), more({})]).toEqual([
		'matt, deckle edge',
		'matt',
		'matt',
	]);
});
