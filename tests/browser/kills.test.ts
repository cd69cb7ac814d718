import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allOr, isSoak, runs } from '../soak.ts';
import { goByAddress } from './harness/goByAddress.ts';
import { onStage } from './harness/stage.ts';
import { comparing, type Deed, deeds, lastDeed, lastTicked, noteOf, type Whole } from './killedDeeds.ts';
import { withPrints } from './screens/prints.ts';

/**
 * How often the browser is killed: often enough to mean something, so in the soak alone. In `npm test` a browser is killed at
 * the bench (`workedThrough.test.ts`), and unit tests have storage fail while it writes (`storageFaults.svelte.test.ts`).
 */
const kills = runs(1, 100);
/** What is done meanwhile: the deed that has most in it which must not be kept by half. */
const tried = allOr(deeds, [comparing]);
/** How long is waited for one thing on the screen, where the machine is busy. */
const patienceMs = 60_000;
/** How long all of them may take, on a slow machine too. */
const mostMs = kills * 2 * patienceMs;

/** What is on disk, each record as a text. */
interface OnDisk {
	/** The rows, as they were typed. */
	readonly rows: readonly string[];
	/** What is ticked off. */
	readonly ticks: readonly string[];
	/** The names of shows, and of files that a show counts as compared with. */
	readonly names: readonly string[];
}

const onDisk = (page: Page): Promise<OnDisk> =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['shows', 'rows', 'ticks', 'exchanges']);
		const all = (store: string) => tx.objectStore(store).getAll();
		const [shows, rows, ticks, exchanges] = [all('shows'), all('rows'), all('ticks'), all('exchanges')];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		const asTexts = (records: readonly unknown[]) => records.map((each) => JSON.stringify(each)).sort();
		const standing = (exchanges.result as { stands: boolean; fileName: string }[]).filter(({ stands }) => stands);
		const names = [
			...(shows.result as { name: string }[]).map(({ name }) => name),
			...standing.map(({ fileName }) => fileName),
		];
		return { rows: asTexts(rows.result), ticks: asTexts(ticks.result), names };
	});

const lastNote = (round: number) => noteOf(round, lastDeed);

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

/** What a deed has left half-way: some of its rows, or all of them and not what goes with them, or that alone. */
const halves = ({ rows, names }: OnDisk, { wholes = () => [] }: Deed, round: number): string[] =>
	wholes(round, lastDeed).flatMap(({ text, count, name }: Whole) => {
		const there = rows.filter((row) => row.includes(text)).length;
		const isNamed = name === undefined ? there > 0 : names.includes(name);
		const isWhole = (there === 0 && !isNamed) || (there === count && isNamed);
		return isWhole ? [] : [`${there} of ${count} with ${text}, ${name}: ${isNamed}`];
	});

const isSaved = (page: Page) =>
	page
		.getByText(/^Saved/)
		.first()
		.waitFor();

/** Does a deed until all of it is on disk. */
async function doWhole(page: Page, deed: Deed, round: number, at: number): Promise<void> {
	await deed.act(page, round, at);
	await deed.settle?.(page);
	await isSaved(page);
}

/**
 * Does a deed, and has the page hold still once it has sent the database so many records: what it was writing is then
 * half-way, and stays so until the browser is killed.
 * @returns whether it came to that: there may be fewer records
 */
async function doHalf(page: Page, deed: Deed, round: number, count: number): Promise<boolean> {
	const word = 'holds still';
	const holds = page.waitForEvent('console', { predicate: (message) => message.text() === word, timeout: 0 });
	await page.evaluate(
		([said, puts]) => {
			const put = Reflect.get<IDBObjectStore, 'put'>(IDBObjectStore.prototype, 'put');
			let left = puts;
			IDBObjectStore.prototype.put = function (...given) {
				const request = put.apply(this, given);
				left--;
				if (left === 0) {
					console.log(said);
					for (const end = Date.now() + 60_000; Date.now() < end;);
				}
				return request;
			};
		},
		[word, count] as const,
	);
	const whole = doWhole(page, deed, round, lastDeed).then(() => false);
	const half = holds.then(() => true);
	for (const each of [whole, half]) each.catch(() => undefined); // the browser will be gone
	return Promise.race([whole, half]);
}

test(
	`of ${kills} browsers killed while ${isSoak ? 'typing, importing, comparing, restoring or ticking off' : 'comparing a list'}, each has everything that was called saved, or says what it lost, and nothing by half`,
	async () => {
		let held = 0;
		let putBack = 0;
		let half = 0;
		let done = 0;
		await onStage({ hasProfile: true, isWhole: isSoak, isKept: isSoak }, async (stage) => {
			stage.context.setDefaultTimeout(patienceMs);
			let page = await stage.openShow();
			await withPrints(page, [
				['Low water', '376', '251'],
				['Kiln door', '376', '251'], // of one size: cut in one step
			]);
			for (let round = 0; round < kills; round++) {
				const deed = tried[round % tried.length]!;
				const turn = round + Math.floor(round / tried.length); // each deed by turns
				let saved: OnDisk = { rows: [], ticks: [], names: [] };
				const before = await onDisk(page);
				await areCopied(page, idsOf(before)); // a page that lives for less than a second copies nothing
				for (let at = 0; at <= (isSoak ? turn % 3 : 0); at++) {
					await doWhole(page, deed, round, at);
					saved = await onDisk(page);
				}
				// This one may be there, or not: it was not called saved.
				if (turn % 2 === 1) await deed.act(page, round, lastDeed);
				else if (await doHalf(page, deed, round, deed.puts - (((round + 1) * 7) % deed.puts))) half++;
				await stage.killBrowser();
				await stage.openBrowser();
				stage.context.setDefaultTimeout(patienceMs);
				page = await stage.openApp();
				await page.getByRole('button').first().waitFor();
				const kept = await onDisk(page);
				const { rows } = kept;
				const lost = saved.rows.filter(
					(each) => !rows.includes(each) && !rows.includes(withNote(each, lastNote(round))),
				);
				// Killed while it writes, the browser may find its database damaged at a later opening (lostShows.test.ts).
				const said = page.getByRole('alert').filter({ hasText: 'restored as of' });
				if (await page.evaluate(() => localStorage.getItem('evenhang lost shows') !== null)) {
					await said.waitFor();
					const missing = idsOf(before).filter((id) => !idsOf(kept).includes(id));
					expect(missing, `round ${round}: put back, but for what was there before it`).toEqual([]);
					await page.getByRole('button', { name: 'Close', exact: true }).click();
					putBack++;
				} else expect([...lost, ...otherTicks(saved, kept)], `round ${round}, ${deed.name}`).toEqual([]);
				expect(halves(kept, deed, round), `round ${round}, ${deed.name}`).toEqual([]);
				if ((deed.wholes?.(round, lastDeed) ?? []).some(({ text }) => rows.some((row) => row.includes(text)))) done++;
				held++;
				if (isSoak && held % 10 === 0) console.log(`${held} killed`);
				await goByAddress(page, 'prints');
				await page.getByRole('gridcell').first().waitFor();
			}
			stage.problems.splice(0); // what a killed browser leaves in the console
		});
		expect(held).toBe(kills);
		expect(half, 'some were killed half-way').toBeGreaterThan(0);
		if (isSoak)
			console.log(
				`of ${kills} browsers killed, ${half} held still half-way; ${done} had just imported or restored all`,
			);
		if (putBack > 0)
			console.log(`of ${kills} browsers killed, ${putBack} had lost the database: it was put back, and said`);
	},
	mostMs,
);
