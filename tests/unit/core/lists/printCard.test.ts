import { describe, expect, test } from 'vitest';
import { copiesOf, isReady, madeTicks } from '../../../../src/core/lists/madeOf.ts';
import { pointsOfCard, pointsOfCards, printCard, ticksMm } from '../../../../src/core/lists/printCard.ts';
import { hangingList } from '../../../../src/core/walls/hangingList.ts';
import { showOf } from './showOf.ts';

const settings = {
	unit: 'mm',
	mountSize: '600 x 450 mm',
	...{ undermount: 'Grey', boards: [{ name: 'Chalk', width: 1200, height: 900, thickness: 1.5, colour: 'white' }] },
	frames: [{ name: 'Oak', width: 600, height: 450, moulding: 20, lip: 6, depth: 20, weight: '0.5 kg' }],
	walls: [{ name: 'North', length: 4000 }],
	papers: [{ name: 'Rag', width: 500, height: 400, edge: 'deckle' }],
};

function cardOf(line: string, ticks: Parameters<typeof madeTicks>[0] = []) {
	const { rows, results, settings: read } = showOf([line], settings);
	const [hung] = hangingList(results, read);
	const [row, result] = [rows[0]!, results[0]!];
	return printCard({ row, place: 0, result, settings: read, ticks: madeTicks(ticks), line: hung });
}

describe('a card says', () => {
	const card = cardOf(
		'title Ebb, maker Ada Holm, medium Gum print, edition 3/25, picture 456 x 306, paper 500 x 400, frame Oak, wall North, copies 2, note mind the corner',
	);
	test('sizes, the picture to the frame', () =>
		expect(card.sizes.map((line) => line.join(': '))).toEqual([
			'Picture: 456 × 306 mm',
			'Paper: 500 × 400 mm',
			'Margins: sides 22, top and bottom 47',
			'Window: 450 × 300 mm',
			'Mount: 600 × 450 mm',
			'Borders: sides 75, top 71, bottom 79',
			'Overlap: 3 on each side',
			'Framed: 631 × 481 mm',
			expect.stringMatching(/^Weight: about \d\.\d kg$/),
		]));
	test('a deckle edge', () =>
		expect(cardOf('picture 456 x 306, paper Rag').sizes).toContainEqual(['Paper', '500 × 400 mm, deckle edge']));
	test('materials, what is usual where the show says nothing', () =>
		expect(card.materials.map((line) => line.join(': '))).toEqual([
			'Board: Chalk, white, 1.5 mm',
			'Undermount: Grey, 600 × 450 mm',
			'Frame: Oak, rebate 603 × 453 mm',
			'Glazing: glass, 600 × 450 mm',
			'Backing: about 3 mm, 600 × 450 mm',
		]));
	test('how it is put together', () =>
		expect(card.fitting.map((line) => line.join(': '))).toEqual([
			'Paper lies: 50 from the left, 21 mm from the top, seen from the front',
			'Hinges: 2, at 175 and 425 mm from the left, seen from the front',
			expect.stringMatching(/^Depth: The stack is about/),
			// framed 631 × 481: rings a third down, 571 between them; the cord rises 91.4. The rebate of 603 leaves 14 of wood
			'Rings: eyes 160 mm below the frame’s top, 30 mm in from each outer edge; screws 7 mm from that edge',
			'Cord: cut 883 mm. 600 mm from ring to ring, the rest for knots; rings 571 mm apart. Pulled up, 69 mm below the frame’s top',
		]));
	test('the undermount as the boards have it, and no cord where two hooks hold the rings', () => {
		const boards = [...settings.boards, { name: 'Grey', width: 1200, height: 900, thickness: 1, colour: 'grey' }];
		const {
			rows,
			results,
			settings: read,
		} = showOf(['picture 456 x 306, frame Oak'], {
			...{ ...settings, boards, hanging: { kind: 'two hooks' } },
		});
		const { materials, fitting } = printCard({
			...{ row: rows[0]!, place: 0, result: results[0]!, settings: read, ticks: madeTicks(), line: undefined },
		});
		expect(materials).toContainEqual(['Undermount', 'Grey, grey, 1 mm, 600 × 450 mm']);
		expect(fitting.map(([label]) => label)).toEqual(['Only for', 'Print lies', 'Hinges', 'Depth', 'Rings']);
		expect(fitting[0]![1]).toBe('a print trimmed to 456 × 306 mm');
	});
	test('where it hangs, and the rest', () => {
		expect(card.hanging[0]).toEqual(['Wall', 'North, 1 of 1 from the left']);
		expect(card.hanging.map(([label]) => label)).toEqual(['Wall', 'Left edge', 'Middle', 'Hook', 'Fixing']);
		expect(card.hanging[3]![1]).toMatch(/^\d+ mm above the floor, if the cord is at 69, \d+ mm from the wall/);
		expect([card.maker, card.about, card.note]).toEqual(['Ada Holm', 'Gum print, 3/25, 2 copies', 'mind the corner']);
	});
	test('a reveal as what it is, and of a float no window', () => {
		const labels = (line: string) => cardOf(line).sizes.map(([label]) => label);
		expect(cardOf('picture 300 x 200, reveal 5').sizes).toContainEqual(['Reveal', '5 on each side']);
		expect(labels('picture 300 x 200, mounting float')).not.toContain('Window');
		expect(labels('picture 300 x 200, mount none, frame none')).toEqual(
			expect.not.arrayContaining(['Window', 'Borders', 'Framed']),
		);
		expect(cardOf('picture 300 x 200, frame Elm').materials).toContainEqual(['Frame', 'Elm (not in the settings)']);
	});
	test('the ticks that were made, copy by copy', () => {
		const ticked = cardOf('title Ebb, frame Oak, copies 2', [
			{ row: 'r0', copy: 2, step: 'printed' },
			{ row: 'other', copy: 1, step: 'printed' },
			{ row: 'r0', copy: 3, step: 'printed' },
		]);
		const done = ticked.copies.map(({ steps }) => steps.filter(({ isDone }) => isDone).map(({ step }) => step));
		expect(done).toEqual([[], ['printed']]);
	});
});

