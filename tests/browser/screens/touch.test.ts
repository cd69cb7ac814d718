import { expect, test } from 'vitest';
import { coverAllBut, tapUntil } from '../grid/fingers.ts';
import { axeProblems } from '../harness/axe.ts';
import { enlargeText } from '../harness/lostText.ts';
import { phone } from '../harness/stage.ts';
import { oneStage } from './oneStage.ts';
import { focused, heard, openHands } from './hands.ts';
import { activeCell, at, cell, press, seen, startTyping } from './prints.ts';

const play = oneStage({ isPlanned: false, isInOnePage: true, hasTouch: true });
const phonePlay = oneStage({ viewport: phone, hasTouch: true, reducedMotion: 'reduce' });

test('a tap takes a cell, a second tap opens it, a tap elsewhere keeps what was typed', () =>
	play(async (page) => {
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await cell(page, 0, 'picture width').tap();
		await expect.poll(() => activeCell(page)).toBe(at(0, 'picture width'));
		const editor = page.getByRole('textbox', { name: 'Picture width, row 1' });
		expect(await editor.count()).toBe(0);
		await cell(page, 0, 'picture width').tap();
		expect(await editor.evaluate((input) => document.activeElement === input)).toBe(true);
		expect(await editor.getAttribute('inputmode')).toBe('decimal');
		expect(await editor.evaluate((input) => parseFloat(getComputedStyle(input).fontSize))).toBeGreaterThanOrEqual(16);
		await page.keyboard.type('30');
		await page.getByRole('button', { name: 'cm', exact: true }).tap(); // which a keypad of figures lacks
		await expect.poll(() => editor.inputValue()).toBe('30cm');
		await cell(page, 0, 'picture height').tap();
		await expect.poll(() => seen(page, 0, 'picture width')).toBe('300 typed');
		await expect.poll(() => activeCell(page)).toBe(at(0, 'picture height'));
		await page.getByRole('button', { name: 'Add print' }).tap();
		await expect.poll(() => activeCell(page)).toBe(at(1, 'title'));
		await page.getByRole('textbox', { name: 'Title, row 2' }).waitFor(); // the keyboard is there with it
		await page.getByRole('button', { name: 'More…' }).tap();
		await page.getByRole('menuitem', { name: 'Move up' }).tap();
		await expect.poll(() => seen(page, 1, 'picture width')).toBe('300 typed');
	}));

test('a long press opens the row menu', () =>
	play(async (page, stage) => {
		await startTyping(page);
		const box = (await cell(page, 0, 'title').boundingBox())!;
		const debug = await stage.context.newCDPSession(page);
		const touchPoints = [{ x: box.x + 20, y: box.y + 20 }];
		await debug.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
		await page.getByRole('menuitem', { name: 'Duplicate' }).waitFor();
		await debug.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
		expect(await page.getByRole('menu').count(), 'lifting the finger leaves it open').toBe(1);
	}));

test('a phone shows one print at a time, with the same cells', () =>
	phonePlay(async (page) => {
		await page.getByRole('button', { name: 'Start typing' }).tap();
		await page.getByRole('textbox', { name: /^Picture width/ }).fill('456 x 306');
		await press(page, 'Tab');
		expect(await page.getByRole('textbox', { name: /^Picture height/ }).inputValue()).toBe('306');
		expect(await page.getByRole('textbox', { name: /^Window width/ }).getAttribute('placeholder')).toBe('450');
		await page.getByRole('button', { name: 'Add print' }).tap();
		await page.getByText('New print', { exact: true }).waitFor();
		await page.getByRole('button', { name: 'Back' }).tap();
		await page.getByText('Print 1 of 1').waitFor(); // one in which nothing is typed is none
		expect(await page.getByRole('textbox', { name: /^Picture width/ }).inputValue()).toBe('456');
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
		expect(await axeProblems(page)).toEqual([]);
		await enlargeText(page, 2);
		const [name, reminder] = await page
			.locator('header :is(.name, .reminder)')
			.evaluateAll((all) => all.map((each) => each.getBoundingClientRect()));
		expect(reminder!.top, 'in larger text too, each has its line').toBeGreaterThan(name!.bottom - 4);
	}));

