// Makes the README's picture of the app again: `npm run picture`, after `npm run build`.
import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { closeSharedBrowser, onStage } from './harness/stage.ts';
import { cell } from './screens/prints.ts';

const file = fileURLToPath(new URL('../../shared/pictures/prints.png', import.meta.url));

await mkdir(fileURLToPath(new URL('.', `file://${file}`)), { recursive: true });
await onStage({ reducedMotion: 'reduce' }, async (stage) => {
	const page = await stage.openShow();
	await page.getByRole('button', { name: 'Load the example' }).click();
	await page.getByRole('button', { name: 'Close' }).click();
	await cell(page, 8, 'picture width').click(); // a print that would fall through its window
	await page.screenshot({ path: file });
});
console.log(`The picture is in ${file}`);
await closeSharedBrowser();
