import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeProblems } from '../harness/axe.ts';
import { isSoak } from '../../soak.ts';
import { goByAddress } from '../harness/goByAddress.ts';
import { onStage } from '../harness/stage.ts';
import { openBenchShow } from './benchShow.ts';
import { oneStage } from '../screens/oneStage.ts';
import { cell } from '../screens/prints.ts';

const cutsInAll = (page: Page) => page.getByText(/of \d+ cuts made$/).innerText();
const next = (page: Page) => page.getByRole('button', { name: 'Next', exact: true });
const heading = (page: Page) => page.getByRole('heading', { level: 1 }).innerText();

/** The button that ticks off what is left of the step, and goes on. */
const wholeStep = (page: Page) => page.getByRole('button', { name: /^(All \d+ cut|Both cut|Cut made|The rest cut)$/ });

/** In the soak the thirty prints of the example, else a few of them. */
async function openPrints(page: Page) {
	if (!isSoak) return openBenchShow(page);
	await page.getByRole('button', { name: 'Load the example' }).tap();
	await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
}

async function toBench(page: Page) {
	await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Bench' }).tap();
	// By its key: what stands over it changes as the sheets are planned, and a tap may land beside it.
	await page.getByRole('link', { name: /^(Start|Carry on) cutting windows$/ }).press('Enter');
	await page.getByRole('navigation', { name: 'Steps' }).waitFor();
}

/** Ticks off every mount of the active step, one touch each. @returns how many it took */
async function tickAll(page: Page): Promise<number> {
	const open = page.locator('[aria-pressed=false]');
	let touched = 0;
	while ((await open.count()) > 0) {
		const left = await open.count();
		await open.first().tap();
		await expect.poll(() => open.count()).toBe(left - 1);
		touched++;
	}
	return touched;
}

/** What is on disk, read as the browser has it: how many ticks, and where the show was left. */
const onDisk = (page: Page) =>
	page.evaluate(async () => {
		const opening = indexedDB.open('evenhang');
		await new Promise((resolve) => (opening.onsuccess = resolve));
		const tx = opening.result.transaction(['shows', 'ticks']);
		const [ticks, shows] = [tx.objectStore('ticks').count(), tx.objectStore('shows').getAll()];
		await new Promise((resolve) => (tx.oncomplete = resolve));
		opening.result.close();
		const [show] = shows.result as { left?: { place?: string } }[];
		return { ticks: ticks.result, place: show?.left?.place };
	});
const ticksOnDisk = async (page: Page) => (await onDisk(page)).ticks;

const options = { hasTouch: true, reducedMotion: 'reduce' } as const;
const inWindow = oneStage(options);
const goesOn = { goesOn: true };

async function begin(page: Page) {
	await openPrints(page);
	await toBench(page);
}

/** The steps after which the page is loaded again, and the browser killed. */
const [reloadedAt, killedAt] = isSoak ? [5, 9] : [2, 4];

test('a show is worked through by touch, over a reload and a killed browser, and every tick is there', () =>
	onStage({ ...options, hasProfile: true, isKept: false }, async (stage) => {
		let page = await stage.openApp();
		await begin(page);
		let steps = 0;
		let inAll = '';
		let sum = 0;
		for (;;) {
			const title = await heading(page);
			const isLast = await next(page).isDisabled();
			let goesOn = false; // by itself
			if (title.startsWith('Step')) {
				steps++;
				inAll = title.replace(/^Step \d+ of (\d+)[^]*/, '$1');
				const before = await ticksOnDisk(page);
				// One touch for each mount before the reload and before the crash; in the soak in every step.
				if (isSoak || steps === reloadedAt || steps === killedAt) await tickAll(page);
				else {
					await wholeStep(page).click();
					goesOn = true;
				}
				if (steps === reloadedAt) {
					await expect.poll(() => page.getByText('Saved', { exact: true }).count()).toBe(1);
					// A page that is loaded again before that is on disk counts as left where it was found.
					await expect.poll(async () => (await onDisk(page)).place).toBe('cut');
					await page.reload();
					await page.getByRole('navigation', { name: 'Steps' }).waitFor();
					expect(await heading(page), 'the same step after a reload').toContain(`Step ${reloadedAt} of`);
					expect(await page.locator('[aria-pressed=false]').count()).toBe(0);
				}
				if (steps === killedAt) {
					await expect.poll(() => page.getByText('Saved', { exact: true }).count()).toBe(1);
					const made = await cutsInAll(page);
					await stage.killBrowser();
					await stage.openBrowser();
					page = await stage.openApp();
					await page.getByRole('navigation', { name: 'Steps' }).waitFor(); // one goes on where one was
					expect(await heading(page), 'the same step after a crash').toContain(`Step ${killedAt} of`);
					expect(await cutsInAll(page)).toBe(made);
					expect(await page.locator('[aria-pressed=false]').count()).toBe(0);
				}
				await expect.poll(() => ticksOnDisk(page)).toBeGreaterThan(before);
				sum = await ticksOnDisk(page);
			}
			if (isLast) break;
			if (!goesOn) await next(page).tap();
			await expect.poll(() => heading(page)).not.toBe(title);
		}
		const [made, all] = (await cutsInAll(page)).match(/\d+/g)!.map(Number);
		expect(made).toBe(all);
		expect(sum).toBe(all);
		expect(steps).toBe(isSoak ? 23 : Number(inAll));
		expect(steps).toBeGreaterThan(killedAt + 2);
		await expect.poll(() => wholeStep(page).count(), { message: 'nothing is left of the last step' }).toBe(0);
	}));