test('on a phone one reads, corrects and ticks: found by words, mended, typed with keys of our own, cut', () =>
	phonePlay(async (page) => {
		await page.getByRole('button', { name: 'Load the example' }).tap();
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		const focused = () => page.evaluate(() => document.activeElement!.tagName);
		expect(await focused(), 'no keyboard comes up over an example').toBe('H1');
		await page.getByRole('button', { name: 'Close' }).first().tap();
		await page.getByRole('searchbox', { name: 'Find prints' }).tap();
		await page.locator('input:focus').waitFor(); // a text put in comes faster than a tap
		await page.keyboard.insertText('rope');
		await page.getByText('Print 1 of 2').waitFor();
		await page.getByRole('heading', { name: '10 Rope, coiled' }).waitFor();
		await page.getByRole('button', { name: 'Print 1 of 2' }).tap();
		const list = page.getByRole('region', { name: 'Prints' });
		expect(await list.boundingBox(), 'a list of prints has the whole page').toMatchObject({ x: 0, y: 0, ...phone });
		expect(await axeProblems(page)).toEqual([]);
		await list.getByRole('button', { name: /^11 / }).tap();
		await page.getByText('Print 2 of 2').waitFor();
		await page.getByRole('button', { name: 'Back' }).tap();
		await page.getByText('Print 1 of 2').waitFor();
		const width = page.getByRole('textbox', { name: /^Picture width/ });
		await width.tap();
		expect(await width.getAttribute('inputmode')).toBe('decimal');
		await coverAllBut(page, 500);
		const isSeen = async () => {
			const keys = (await page.getByRole('toolbar', { name: 'Keys for lengths' }).boundingBox())!;
			const box = (await width.boundingBox())!;
			return box.y > 60 && box.y + box.height <= keys.y && keys.y + keys.height <= 501;
		};
		await expect.poll(isSeen).toBe(true);
		const foot = page.getByRole('toolbar', { name: 'Prints' });
		expect(await foot.isVisible(), 'the keyboard has the room of the foot').toBe(false);
		expect(await axeProblems(page)).toEqual([]);
		await width.fill('31');
		await page.getByRole('button', { name: 'cm', exact: true }).tap();
		await coverAllBut(page, 844);
		expect(await foot.isVisible()).toBe(true);
		const isAtLast = () => page.getByText('Print 2 of 2').isVisible();
		await tapUntil(page.getByRole('button', { name: 'Next' }), isAtLast);
		await page.getByRole('button', { name: 'Back' }).tap();
		await expect.poll(() => width.inputValue()).toBe('31cm');
		await page.getByRole('searchbox', { name: 'Find prints' }).fill('');
		await page.getByRole('button', { name: 'Filter' }).tap();
		await page.getByRole('combobox', { name: 'Checks' }).selectOption('look');
		expect(await foot.isVisible(), 'the filter has the whole page').toBe(false);
		await page.getByRole('button', { name: 'Show 2 prints' }).tap();
		await page.getByText(/Print \d of 2/).waitFor();
		// What is said of a print comes after its fields. The gravest finding is shown; the others open with a touch.
		const title = await page.getByRole('textbox', { name: 'Title' }).inputValue();
		await page.locator('#print-name').filter({ hasText: title }).waitFor();
		const accept = page.getByRole('button', { name: 'Leave it' }).first();
		const more = page.getByRole('button', { name: /^Show \d+ more/ });
		await accept.or(more).first().waitFor();
		if (!(await accept.isVisible())) await more.tap();
		await accept.tap();
		await page.getByRole('button', { name: 'Places, Prints' }).tap();
		await page.getByRole('link', { name: 'Bench', exact: true }).tap();
		const start = page.getByRole('link', { name: 'Start cutting sheets' });
		expect(await start.boundingBox(), 'the main button is the foot').toEqual({
			...{ x: 16, y: phone.height - 56, width: phone.width - 32, height: 48 },
		});
		// Beside the title a word ends on the edge of the page; buttons begin on the other edge, under it.
		const word = (await page.getByRole('link', { name: 'Bench settings' }).boundingBox())!;
		const button = (await page.getByRole('link', { name: 'Print on paper' }).boundingBox())!;
		expect(word.x + word.width).toBeCloseTo(phone.width - 16 + 15, 0); // with its room to press
		expect([button.x, button.y >= word.y + word.height]).toEqual([16, true]);
		expect(await page.locator('header .reminder').isVisible(), 'what is not backed up').toBe(true);
		await page.getByRole('link', { name: 'Start cutting windows' }).tap();
		const ticks = page.locator('main [aria-pressed=false]');
		await page.getByRole('button', { name: 'Next' }).first().tap();
		await ticks.first().waitFor();
		const before = await ticks.count();
		const drawing = (await page.getByRole('img', { name: /^Back of/ }).boundingBox())!;
		const lastTick = (await ticks.last().boundingBox())!;
		expect(lastTick.y + lastTick.height, 'what the button books is over the drawing').toBeLessThan(drawing.y);
		await ticks.first().tap();
		await expect.poll(() => ticks.count()).toBe(before - 1);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
	}));

