// Draws the icons that devices ask for as pixels from static/icon.svg: `npm run icons`, after the drawing has changed.
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from './harness/findChromium.ts';

const folder = new URL('../../static/', import.meta.url);

/** The ground that an icon stands on where the device cuts it to a shape of its own. */
const ground = '#1f3a5c';

interface Icon {
	readonly name: string;
	readonly pixels: number;
	/** How much of the width the drawing takes; devices may cut all that lies outside a circle of 80 %. */
	readonly share: number;
	readonly hasGround: boolean;
}

const icons: readonly Icon[] = [
	{ name: 'icon-192.png', pixels: 192, share: 1, hasGround: false },
	{ name: 'icon-512.png', pixels: 512, share: 1, hasGround: false },
	{ name: 'maskable-192.png', pixels: 192, share: 0.64, hasGround: true },
	{ name: 'maskable-512.png', pixels: 512, share: 0.64, hasGround: true },
	{ name: 'apple-touch-icon.png', pixels: 180, share: 0.86, hasGround: true },
];

const drawing = await readFile(new URL('icon.svg', folder), 'utf8');
const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage();
for (const { name, pixels, share, hasGround } of icons) {
	const side = pixels * share;
	await page.setViewportSize({ width: pixels, height: pixels });
	await page.setContent(
		`<style>body { margin: 0; background: ${hasGround ? ground : 'transparent'} }
		svg { display: block; width: ${side}px; height: ${side}px; margin: ${(pixels - side) / 2}px }</style>${drawing}`,
	);
	await writeFile(new URL(name, folder), await page.screenshot({ omitBackground: true }));
}
await browser.close();
console.log(`drawn: ${icons.map(({ name }) => name).join(', ')} in ${fileURLToPath(folder)}`);
