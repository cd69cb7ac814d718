import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import type { GetKind } from '../../../../src/core/order/getLine.ts';
import { getPageMm, getPages } from '../../../../src/core/order/getPages.ts';
import {
	notGotSentences,
	printsWords,
	shareWords,
	sticksTitle,
	totalWords,
	withoutPriceWords,
} from '../../../../src/core/order/getSentences.ts';
import { whatToGet } from '../../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { packBoards } from '../../../../src/core/sheets/packBoards.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { planAllSticks } from '../../../../src/core/sticks/planSticks.ts';
import { stickJobsOf } from '../../../../src/core/sticks/stickJobsOf.ts';
import { type Paper, paperRoom, papers } from '../../../../src/core/values/papers.ts';

const print: Typed = { 'picture width': '300', 'picture height': '200', board: 'White' };

function toGetOf(cells: readonly Typed[], show: TypedSettings) {
	const { settings } = readSettings(show);
	const rows = cells.map((typed, place) => ({ id: `r${place}`, order: place, typed }));
	const results = rows.map((row) => judgeRow(row, settings));
	const jobs = jobsOf(rows, results, settings).jobs.filter(({ stock }) => stock.length > 0);
	const plans = packBoards(jobs, { secondsLeft: () => 0.2 });
	const sticks = planAllSticks(stickJobsOf(rows, results, settings), { secondsLeft: () => 0.2 });
	const nameOf = (place: number) => `Print ${place + 1}`;
	return { toGet: whatToGet({ rows, results, settings, plans, sticks }), settings, nameOf };
}

const show = {
	currency: 'EUR',
	boards: [{ name: 'White', width: 1000, height: 800, price: '10' }],
	frames: [
		{ name: 'Oak', moulding: 20, lip: 6, depth: 40, stick: 2400, price: '18.50' },
		{ name: 'Short', moulding: 20, lip: 6, depth: 40, stick: 500 },
		{ name: 'Raw', stick: 2400 },
	],
	glazing: [{ name: 'Clear', material: 'glass', width: 450, height: 450 }],
};

test('the sums say what has no price, and what each maker pays', () => {
	const cells = [
		{ ...print, maker: 'Ana', frame: 'Oak' },
		{ ...print, maker: 'Bo', frame: 'none' },
	];
	const { toGet, settings } = toGetOf(cells, show);
	expect(totalWords(toGet, settings.currency)).toMatch(/^Total \d+\.\d\d EUR$/);
	expect(withoutPriceWords(toGet)).toMatch(/^Not in the total, because they have no price: .*tape/);
	expect(shareWords(toGet, settings.currency)).toEqual([
		expect.stringMatching(/^Ana: /),
		expect.stringMatching(/^Bo: /),
	]);
	const unpriced = toGetOf([print], { boards: [{ name: 'White', width: 1000, height: 800 }] }).toGet;
	expect([totalWords(unpriced, undefined), withoutPriceWords(unpriced)]).toEqual([
		'No prices yet',
		'Type prices in the settings to see what each maker pays.',
	]);
	expect(shareWords(unpriced, undefined)).toEqual([]);
});

test('what cannot be got is said, each once', () => {
	const cells = [
		{ ...print, frame: 'Oak', copies: '2' },
		{ ...print, frame: 'Short', glazing: 'none' },
		{ ...print, frame: 'Raw', glazing: 'none' },
		{ ...print, frame: 'Oak' },
	];
	const { toGet, settings, nameOf } = toGetOf(cells, show);
	expect(notGotSentences(toGet, nameOf, settings)).toEqual([
		'3 blanks of 500 × 400 mm for Print 1 and Print 4: no sheet or ready-cut blank of “Clear” gives this size. Add a larger one, or another board.',
		'“Raw” needs its face width and lip in the settings before lengths are planned for Print 3.',
	]);
	expect(toGet.sticks.map(sticksTitle)).toEqual(['Oak, 3 lengths']);
});

test('a board in stock that is used up is not called too small', () => {
	const boards = [{ name: 'White', width: 500, height: 400, count: 1 }];
	const { toGet, settings, nameOf } = toGetOf([{ ...print, copies: '2' }, print], { boards });
	expect(notGotSentences(toGet, nameOf, settings)).toEqual([
		'2 blanks of 500 × 400 mm for Print 1 and Print 2: the “White” in stock is used up. To buy more, add it to the list once more, with “In stock” left blank.',
	]);
});

test.each<Paper>(['A4', 'Letter'])('on %s nothing is lost, and no page holds more than there is room for', (paper) => {
	const cells = Array.from({ length: 60 }, (_, place) => ({ ...print, maker: `Maker ${place % 7}`, frame: 'Oak' }));
	const { toGet, settings, nameOf } = toGetOf(cells, show);
	const leftOut = [{ name: 'Print 61', words: 'Its size is not known yet.' }];
	const pages = getPages(toGet, leftOut, nameOf, settings, paper);
	const { margin, head, foot } = paperRoom;
	for (const page of pages) {
		const heights = page.flatMap(({ items }) => [
			getPageMm.head,
			...items.map((item) => (item.line ? getPageMm.line : item.mm)),
		]);
		const used = heights.reduce((sum, mm) => sum + mm, 0);
		expect(used).toBeLessThanOrEqual(papers[paper].heightMm - 2 * margin - head - foot);
	}
	const items = pages.flat().flatMap((part) => part.items);
	expect(items.flatMap(({ line }) => line ?? [])).toEqual(toGet.lines);
	const words = items.flatMap((item) => (item.line ? [] : [item]));
	const sticks = toGet.sticks.flatMap(({ sticks: own }) => own);
	expect(words.filter(({ isTicked }) => isTicked)).toHaveLength(sticks.length);
	expect(new Set(words.flatMap(({ isTicked, mm }) => (isTicked ? [mm] : []))).size, 'they stand evenly').toBe(1);
	const whole = words.map((item) => item.words).join('\n');
	for (const said of [
		'Print 1,',
		'Print 60',
		'Clamp the moulding',
		'Shared by how much each maker’s prints use, whole packs.',
		'Maker 6: ',
		'Print 61: Its size is not known yet.',
	])
		expect(whole).toContain(said);
	expect(pages.flat().map((part) => part.head)).toEqual(
		expect.arrayContaining(['Boards', 'Moulding', 'To saw: Oak, 50 lengths', 'Left out']),
	);
});

