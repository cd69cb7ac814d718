import type { Scale } from '../../length/formatLength.ts';
import type { Code, FiguresByCode } from '../figures.ts';
import type { FiguresOfOffers, Offer } from '../offers.ts';
import { labels } from './labels.ts';
import { type Say, writeSentence } from './say.ts';
import { sentences } from './sentences.ts';

/** The sentence of a finding. */
export function sentenceOf<C extends Code>(code: C, figures: FiguresByCode[C], scale: Scale): string {
	return writeSentence(scale, (say) => sentences[code](figures, say));
}

/** The label of a mend. */
export function labelOf(offer: Offer, scale: Scale): string {
	const write = labels[offer.kind] as (figures: FiguresOfOffers[keyof FiguresOfOffers], say: Say) => string;
	return writeSentence(scale, (say) => write(offer, say));
}
