// Pictures of the main screens for people to look at: `npm run look -- folder`, after `npm run build`.
import { mkdir, mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { landscapeTablet, laptop, onStage, uprightTablet } from './harness/stage.ts';

/** A screen and how a person gets there from an app that has just been opened for the first time. */
interface Screen {
	readonly name: string;
	readonly open: (page: Page) => Promise<void>;
}

const screens: readonly Screen[] = [{ name: 'empty', open: () => Promise.resolve() }];

const sizes = { landscape: landscapeTablet, upright: uprightTablet, laptop };

const [asked] = process.argv.slice(2);
const folder = asked ? resolve(process.env.INIT_CWD ?? '.', asked) : await mkdtemp(join(tmpdir(), 'evenhang-look-'));
await mkdir(folder, { recursive: true });

for (const [size, viewport] of Object.entries(sizes)) {
	for (const colorScheme of ['light', 'dark'] as const) {
		for (const { name, open } of screens) {
			await onStage({ viewport, colorScheme, reducedMotion: 'reduce' }, async (stage) => {
				const page = await stage.openShow();
				await open(page);
				await page.screenshot({ path: join(folder, `${name}-${size}-${colorScheme}.png`) });
			});
		}
	}
}
console.log(`The pictures are in ${folder}`);