test('while plans are looked for, the sum says for what they are missing, on paper too', () => {
	const { toGet, settings, nameOf } = toGetOf([{ ...print, frame: 'Oak' }], show);
	const wordsOf = (notYet: readonly string[]) =>
		getPages(toGet, [], nameOf, settings, 'A4', notYet)
			.flat()
			.flatMap(({ items }) => items.flatMap((item) => (item.line ? [] : [item.words])));
	const said = 'Not final: still being worked out for Chalk and lengths of moulding.';
	expect(wordsOf(['Chalk', 'lengths of moulding'])).toContain(said);
	expect(wordsOf([]).filter((words) => words.startsWith('Not final'))).toEqual([]);
});

test('on paper the sum comes before how the moulding is sawn, and says that it is not the last', () => {
	const { toGet, settings, nameOf } = toGetOf([{ ...print, frame: 'Oak' }], show);
	const headsOf = (notYet: readonly string[]) =>
		getPages(toGet, [], nameOf, settings, 'A4', notYet)
			.flat()
			.map(({ head }) => head.replace(/ [\d.]+ EUR$/, ''))
			.filter((head) => /^(Total|To saw)/.test(head));
	expect(headsOf([])).toEqual(['Total', 'To saw: Oak, 1 length']);
	const sawn = getPages(toGet, [], nameOf, settings, 'A4')
		.flat()
		.find(({ head }) => head.startsWith('To saw'))!;
	const [, caution, first] = sawn.items.map((item) => (item.line ? undefined : item));
	expect(first!.words).toMatch(/^Length 1: .* left$/);
	expect(caution!.mm % 4.5, 'room before the first box').toBeCloseTo(3);
	expect(headsOf(['Chalk'])).toEqual(['Total so far', 'To saw: Oak, 1 length']);
});

test('prints with more copies than one are counted both ways', () => {
	expect([printsWords(6, 7), printsWords(1, 1), printsWords(1, 3)]).toEqual([
		'6 prints, 7 copies',
		'1 print',
		'1 print, 3 copies',
	]);
});

test('on paper a kind whose figures may still change says so in its head, and no other', () => {
	const { toGet, settings, nameOf } = toGetOf([{ ...print, frame: 'Oak' }], show);
	const headsOf = (open: readonly GetKind[]) =>
		getPages(toGet, [], nameOf, settings, 'A4', [], open)
			.flat()
			.map(({ head }) => head)
			.filter((head) => /^(Boards|Bumpers)/.test(head));
	expect(headsOf(['board', 'glazing'])).toEqual(['Boards, not final yet', 'Bumpers']);
	expect(headsOf([])).toEqual(['Boards', 'Bumpers']);
});

test('on paper no kind is left out because its plan is not there yet', () => {
	const { toGet, settings, nameOf } = toGetOf([{ ...print, frame: 'Oak' }], show);
	const planned: readonly GetKind[] = ['board', 'glazing', 'backing', 'stick'];
	const without = { ...toGet, lines: toGet.lines.filter(({ kind }) => !planned.includes(kind)) };
	const partsOf = (open: readonly GetKind[]) =>
		getPages(without, [], nameOf, settings, 'A4', [], open)
			.flat()
			.filter(({ head }) => ['Boards', 'Glazing', 'Backing', 'Moulding'].includes(head))
			.map(({ head, items }) => [head, items.map((item) => (item.line ? [] : [item.words, item.isTicked]))]);
	expect(partsOf(planned)).toEqual(
		['Boards', 'Glazing', 'Backing', 'Moulding'].map((head) => [
			head,
			[[`${head}, not worked out yet. Don’t buy from this list.`, true]],
		]),
	);
	expect(partsOf([])).toEqual([]);
});

test('where nothing is to be got there is no page', () => {
	const { toGet, settings, nameOf } = toGetOf([], show);
	expect(getPages(toGet, [], nameOf, settings, 'A4')).toEqual([]);
});

test('for which prints a line is, is said once', () => {
	const { toGet, settings, nameOf } = toGetOf([{ ...print, frame: 'Oak' }], show);
	const wordsOf = (saidOfStick: string) =>
		getPages(toGet, [], nameOf, settings, 'A4', [], [], ({ kind }) => (kind === 'stick' ? [saidOfStick] : []))
			.flat()
			.filter(({ head }) => head === 'Moulding')
			.flatMap(({ items }) => items.flatMap((item) => (item.line ? [] : [item.words])));
	expect(wordsOf('Rebate 303 × 203 mm, for Print 1.')).toEqual(['Rebate 303 × 203 mm, for Print 1.']);
	for (const said of ['Rebate 303 × 203 mm, for 13 prints.', 'Rebate 303 × 203 mm, for Print 12.'])
		expect(wordsOf(said)).toEqual([said, 'For Print 1']);
});
