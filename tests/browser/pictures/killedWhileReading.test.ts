import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { onStage } from '../harness/stage.ts';
import { dropFiles, paintedPicture, withComment } from './pictureFiles.ts';

// Only in the soak: what it looks for shows in many rounds or in none.
const rounds = 10;
const files = 30;

/** How many rows are on disk, and how many of the pictures that they were given are not. */
const onDisk = (page: Page) =>
	page.evaluate(async () => {
		const read = async (name: string, store: string) => {
			const opening = indexedDB.open(name);
			await new Promise((resolve, reject) => {
				opening.onsuccess = resolve;
				opening.onerror = reject;
			});
			const db = opening.result;
			if (!db.objectStoreNames.contains(store)) {
				db.close();
				return [];
			}
			const tx = db.transaction(store);
			const [keys, values] = [tx.objectStore(store).getAllKeys(), tx.objectStore(store).getAll()];
			await new Promise((resolve) => (tx.oncomplete = resolve));
			db.close();
			return keys.result.map((key, at) => ({ key, value: values.result[at] as unknown }));
		};
		const rows = await read('evenhang', 'rows');
		const kept = new Map<unknown, unknown>();
		for (const store of ['pictures', 'preview', 'small'])
			for (const { key } of await read('evenhang pictures', store)) kept.set(key, (Number(kept.get(key)) || 0) + 1);
		const given = rows.flatMap(({ value }) => (value as { picture?: { hash: string } }).picture?.hash ?? []);
		return {
			rows: rows.length,
			lacking: given.filter((hash) => kept.get(hash) !== 3).length,
			halves: [...kept.values()].filter((count) => count !== 3).length,
		};
	});

/** How long the pictures may take to be read where the machine is busy. */
const longestReadingMs = 300_000;

test(
	`of ${rounds} browsers killed while ${files} pictures come in, each has rows and pictures that agree`,
	async () => {
		let held = 0;
		await onStage({ hasProfile: true, isWhole: true, isKept: false }, async (stage) => {
			let page = await stage.openShow();
			const base = await paintedPicture(page, 1200, 800, 'image/jpeg', true);
			let before = 0;
			for (let round = 0; round < rounds; round++) {
				await dropFiles(
					page,
					Array.from({ length: files }, (_, at) => ({
						name: `Round ${round} print ${at}.jpg`,
						bytes: withComment(base, `${round} ${at}`),
					})),
				);
				if (round % 2 === 0) {
					// While files are read, each time after some more of them.
					const done = Math.floor((round / rounds) * files);
					await page.waitForFunction(
						(least) => {
							const bar = document.querySelector('progress');
							return (bar !== null && bar.value >= least) || document.querySelector('.page .ways .main') !== null;
						},
						Math.max(1, done),
						{ timeout: longestReadingMs },
					);
				} else await page.getByRole('button', { name: /^Add pictures: / }).click({ timeout: longestReadingMs }); // while the rows are written
				await stage.killBrowser();
				await stage.openBrowser();
				page = await stage.openShow();
				const { rows, lacking, halves } = await onDisk(page);
				expect({ lacking, halves }, `round ${round}`).toEqual({ lacking: 0, halves: 0 });
				expect([before, before + files], `round ${round}`).toContain(rows);
				before = rows;
				held++;
			}
			stage.problems.splice(0); // what a killed browser leaves in the console
		});
		expect(held).toBe(rounds);
	},
	rounds * 120_000,
);
