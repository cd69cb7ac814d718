import { fittingCaution } from '../../core/lists/fittingCaution.ts';
import { madeTicks } from '../../core/lists/madeOf.ts';
import { pointsOfCards, printCard } from '../../core/lists/printCard.ts';
import { hangingList } from '../../core/walls/hangingList.ts';
import { cardFigures } from '../../ui/paper/cardFigures.ts';
import CardPaper from '../../ui/paper/CardPaper.svelte';
import { namesOfPrints } from './namesOfPrints.ts';
import { paperDocument } from './paperDocument.ts';

/** A card for each print: all that whoever makes it has to know of it. */
export const cardsDocument = paperDocument({
	id: 'cards',
	name: 'Print cards',
	title: 'Print card',
	care: fittingCaution,
	none: 'There are no prints yet.',
	make(source) {
		const { session, paper } = source;
		const { show, results, settings, pictures } = session;
		const nameOf = namesOfPrints(source);
		const ticks = madeTicks(show.made);
		const lines = new Map(hangingList(results, settings).map((line) => [line.place, line]));
		const cards = show.rows.flatMap((row, place) => {
			const result = results[place]!;
			if (result.copies === 0) return [];
			const card = printCard({ row, place, result, settings, ticks, line: lines.get(place) });
			return { card, name: nameOf(place), result, settings, address: pictures.addressOf(row) };
		});
		const points = pointsOfCards(cards, paper);
		// Of all the same width, so that mounts of one size are drawn at one scale.
		const figures = Math.max(...cards.map(({ result }) => cardFigures(result, settings)));
		return { pages: cards.map((each) => ({ ...each, points, figures })) };
	},
	component: CardPaper,
});