test('with end stops it is asked once which cutter it is, with a drawing; then each stop is said with its border', () =>
	inWindow(async (page) => {
		await begin(page);
		await page.getByRole('link', { name: 'List' }).tap();
		await page.getByRole('link', { name: 'Bench settings' }).tap();
		await page.getByRole('radio', { name: 'guide and stops', exact: true }).check();
		await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Bench' }).tap();
		const question = page.getByRole('region', { name: 'Which kind of cutter is it?' });
		await question.getByRole('img', { name: /pushed away from you: the cut starts at the top border/ }).waitFor();
		expect(await axeProblems(page)).toEqual([]);
		await page.emulateMedia({ colorScheme: 'dark' });
		const drawing = question.getByRole('img');
		const [mount, word] = await drawing.evaluate((svg) => {
			const ink = document.createElement('canvas').getContext('2d')!;
			const words = [...svg.querySelectorAll('text')].find(({ textContent }) => textContent === 'start')!;
			return [svg.querySelector('rect')!, words].map((each) => {
				ink.fillStyle = getComputedStyle(each).fill;
				ink.fillRect(0, 0, 1, 1);
				return ink.getImageData(0, 0, 1, 1).data[1]!;
			});
		});
		expect(Math.abs(mount! - word!), 'words on the mount stand out in the dark').toBeGreaterThan(100);
		await question.getByRole('radio', { name: 'pulled' }).check();
		await question.getByRole('img', { name: /pulled towards you: the cut starts at the bottom border/ }).waitFor();
		await question.getByRole('button', { name: 'Yes, as drawn' }).tap();
		await question.waitFor({ state: 'detached' });
		await page.getByText('Saved', { exact: true }).waitFor();
		await page.reload();
		await page
			.getByText(/^start [\d.]+, at the/)
			.first()
			.waitFor();
		expect(await question.count()).toBe(0);
		await page.getByRole('link', { name: /^(Start|Carry on) cutting windows$/ }).tap();
		await next(page).tap();
		await page.getByText('Start stop').waitFor();
		const shown = await page.locator('main').innerText();
		expect(shown).toMatch(/Start stop[^]*at the (top|bottom|left|right)[^]*End stop[^]*at the (top|bottom|left|right)/);
		await goByAddress(page, 'paper/bench');
		await page
			.getByText(/^start [\d.]+, at the/)
			.first()
			.waitFor();
	}));

