// Pictures of the main screens for people to look at: `npm run look -- folder`, after `npm run build`.
import { mkdir, mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { screens } from './harness/screens.ts';
import { closeSharedBrowser, landscapeTablet, laptop, onStage, phone, uprightTablet } from './harness/stage.ts';

const sizes = { landscape: landscapeTablet, upright: uprightTablet, laptop, phone };

const [asked] = process.argv.slice(2);
const folder = asked ? resolve(process.env.INIT_CWD ?? '.', asked) : await mkdtemp(join(tmpdir(), 'evenhang-look-'));
await mkdir(folder, { recursive: true });

for (const [size, viewport] of Object.entries(sizes)) {
	for (const colorScheme of ['light', 'dark'] as const) {
		for (const { name, open, needsGrid } of screens) {
			if (needsGrid && viewport === phone) continue;
			await onStage({ viewport, colorScheme, reducedMotion: 'reduce', isSharp: true }, async (stage) => {
				const page = await stage.openShow();
				await open(page);
				await page.screenshot({ path: join(folder, `${name}-${size}-${colorScheme}.png`) });
			});
		}
	}
}
console.log(`The pictures are in ${folder}`);
await closeSharedBrowser();
