import { expect, test } from 'vitest';
import { type HandOver, handOverPages, handOvers, totalWords } from '../../../../src/core/lists/handOver.ts';
import { nameOfPrint } from '../../../../src/core/show/nameOfPrint.ts';
import { showOf } from './showOf.ts';

const frames = [{ name: 'Oak', rebateWidth: 500, rebateHeight: 400, moulding: 20, lip: 6 }];
const values: readonly (number | undefined)[] = [45_000, 12_345, undefined, 90_000];
const show = showOf(
	[
		'number 1, title Ebb, maker Ada Holm, mount 500 x 400, frame Oak, copies 2, edition 3/25',
		'title Quay, maker Ruben Falk, mount 400 x 300, frame none',
		'title Weir, maker ada holm, mount 500 x 400, frame Elm',
		'title Sluice, mount 500 x 400',
	],
	{ unit: 'mm', frames, currency: 'EUR' },
);
const makers = handOvers({
	...show,
	valueOf: (place) => values[place],
	saleOf: (place) => ({ isSold: place < 2, isCollected: place === 1 }),
	nameOf: (place) => nameOfPrint(show.rows[place]!, place),
});

test('each maker hands over their prints, copy by copy, with what they are worth', () => {
	expect(makers.map(({ maker, lines }) => [maker, lines.length])).toEqual([
		['Ada Holm', 3],
		['Ruben Falk', 1],
		['', 1],
	]);
	const [first, second, weir] = makers[0]!.lines;
	expect(first).toMatchObject({
		...{ number: '1', title: 'Ebb', value: '450.00 EUR', isSold: true, isCollected: false },
		about: ['3/25, copy 1 of 2', 'framed 528 × 428 mm'],
	});
	expect(second).toMatchObject({ isSold: true, about: ['3/25, copy 2 of 2', 'framed 528 × 428 mm'] });
	expect(weir!.about).toEqual(['size not known']);
	expect(makers[1]!.lines[0]!.about).toEqual(['unframed 400 × 300 mm']);
});

test('totals are of what can be read, and the rest is named', () => {
	expect(makers.map(totalWords)).toEqual([
		'3 prints. Total value 900.00 EUR, without: Weir.',
		'1 print. Total value 123.45 EUR.',
		'1 print. Total value 900.00 EUR.',
	]);
	const none: HandOver = { ...makers[1]!, total: undefined };
	expect(totalWords(none)).toBe('1 print. No value is given.');
	const many = { ...makers[0]!, unvalued: ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] };
	expect(totalWords(many)).toContain('without: A, B, C, D, E, F, and 2 more.');
});

test.each(['A4', 'Letter'] as const)('on %s each maker has pages of their own, signed once, at their end', (paper) => {
	const long = { ...makers[1]!, lines: Array.from({ length: 40 }, () => makers[1]!.lines[0]!) };
	const pages = handOverPages([makers[0]!, long, makers[2]!], paper);
	expect(pages.every((page) => page.length === 1)).toBe(true);
	const parts = pages.flat();
	expect(parts.map(({ head, isContinued }) => `${head}${isContinued ? ', continued' : ''}`)).toEqual([
		'Ada Holm',
		'Ruben Falk',
		...Array.from({ length: parts.length - 3 }, () => 'Ruben Falk, continued'),
		'No maker named',
	]);
	for (const head of ['Ada Holm', 'Ruben Falk', 'No maker named']) {
		const kinds = parts.filter((part) => part.head === head).flatMap(({ items }) => items.map(({ kind }) => kind));
		expect(kinds.filter((kind) => kind !== 'line')).toEqual(['totals', 'signatures']);
		expect(kinds.at(-1)).toBe('signatures');
	}
});