test('on a phone a list opens, the field stays where it is, an unread cell says why, and mends are whole', () =>
	phonePlay(async (page) => {
		await openHands(page, { note: 'Signed below\nby hand' });
		await page.getByRole('button', { name: 'Close', exact: true }).first().tap();
		const note = await page.getByRole('textbox', { name: 'Note' }).inputValue();
		expect(note, 'a field has one line, and keeps the words of two apart').toBe('Signed below↵by hand');
		const surface = page.getByRole('combobox', { name: 'Surface' });
		await surface.tap();
		await page.getByRole('option', { name: 'satin' }).tap();
		await expect
			.poll(async () => [await surface.inputValue(), await page.getByRole('option').count()])
			.toEqual(['satin', 0]);
		await surface.fill('shiny');
		await press(page, 'Enter');
		expect(await focused(page), 'Enter goes to the next field').toBe('Board');
		const why = await surface.getAttribute('aria-describedby');
		await expect.poll(() => page.locator(`[id="${why ?? ''}"]`).innerText()).toMatch(/“shiny” is not a surface/);
		await surface.tap(); // the list is over the field's own words
		await page.getByRole('option', { name: 'matt', exact: true }).tap();

		const side = page.getByRole('textbox', { name: /^Side border/ });
		await side.tap();
		const top = async () => (await side.boundingBox())!.y;
		// In the middle of the screen: near its foot the page would scroll for the next field.
		await side.evaluate((field) => field.scrollIntoView({ block: 'center' }));
		const [before, sentences] = [await top(), page.locator('#sentences')];
		const height = async () => (await sentences.boundingBox())!.height;
		const heightBefore = await height();
		await page.keyboard.type('20'); // a mount of its own, thin borders: to look at
		await press(page, 'Tab');
		await expect.poll(height).toBeGreaterThan(heightBefore + 100);
		await expect.poll(async () => Math.abs((await top()) - before)).toBeLessThan(2);
		expect(await sentences.innerText()).toMatch(/Check/);
		expect(await heard(page)).toMatch(/mount/);
		await page.locator('.prints').evaluate((scroller) => scroller.scrollTo(0, 0));
		const covered = await page.locator('#sentences button').evaluateAll((all) =>
			all.filter((each) => {
				const box = each.getBoundingClientRect();
				const seen = document.elementFromPoint(box.x + box.width / 2, box.bottom - 4);
				return seen !== null && !each.contains(seen);
			}),
		);
		expect(covered, 'mends are not cut off').toEqual([]);
		expect(await axeProblems(page)).toEqual([]);
	}));