test('a copy is ready when every step that is asked of it is done, and no other', () => {
	const { rows, results, settings: read } = showOf(['picture 300 x 200, mount none, frame none'], settings);
	const steps = ['printed', 'signed', 'hinged', 'labelled'] as const;
	const ready = (done: readonly (typeof steps)[number][]) =>
		copiesOf(rows[0]!, 0, results[0]!, read, madeTicks(done.map((step) => ({ row: 'r0', copy: 1, step })))).every(
			isReady,
		);
	expect(ready(steps)).toBe(true);
	expect(ready(steps.slice(1))).toBe(false);
});

test('cards that are printed together have one size of type, and few copies tick in two columns', () => {
	const long = 'x'.repeat(299);
	const card = (line: string, name = 'Ebb') => ({ card: cardOf(line), name });
	const [short, full] = [card('title Ebb, frame Oak'), card(`title ${long}, frame ${long}, note ${long}`, long)];
	const pointsOf = (cards: Parameters<typeof pointsOfCards>[0]) => pointsOfCards(cards, 'Letter');
	expect(pointsOf([short, full])).toBe(pointsOf([full]));
	expect(pointsOf([short])).toBeGreaterThan(pointsOf([full]));
	const high = (copies: number) => ticksMm(cardOf(`title Ebb, frame Oak, copies ${copies}`));
	expect([high(4), high(6)]).toEqual([high(1), high(1)]);
	expect(high(7)).toBeGreaterThan(high(6));
});

test('type gets smaller as long texts come, no further than it is read', () => {
	const long = 'x'.repeat(299);
	const points = (line: string, name: string) => pointsOfCard(cardOf(line), name, 'Letter');
	expect(points('title Ebb, frame Oak', 'Ebb')).toBe(9.5);
	const most = points(`title ${long}, frame ${long}, board ${long}, wall North, note ${long}, copies 9`, long);
	expect(most).toBeGreaterThanOrEqual(8.5);
	expect(most).toBeLessThan(9.5);
});
