import fc from 'fast-check';
import { expect, test } from 'vitest';
import { catalogueOf, heightFirst, priceWords, titleWords } from '../../../../src/core/lists/catalogue.ts';
import { catalogueListPages, cataloguePage, cataloguePicturePages } from '../../../../src/core/lists/cataloguePages.ts';
import { showOrder } from '../../../../src/core/lists/showOrder.ts';
import { listRoom } from '../../../../src/core/values/papers.ts';
import { runs } from '../../../soak.ts';
import { showOf } from './showOf.ts';

const walls = [
	{ name: 'North', length: 4000 },
	{ name: 'South', length: 4000 },
];
const lines = [
	'title Ebb, mount 500 x 400',
	'title Quay, mount 500 x 400, wall South',
	'title Weir, mount 500 x 400, wall North, hang order 2',
	'title Sluice, mount 500 x 400, wall North, hang order 1',
	'title Staithe, mount 500 x 400',
	'title Groyne, mount 500 x 400, wall South, hang left 100',
];
const titlesOf = (typed: readonly string[], settings: object) => {
	const show = showOf(typed, { unit: 'mm', ...settings });
	return showOrder(show.rows, show.results, show.settings).map(
		({ wall, places }) => `${wall}: ${places.map((place) => show.rows[place]!.typed.title).join(' ')}`,
	);
};

test('in the order in which one walks past: wall by wall, from the left, then what hangs on none', () => {
	expect(titlesOf(lines, { walls })).toEqual(['North: Sluice Weir', 'South: Groyne Quay', ': Ebb Staithe']);
	expect(titlesOf(lines.slice(0, 2), { walls })).toEqual(['South: Quay', ': Ebb']);
	// Rooms and hang orders without a wall that is measured still order the prints.
	expect(titlesOf(['title A, hang order 2', 'title B', 'title C, hang order 1'], {})).toEqual([': C A B']);
});

test('every print is there once, whatever hangs where', () =>
	fc.assert(
		fc.property(
			fc.array(fc.tuple(fc.constantFrom('', 'North', 'South', 'Attic'), fc.constantFrom('', '1', '2', 'x')), {
				maxLength: 12,
			}),
			(cells) => {
				const typed = cells.map(([wall, order], at) =>
					[`title T${at}`, 'mount 500 x 400', wall && `wall ${wall}`, order && `hang order ${order}`]
						.filter((text) => text !== '')
						.join(', '),
				);
				const show = showOf(typed, { unit: 'mm', walls });
				const places = showOrder(show.rows, show.results, show.settings).flatMap((each) => each.places);
				expect(places.toSorted((one, other) => one - other)).toEqual(cells.map((_, at) => at));
			},
		),
		{ numRuns: runs(50, 5000) },
	));

test('a line says what visitors ask: height first, and sold in a word', () => {
	const show = showOf(
		['number 4, title Ebb, maker Ada Holm, medium Gum print, edition 3/25, price 450, picture 305 x 456', 'price 90'],
		{ unit: 'mm', mountSize: '600 x 450 mm' },
	);
	const [line, bare] = catalogueOf({ ...show, isSold: (place) => place === 0 }, { hasPrices: true });
	expect(line).toMatchObject({ number: '4', maker: 'Ada Holm', medium: 'Gum print', edition: '3/25', wall: '' });
	expect(heightFirst(line!.size, show.settings)).toBe('456 × 305');
	expect([priceWords(line!), titleWords(line!)]).toEqual(['450, sold', 'Ebb']);
	expect([priceWords(bare!), titleWords(bare!)]).toEqual(['90', 'Untitled']);
	expect(titleWords({ title: 'Ebb', year: '2024' })).toBe('Ebb, 2024');
	const [free] = catalogueOf({ ...show, isSold: () => true }, { hasPrices: false });
	expect(priceWords(free!)).toBe('sold');
});

const title = fc.oneof(
	fc.stringMatching(/^[A-Za-z][a-z ]{0,40}$/),
	fc.string({ minLength: 1, maxLength: 400 }).filter((text) => !/[,]/.test(text) && text.trim() !== ''),
);

test.each(['A4', 'Letter'] as const)('on %s no page is fuller than it is, and each print is on one', (paper) =>
	fc.assert(
		fc.property(fc.array(title, { minLength: 1, maxLength: 60 }), (titles) => {
			const show = showOf(['mount 500 x 400'], { unit: 'mm' });
			const rows = titles.map((text, at) => ({ id: `r${at}`, order: at, typed: { title: text } }));
			const results = rows.map(() => show.results[0]!);
			const list = catalogueOf({ ...show, rows, results, priceOf: () => '12.50' }, { hasPrices: true });
			const pages = catalogueListPages(list, show.settings, paper);
			const placesOf = (shown: typeof list) => shown.map(({ place }) => place);
			expect(placesOf(pages.flatMap((page) => page.flatMap(({ items }) => items)))).toEqual(placesOf(list));
			const pictures = cataloguePicturePages(list, show.settings, paper, ({ place }) => 20 + (place % 3) * 10);
			const beside = pictures.flatMap((page) => page.flatMap(({ items }) => items.flatMap((row) => row.lines)));
			expect(placesOf(beside)).toEqual(placesOf(list));
			const { between } = cataloguePage;
			for (const page of pictures) {
				const used = page
					.flatMap(({ items }) => items)
					.reduce((sum, { lines: own, pictureMm, wordsMm }) => {
						expect(pictureMm).toBe(Math.max(...own.map(({ place }) => 20 + (place % 3) * 10)));
						return sum + pictureMm + wordsMm + 2 * between;
					}, 0);
				expect(used).toBeLessThanOrEqual(listRoom(paper).height);
			}
		}),
		{ numRuns: runs(30, 1000) },
	),
);
