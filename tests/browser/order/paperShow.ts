import type { Page } from 'playwright-core';
import { openShow, showOf } from '../harness/openShow.ts';

const settings = {
	...{ unit: 'mm', mountSize: '600 x 450 mm', border: 70, currency: 'EUR', proofs: 1 },
	papers: [
		{ name: 'Cotton', width: 329, height: 483, margin: 5, price: '42', pack: 25, count: 3 },
		{ name: 'Baryta roll', width: 610, roll: '15 m', margin: 3, price: '180', count: 0 },
	],
	boards: [{ name: 'Chalk', width: 1200, height: 900, price: '43', pack: 5 }],
	glazing: [{ name: 'Clear', material: 'glass', width: 1000, height: 800, price: '11.20' }],
	frames: [{ name: 'Oak', moulding: 20, lip: 6, depth: 40, stick: 3000, price: '18.50', weight: 0.6 }],
	supplies: [{ kind: 'tape', pack: 50, price: '4.20' }],
};

const cells = [
	{ number: '1', title: 'Ebb', maker: 'Ilse', shape: '3:2', paper: 'Cotton', copies: '4', frame: 'Oak' },
	{ number: '2', title: 'Breakwater', maker: 'Jonah', shape: '3:2', paper: 'Cotton', 'margin left': '12' },
	{ number: '3', title: 'Net store', maker: 'Ilse', shape: '4:5', paper: 'Baryta roll', copies: '6', frame: 'Oak' },
	{ number: '4', title: 'Kelp', maker: 'Ilse', shape: '1:1', paper: 'A3' },
	{ number: '5', title: 'Slip', maker: 'Jonah', shape: '3:2' },
	{ number: '6', title: 'Quay', maker: 'Jonah', 'picture width': '500', 'picture height': '333', paper: 'A4' },
];

/** The title of a show with papers, frames and prices. */
export const paperShow = 'Salt on paper';

/** Opens a show with papers, frames and prices; one of its prints has no paper, and one no paper that holds it. */
export const openPaperShow = (page: Page): Promise<void> => openShow(page, showOf(paperShow, settings, cells));
