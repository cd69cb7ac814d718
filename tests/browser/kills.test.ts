import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { isSoak } from '../soak.ts';
import { onStage } from './harness/stage.ts';
import { cell, paste, press, withPrints } from './screens/prints.ts';

/** How often the browser is killed; `npm run soak` does it often enough to mean something. */
const kills = isSoak ? 100 : 3;
/** How long all of them may take, on a slow machine too. */
const mostMs = kills * 60_000;

/** What is on disk, each record as a text. */
interface OnDisk {
	/** The rows, as they were typed. */
	readonly rows: readonly string[];
	/** What is ticked off. */
	readonly ticks: readonly string[];
}

const onDisk = (page: Page): Promise<OnDisk> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['rows', 'ticks']);
		const [rows, ticks] = [tx.objectStore('rows').getAll(), tx.objectStore('ticks').getAll()];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		const asTexts = (all: readonly unknown[]) => all.map((each) => JSON.stringify(each)).sort();
		return { rows: asTexts(rows.result), ticks: asTexts(ticks.result) };
	});

/** The number of the deed of a round that nothing waits for. */
const lastDeed = 99;

const lastNote = (round: number) => `round ${round}, note ${lastDeed}`;

/** Resolves once the second copies have these rows, which takes a second or two. */
const areCopied = (page: Page, rows: readonly string[]) =>
	expect
		.poll(async () => {
			const texts = await page.evaluate(async () => {
				const cache = await caches.open('evenhang second copies');
				return Promise.all((await cache.keys()).map(async (key) => (await cache.match(key))?.text() ?? ''));
			});
			return rows.filter((id) => !texts.some((text) => text.includes(`"${id}"`)));
		})
		.toEqual([]);

/** The ids of rows in which something is typed: a blank one is in no copy. */
const idsOf = ({ rows }: OnDisk) =>
	rows.flatMap((row) => {
		const { id, typed = {} } = JSON.parse(row) as { id: string; typed?: object };
		return Object.keys(typed).length > 0 ? [id] : [];
	});

/** A row as it is with another note. */
function withNote(kept: string, note: string): string {
	const row = JSON.parse(kept) as { typed?: Record<string, string> };
	return JSON.stringify(row.typed ? { ...row, typed: { ...row.typed, note } } : row);
}

/** The print that is ticked off, or the tick of which is taken off, just before the browser is killed. */
const lastTicked = 'Kiln door';

/** Ticks of another print than the last: those that one list has and the other has not. */
function otherTicks(saved: OnDisk, kept: OnDisk): string[] {
	const last = kept.rows.find((each) => each.includes(`"${lastTicked}"`)) ?? '{}';
	const { id } = JSON.parse(last) as { id?: string };
	const differ = [
		...saved.ticks.filter((each) => !kept.ticks.includes(each)),
		...kept.ticks.filter((each) => !saved.ticks.includes(each)),
	];
	return differ.filter((each) => (JSON.parse(each) as { row: string }).row !== id);
}

/** What is typed, imported or ticked off in a round, over and over until the browser is killed. */
const deeds: readonly ((page: Page, round: number, at: number) => Promise<void>)[] = [
	async (page, round, at) => {
		await page.getByRole('gridcell').last().click(); // whichever rows are on the screen
		await press(page, 'Control+Home');
		await cell(page, 0, 'note').click();
		await page.keyboard.type(`round ${round}, note ${at}`);
		await press(page, 'Tab');
	},
	async (page, round, at) => {
		await page.getByRole('button', { name: 'Add print' }).click();
		await press(page, 'Home');
		await paste(page, Array.from({ length: 50 }, (_, row) => `${round}.${at}.${row}\tPrint`).join('\n'));
	},
	async (page, _round, at) => {
		await page.evaluate(() => (location.hash = 'cut'));
		const next = page.getByRole('button', { name: 'Next', exact: true });
		await next.waitFor();
		const prints = page.locator('[aria-pressed]');
		if ((await prints.count()) === 0) await next.click(); // the test cut comes first
		await prints.filter({ hasText: at === lastDeed ? lastTicked : 'Low water' }).click();
	},
];

test(
	`of ${kills} browsers killed while typing, importing or ticking off, each has everything that was called saved, or says what it lost`,
	async () => {
		let held = 0;
		let putBack = 0;
		await onStage({ hasProfile: true, isWhole: isSoak }, async (stage) => {
			let page = await stage.openShow();
			await withPrints(page, [
				['Low water', '376', '251'],
				['Kiln door', '376', '251'], // of one size: cut in one step
			]);
			for (let round = 0; round < kills; round++) {
				const deed = deeds[round % deeds.length]!;
				let saved: OnDisk = { rows: [], ticks: [] };
				const before = await onDisk(page);
				await areCopied(page, idsOf(before)); // a page that lives for less than a second copies nothing
				for (let at = 0; at <= round % 3; at++) {
					await deed(page, round, at);
					await page
						.getByText(/^Saved/)
						.first()
						.waitFor();
					saved = await onDisk(page);
				}
				await deed(page, round, lastDeed); // this one may be there, or not: it was not called saved
				await stage.killBrowser();
				await stage.openBrowser();
				page = await stage.openApp();
				await page.getByRole('button').first().waitFor();
				const kept = await onDisk(page);
				const { rows } = kept;
				const lost = saved.rows.filter(
					(each) => !rows.includes(each) && !rows.includes(withNote(each, lastNote(round))),
				);
				// Killed while it writes, the browser may find its database damaged at a later opening (lostShows.test.ts).
				const said = page.getByRole('alert').filter({ hasText: 'Put back from a second copy' });
				if (await page.evaluate(() => localStorage.getItem('evenhang lost shows') !== null)) {
					await said.waitFor();
					const missing = idsOf(before).filter((id) => !idsOf(kept).includes(id));
					expect(missing, `round ${round}: put back, but for what was there before it`).toEqual([]);
					await page.getByRole('button', { name: 'Close', exact: true }).click();
					putBack++;
				} else expect([...lost, ...otherTicks(saved, kept)], `round ${round}`).toEqual([]);
				held++;
				await page.evaluate(() => (location.hash = 'prints'));
				await page.getByRole('gridcell').first().waitFor();
			}
			stage.problems.splice(0); // what a killed browser leaves in the console
		});
		expect(held).toBe(kills);
		if (putBack > 0)
			console.log(`of ${kills} browsers killed, ${putBack} had lost the database: it was put back, and said`);
	},
	mostMs,
);