test('the digits are 60 px high, what is pressed is 60 px, undo is at hand, and axe finds nothing', () =>
	inWindow(async (page) => {
		await begin(page);
		if (isSoak) expect(await axeProblems(page)).toEqual([]);
		for (const kind of ['guide', 'guide and stops']) {
			if (kind !== 'guide') {
				await page.getByRole('link', { name: 'List' }).tap();
				await page.getByRole('link', { name: 'Bench settings' }).tap();
				await page.getByRole('radio', { name: kind, exact: true }).check();
				await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Bench' }).tap();
				// The search runs in a worker, under the page's policy.
				await page.getByText(isSoak ? '88 settings, the fewest possible' : / settings, the fewest possible/).waitFor();
				await page.getByRole('link', { name: /^(Start|Carry on) cutting windows$/ }).tap();
			}
			await next(page).tap();
			await page.locator('.digits').first().waitFor();
			const heights = await page.locator('.digits').evaluateAll((all) =>
				all.map((each) => {
					const style = getComputedStyle(each);
					const ink = document.createElement('canvas').getContext('2d')!;
					ink.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
					const { actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } = ink.measureText('1');
					return above + below;
				}),
			);
			expect(heights).toHaveLength(kind === 'guide' ? 1 : 3);
			if (kind === 'guide') {
				// One figure is 200 px, or as large as its column is wide.
				const { size, room, over } = await page.locator('.ticks .digits').evaluate((figure) => {
					const ink = document.createRange();
					ink.selectNodeContents(figure);
					const column = figure.closest('.ticks')!.getBoundingClientRect();
					const wide = ink.getBoundingClientRect();
					return {
						size: Number.parseFloat(getComputedStyle(figure).fontSize),
						room: (column.width - 48) / wide.width,
						over: wide.right - (column.right - 24),
					};
				});
				expect(over, 'it is whole').toBeLessThanOrEqual(0);
				expect(size === 200 || room < 1.1, `${size} px, ${room} of its room`).toBe(true);
			}
			for (const height of heights) expect(height).toBeGreaterThanOrEqual(60);
			const small = await page.locator('main button, main a').evaluateAll((all) =>
				all
					.map((each) => ({ text: each.textContent, box: each.getBoundingClientRect() }))
					.filter(({ box }) => box.height < 60 || box.width < 60)
					.map(({ text }) => text),
			);
			expect(small).toEqual([]);
			const inView = await page.locator('.digits, .foot .area').evaluateAll((all) =>
				all.every((each) => {
					const box = each.getBoundingClientRect();
					return box.top >= 0 && box.left >= 0 && box.right <= innerWidth && box.bottom <= innerHeight;
				}),
			);
			expect(inView, 'all that is set and pressed is in view').toBe(true);
			if (isSoak || kind !== 'guide') expect(await axeProblems(page)).toEqual([]); // with a guide: `axe`
		}
	}));

test('a step is ticked off whole by one tap, which goes on; undo takes back the last step, and a double tap ticks one', () =>
	inWindow(async (page) => {
		await begin(page);
		await next(page).tap();
		const done = wholeStep(page);
		const made = async () => Number((await cutsInAll(page)).split(' ', 1)[0]);
		await done.dblclick();
		await expect.poll(() => heading(page)).toMatch(/^Step 2 of/);
		const first = await made();
		await page.getByRole('button', { name: /^Undo tick: / }).tap();
		await expect.poll(made).toBe(0);
		await expect.poll(() => heading(page), { message: 'the step that is undone' }).toMatch(/^Step 1 of/);
		await done.focus();
		await page.keyboard.down('Enter');
		for (let held = 0; held < 4; held++) await page.keyboard.down('Enter'); // it repeats
		await page.keyboard.up('Enter');
		await expect.poll(made, { message: 'a key that is held does it once' }).toBe(first);
		await page.getByRole('button', { name: /^Undo tick: / }).tap();
		await expect.poll(made).toBe(0);
		// All steps to the last are ticked so in the play above.
		await done.click();
		expect(await made()).toBe(first);
		await expect.poll(() => heading(page)).toMatch(/^Step 2 of/);
		await page.getByRole('button', { name: /^Undo tick: / }).tap(); // for the play that goes on here
		await expect.poll(made).toBe(0);
	}));

test('a spoilt board is to be cut again, undo takes it back, and the left hand has its own side', () =>
	inWindow(async (page) => {
		// In the page of the play before: at a step, and nothing is ticked.
		await next(page).tap();
		await page.locator('.tick').first().tap();
		await expect.poll(() => page.locator('.tick').first().getAttribute('aria-pressed')).toBe('true');
		await page
			.getByRole('button', { name: /^Board spoilt/ })
			.first()
			.tap();
		await page.getByText('1 board spoilt').waitFor();
		expect(await page.locator('.tick').first().getAttribute('aria-pressed')).toBe('false');
		await page.getByRole('button', { name: /^Undo tick: Spoilt/ }).tap();
		await expect.poll(() => page.locator('.tick').first().getAttribute('aria-pressed')).toBe('true');
		expect((await next(page).boundingBox())!.x).toBeGreaterThan(590);
		await page.getByRole('link', { name: 'List' }).tap();
		await page.getByRole('link', { name: 'Bench settings' }).tap();
		await page.getByRole('radio', { name: 'left', exact: true }).check();
		await goByAddress(page, 'cut');
		expect((await next(page).boundingBox())!.x).toBeLessThan(300);
	}, goesOn));

