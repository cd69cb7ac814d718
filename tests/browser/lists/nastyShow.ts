import type { Page } from 'playwright-core';
import { runs } from '../../soak.ts';
import { openFirstShow, showOf } from '../harness/openShow.ts';

const long =
	'Low water at the staithe, seen from the second landing of the rope works, with eleven boats and no one aboard, for the harbour master';
const unbroken = 'Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen'.repeat(3);

const settings = {
	...{ unit: 'mm', mountSize: '600 x 450 mm', border: 70, currency: 'EUR', undermount: 'Grey' },
	boards: [{ name: 'Chalk', width: 1200, height: 900, thickness: 1.5, colour: 'white' }],
	frames: [
		{ name: 'Oak', moulding: 20, lip: 6, depth: 40, weight: 0.6 },
		{ name: 'Plain', moulding: 20, lip: 6 },
		{ name: 'Bare', width: 500, height: 400 },
	],
	walls: [
		{ name: 'North', length: 12_000, height: 2600 },
		{ name: `South, ${long}`, length: 9000, height: 2600 },
	],
};

/** Who bought a print: nobody's business but the gallery's. */
export const buyer = 'Quillon Vantreight';

const makers = ['Ada Holm', 'Ruben Falk', `${unbroken} and daughters`, ''];

/** How many prints there are: so many that each kind of text stands beside each kind of frame, and several times in the soak. */
export const prints = runs(20, 40);
const [fewCopies, manyCopies] = [3, runs(12, 30)];
/** How many copies there are of all prints. */
export const copies = prints + fewCopies - 1 + manyCopies - 1;
/** How many of the prints are sold. */
export const soldPrints = prints / 10;

const cells = Array.from({ length: prints }, (_, at) => ({
	number: `${at + 1}`,
	title: at % 7 === 3 ? long : at % 7 === 5 ? unbroken : at % 7 === 6 ? '' : `Tide ${at + 1}`,
	maker: makers[at % makers.length]!,
	year: `${1990 + at}`,
	medium: at % 5 === 0 ? `Gum print in ${long}` : 'Gum print',
	edition: at % 4 === 0 ? 'AP 1/3' : `${at + 1}/50`,
	...(at % 9 === 8 ? { mount: 'none' } : { shape: at % 2 === 0 ? '3:2' : '4:5' }),
	frame: ['Oak', 'none', 'Plain', 'Bare', 'Oak', at % 2 === 0 ? 'Elm' : 'Oak'][at % 6]!,
	...(at % 3 === 0 && { paper: 'A2' }),
	price: at % 6 === 1 ? 'on request of the maker only, and after the show' : `${100 + at}.00`,
	value: at % 6 === 2 ? 'see the letter' : `${90 + at}`,
	buyer,
	...(at % 10 === 0 && { stage: at === 0 ? 'sold' : 'collected' }),
	...(at % 3 < 2 && { wall: at % 3 === 0 ? 'North' : `South, ${long}` }),
	...(at === 1 && { copies: `${fewCopies}` }),
	...(at === 2 && { copies: `${manyCopies}` }),
	...(at % 8 === 0 && { note: `${long}. ${long}. ${long}` }),
}));

/** What is called what in the show, to be found on its pages. */
export const titles = cells.map(({ title }) => title).filter((title) => title !== '');

/** The same texts without blanks between their signs: on paper they break where there is room. */
export const withoutBlanks = (text: string): string => text.replace(/\s+/g, '');

/** Opens a show of many prints with long titles, words without end, no sizes, no frames and unknown ones. */
export async function openNastyShow(page: Page): Promise<void> {
	const typed = cells.map((each) => Object.fromEntries(Object.entries(each).filter(([, text]) => text !== '')));
	await openFirstShow(page, showOf('Salt and slate', settings, typed));
}
