import type { Page } from 'playwright-core';

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
export async function openSalesShow(page: Page): Promise<void> {
	const rows = cells.map((typed, place) => ({ id: `p${place}`, order: place + 1, typed }));
	const show = { format: 'evenhang-show', version: 8, name: salesShow, settings, rows };
	await page.getByRole('button', { name: 'Start typing' }).click();
	await page.getByRole('button', { name: 'Files' }).click();
	const asked = page.waitForEvent('filechooser');
	await page.getByRole('button', { name: 'Import rows' }).first().click();
	const file = { name: 'sold.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(show)) };
	await (await asked).setFiles(file);
	await page.getByRole('button', { name: 'Open it as a show of its own' }).click();
	await page.getByRole('heading', { name: new RegExp(`^“${salesShow}” opened`) }).waitFor();
	await page.getByRole('button', { name: 'Close', exact: true }).click();
}
