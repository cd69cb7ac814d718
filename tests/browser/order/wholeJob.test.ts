import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goBehindName } from '../harness/behindName.ts';
import { pagesOf } from '../harness/pdfPages.ts';
import { oneStage } from '../screens/oneStage.ts';

const play = oneStage({ hasTouch: true, reducedMotion: 'reduce' });

/** What a person does with a finger: taps, and the keys of the keyboard on the screen. */
class Finger {
	taps = 0;
	keys = 0;
	readonly page: Page;

	constructor(page: Page) {
		this.page = page;
	}

	async tap(what: Locator): Promise<void> {
		await what.tap();
		this.taps++;
	}

	/** Taps a field and types into it; the tap on what comes next leaves it. */
	async type(label: string, text: string): Promise<void> {
		await this.tap(this.page.getByLabel(label, { exact: true }));
		await this.page.keyboard.type(text);
		this.keys += text.length;
	}

	/** Pastes what was copied elsewhere: a long press, and a tap on what the device offers. */
	async paste(text: string): Promise<void> {
		await this.page.locator('textarea:focus').waitFor(); // a text put in comes faster than a tap
		await this.page.keyboard.insertText(text);
		this.taps += 2;
	}

	/** Opens a section of the settings. */
	section(name: string): Promise<void> {
		const list = this.page.getByRole('navigation', { name: 'Sections of the settings' });
		return this.tap(list.getByRole('link', { name, exact: true }));
	}

	/** Types an entry of a list of the settings, and adds it. */
	async add(word: string, fields: Readonly<Record<string, string>>): Promise<void> {
		for (const [label, text] of Object.entries(fields)) await this.type(`${label}, new ${word}`, text);
		await this.tap(this.page.getByRole('button', { name: `Add ${word}`, exact: true }));
		await this.page.getByRole('button', { name: new RegExp(`^${fields['Name']!} `) }).waitFor();
	}
}

const lines = Array.from({ length: 30 }, (_, place) => {
	const isLarge = place % 3 > 0;
	const [paper, frame] = isLarge ? ['Cotton A2', 'Large ash'] : ['Cotton A3', 'Small ash'];
	return [place + 1, `Tide ${place + 1}`, place < 18 ? 'Ada Holm' : 'Ruben Falk', '3:2', paper, frame].join('\t');
});
const text = [['number', 'title', 'maker', 'shape', 'paper', 'frame'].join('\t'), ...lines].join('\n');

/** How long a person takes, in seconds: to find and tap something, and for a key. */
const seconds = { tap: 2, key: 0.5 };

// In the soak alone. In parts: what is typed into the settings, in `boards/boards.test.ts` and `screens/settings.test.ts`; pasted rows, in
// `screens/start.test.ts`; plans, what to get and the print list, planned and on paper, in `toGet.test.ts` and
// `printList.test.ts`; and all of it one after the other, with the example, in `example.test.ts`.
test('by touch: frames, papers and boards typed, thirty rows pasted, glass and backing planned, both lists on paper', () =>
	play(async (page) => {
		const finger = new Finger(page);
		await goBehindName(page, 'Settings', (what) => finger.tap(what));
		const board = { Width: '1200', Height: '900' };
		await finger.section('Boards');
		await finger.add('board', { Name: 'Chalk', ...board, 'Price of a pack': '9' });
		await finger.section('Glazing and supplies');
		await finger.add('glazing', { Name: 'Clear', ...board, 'Price of a pack': '14' });
		await finger.add('backing', { Name: 'Grey', ...board, 'Price of a pack': '8' });
		const profile = { 'Rebate depth': '20', Lip: '6', 'Face width': '20' };
		await finger.section('Frames');
		await finger.add('frame', {
			Name: 'Large ash',
			Width: '700',
			Height: '550',
			...profile,
			Price: '38',
			'In stock': '12',
		});
		await finger.add('frame', { Name: 'Small ash', Width: '520', Height: '420', ...profile, Price: '29' });
		await finger.section('Papers');
		await finger.add('paper', {
			Name: 'Cotton A2',
			Width: '594',
			Height: '420',
			'Printer’s margin': '5',
			'In a pack': '10',
		});
		await finger.add('paper', {
			Name: 'Cotton A3',
			Width: '420',
			Height: '297',
			'Printer’s margin': '5',
			'In a pack': '10',
		});

		await finger.tap(page.getByRole('link', { name: 'Prints', exact: true }));
		await finger.tap(page.getByRole('button', { name: 'Paste rows' }));
		await finger.paste(text);
		await finger.tap(page.getByRole('button', { name: 'Import rows', exact: true }));
		await page.getByRole('toolbar', { name: 'Prints' }).waitFor();
		expect(await page.getByRole('button', { name: /can’t be cut yet/ }).count(), 'nothing stands in the way').toBe(0);

		await finger.tap(page.getByRole('link', { name: 'Boards' }));
		for (const name of ['Chalk', 'Clear', 'Grey'])
			await page
				.getByRole('region', { name: new RegExp(`^${name}`) })
				.getByText(/^No (cheaper plan exists|plan uses fewer sheets)/)
				.waitFor();
		await finger.tap(page.getByRole('main').getByRole('link', { name: 'To get', exact: true }));
		const line = (name: string) =>
			page
				.getByRole('row')
				.filter({ has: page.getByText(name, { exact: true }) })
				.getByRole('cell');
		// Twenty prints are in the large frame, of which there are 12; ten in the small one, of which there are none.
		expect((await line('Large ash').allInnerTexts()).slice(0, 2)).toEqual(['20', '12']);
		expect(await line('Small ash').last().innerText()).toBe('290.00');
		await finger.tap(page.getByRole('link', { name: 'Print on paper' }));
		await page.locator('article').first().waitFor();
		const toGet = (await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })))).flatMap(({ texts }) =>
			texts.map((each) => each.text),
		);
		for (const name of ['Chalk', 'Clear', 'Grey', 'Large ash', 'Small ash', 'Cotton A2', 'Cotton A3'])
			expect(toGet.join(' '), 'what to get, on paper').toContain(name);
		await finger.tap(page.getByRole('checkbox', { name: /^Pictures to print/ }));
		await page.getByRole('heading', { name: /^Cotton A3/ }).waitFor();
		const prints = (await pagesOf(new Uint8Array(await page.pdf({ preferCSSPageSize: true }))))
			.flatMap(({ texts }) => texts.map((each) => each.text))
			.join(' ');
		for (const place of [1, 2, 15, 30]) expect(prints, 'the pictures to print, on paper').toContain(`Tide ${place}`);

		expect({ taps: finger.taps, keys: finger.keys }).toEqual({ taps: 59, keys: 121 });
		expect(finger.taps * seconds.tap + finger.keys * seconds.key, 'six minutes at most').toBeLessThanOrEqual(6 * 60);
	}));
