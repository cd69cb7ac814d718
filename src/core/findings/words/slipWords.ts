import type { SlipWord } from '../figures.ts';

/** How a length may have been meant. */
export const slipWords: Readonly<Record<SlipWord, string>> = {
	cm: 'cm',
	mm: 'mm',
	inches: 'inches',
	'ten times': 'ten times as much',
	'a tenth': 'a tenth as much',
	'25.4 times': '25.4 times as much',
	'the 25.4th part': '1/25.4 as much',
};
