import type { Page } from 'playwright-core';
import { openShow, showOf } from '../harness/openShow.ts';

/** The title of a show whose prints are sold. */
export const salesShow = 'Salt and sold';

const settings = { unit: 'mm', currency: 'EUR', commission: '40 %', vat: '20 %', priceStep: '5' };

/** A word without a place to break it, wider than any phone. */
export const unbroken = 'Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen'.repeat(3);

const cells = [
	{ number: '1', title: 'Ebb', maker: 'Ilse', edition: '1/12', shape: '3:2', net: '180' },
	{ number: '2', title: 'Ebb', maker: 'Ilse', edition: '2/12', shape: '3:2', net: '180' },
	{ number: '3', title: 'Weir', maker: 'Jonah', edition: 'open', copies: '3', shape: '3:2', price: '90' },
	{ number: '4', title: 'Quay', maker: 'Jonah', edition: 'AP 1/2', shape: '3:2', price: 'NFS' },
	{ number: '5', title: unbroken, maker: `${unbroken} and daughters`, edition: '1/2', shape: '3:2', price: '10' },
];

/** Opens a show of three makers with a commission; what they want for two prints, a price and a word stand in it. */
export const openSalesShow = (page: Page): Promise<void> => openShow(page, showOf(salesShow, settings, cells));