test('a change to a print that was cut is asked about: left, nothing changes; made, the mount is begun again', () =>
	inWindow(async (page) => {
		// In the page of the play before, at a step.
		await next(page).tap();
		await tickAll(page);
		const name = await page.locator('.tick .name').first().innerText();
		const made = await cutsInAll(page);
		await page.getByRole('link', { name: 'List' }).tap();
		await goByAddress(page, 'settings/mount');
		const border = page.getByLabel('Mount size', { exact: true });
		const before = await border.inputValue();
		const change = async () => {
			await border.fill('720 x 560 mm');
			await page.keyboard.press('Tab');
			await page.getByRole('dialog', { name: 'Already cut' }).waitFor();
		};
		await change();
		expect(await page.getByRole('dialog').innerText()).toContain(name);
		expect(await axeProblems(page)).toEqual([]);
		await page.getByRole('button', { name: 'Leave it as it was' }).tap();
		await goByAddress(page, 'cut');
		expect(await cutsInAll(page)).toBe(made);
		await goByAddress(page, 'settings/mount');
		expect(await border.inputValue()).toBe(before);
		await change();
		await page.getByRole('button', { name: /start the mounts? again/ }).tap();
		await goByAddress(page, 'bench');
		await page.getByRole('heading', { name: 'Bench' }).waitFor();
		await expect.poll(() => ticksOnDisk(page)).toBe(0);
	}, goesOn));

test('a cut that stands is kept where a change makes the others wrong, and undo gives both back', () =>
	inWindow(async (page) => {
		await begin(page);
		// All four cuts of the first print, in as many steps as they come.
		for (let ticked = 0; ticked < 4;) {
			await next(page).tap();
			await page.locator('.digits').first().waitFor();
			const own = page.locator('.tick', { hasText: 'Ebb, before six' });
			if ((await own.count()) === 0) continue;
			const sides = await own.locator('.more').innerText();
			await own.tap();
			await expect.poll(() => own.getAttribute('aria-pressed')).toBe('true');
			ticked += sides === 'both sides' ? 2 : sides === 'all four sides' ? 4 : sides.split(', ').length;
		}
		await expect.poll(() => ticksOnDisk(page)).toBe(4);
		await goByAddress(page, 'prints');
		const type = async (key: string, text: string) => {
			await cell(page, 0, key).click();
			await page.keyboard.type(text);
			await page.keyboard.press('Enter');
		};
		await type('side', '80'); // as it shows: nothing changes, and nobody is asked
		await type('top', '94');
		const asked = page.getByRole('dialog', { name: 'Already cut' });
		await asked.waitFor();
		expect(await asked.innerText()).toMatch(/which would be wrong\. Still right: left/);
		await asked.getByRole('button', { name: 'Change it, keep the cuts that are still right' }).tap();
		await expect.poll(() => ticksOnDisk(page)).toBe(2);
		await page.keyboard.press('Control+z');
		await expect.poll(() => ticksOnDisk(page)).toBe(4);
	}));

test('the screen is kept awake at the bench, also when it is seen again, and no longer once one leaves', () =>
	inWindow(async (page) => {
		await page.addInitScript(() => {
			const counts = { asked: 0, released: 0 };
			const locks: { released: boolean }[] = [];
			const wakeLock = {
				request: (kind: string) => {
					if (kind === 'screen') counts.asked++;
					const lock = { released: false, release: () => Promise.resolve(void counts.released++) };
					locks.push(lock);
					return Promise.resolve(lock);
				},
			};
			Object.defineProperty(navigator, 'wakeLock', { value: wakeLock });
			Object.assign(globalThis, {
				wakeCounts: counts,
				show: (state: string) => {
					Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
					if (state === 'hidden') for (const lock of locks) lock.released = true; // as the platform does
					document.dispatchEvent(new Event('visibilitychange'));
				},
			});
		});
		await page.reload();
		const counts = () => page.evaluate('({ ...wakeCounts })');
		await openPrints(page);
		expect(await counts()).toEqual({ asked: 0, released: 0 });
		await toBench(page);
		await expect.poll(counts).toEqual({ asked: 1, released: 0 });
		await page.evaluate("show('hidden')");
		expect(await counts()).toEqual({ asked: 1, released: 0 });
		await page.evaluate("show('visible')");
		await expect.poll(counts).toEqual({ asked: 2, released: 0 });
		await page.getByRole('link', { name: 'List' }).tap();
		await expect.poll(counts).toEqual({ asked: 2, released: 1 });
		await page.evaluate("show('visible')");
		expect(await counts()).toEqual({ asked: 2, released: 1 });
		await page.close();
	}));
