import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitLabel, lineHeight, type MeasureText, paddingOf } from '../../../../src/core/labels/fitLabel.ts';
import type { LabelLine } from '../../../../src/core/labels/labelLines.ts';
import { labelPages } from '../../../../src/core/labels/labelPages.ts';
import { labelPlace, labelsOnSheet, onLabelSheets } from '../../../../src/core/labels/labelPlaces.ts';
import { labelChoices, onLabel } from '../../../../src/core/labels/onLabel.ts';
import { sheetsOf, usualSheets } from '../../../../src/core/labels/usualSheets.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { inches, minus, mm, plus } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { newShow } from '../../../../src/core/show/newShow.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { papers } from '../../../../src/core/values/papers.ts';
import { runs } from '../../../soak.ts';

const [a4, letter] = usualSheets as [(typeof usualSheets)[number], (typeof usualSheets)[number]];
const segmenter = new Intl.Segmenter(undefined, { granularity: 'grapheme' });
/** How many letters a text has, each with its marks. */
const lettersIn = (text: string): number => [...segmenter.segment(text)].length;
/** Every letter half as wide as its type is high, bold a tenth more. */
const measure: MeasureText = (text, isBold) => lettersIn(text) * (isBold ? 0.55 : 0.5);

test('labels lie at their places exactly, along the rows of the sheet', () => {
	expect(labelPlace(a4, 0)).toEqual({ left: mm(4.65), top: mm(6) });
	expect(labelPlace(a4, 1)).toEqual({ left: mm(106.25), top: mm(6) });
	expect(labelPlace(a4, 9)).toEqual({ left: mm(106.25), top: mm(234) });
	expect(labelPlace(letter, 3)).toEqual({ left: inches(4 + 11 / 32), top: inches(2.5) });
});

test('the usual sheets lie in the middle of their pages, and those of the paper in use come first', () => {
	for (const sheet of usualSheets) {
		const last = labelPlace(sheet, labelsOnSheet(sheet) - 1);
		const { widthMm, heightMm } = papers[sheet.paper];
		expect(minus(mm(widthMm), plus(last.left, sheet.width))).toBe(sheet.left);
		expect(minus(mm(heightMm), plus(last.top, sheet.height))).toBe(sheet.top);
	}
	const own = { ...a4, name: 'Ours' };
	expect(sheetsOf({ labelSheets: [own] }, 'Letter').map(({ name }) => name)).toEqual(['Ours', letter.name, a4.name]);
	expect(sheetsOf({ labelSheets: [{ ...own, name: a4.name }] }, 'A4')).toHaveLength(2);
});

test('a begun sheet goes on at its first free label', () => {
	const [first, second, ...others] = onLabelSheets(['a', 'b', 'c'], a4, 9);
	expect(first).toEqual([...Array.from({ length: 8 }, () => undefined), 'a', 'b']);
	expect([second, others]).toEqual([['c'], []]);
	expect(onLabelSheets(['a'], a4, 11)).toEqual([['a']]); // the sheet has ten
	expect(onLabelSheets([], a4, 4)).toEqual([]);
});

const line = (text: string, more: Partial<LabelLine> = {}): LabelLine => ({
	...{ word: 'title', text, isBold: false, points: 12, leastPoints: 8, hasArrow: false },
	...more,
});
const mmPerPoint = 25.4 / 72;

test('a line that has room keeps its size; a longer one shrinks, and breaks only when it is as small as can be read', () => {
	const sizeOf = (letters: number) =>
		fitLabel([line('a'.repeat(letters))], 60, 40, measure).lines.map(({ points }) => points);
	// 52 mm are 147.4 pt: at 12 pt 24 letters of 6 pt, at 8 pt 36 of 4 pt.
	expect(sizeOf(24)).toEqual([12]);
	expect(sizeOf(25)).toEqual([11.5]);
	expect(sizeOf(36)).toEqual([8]);
	expect(sizeOf(37)).toEqual([12, 12]); // two lines, as large as two lines may be
});

test('words stay whole where they can, and where lines are too many all of them shrink', () => {
	const { lines, shortened } = fitLabel(
		[line('the long shore of the winter estuary at ebb'), line('maker')],
		60,
		17,
		measure,
	);
	expect(lines.map(({ text }) => text)).toEqual(['the long shore of the winter', 'estuary at ebb', 'maker']);
	expect(lines[0]!.points).toBeLessThan(12);
	expect(shortened).toEqual([]);
});

test('what still finds no room is shortened and said, and what comes last is left out before what comes first', () => {
	const { lines, shortened, leftOut } = fitLabel(
		[line('word '.repeat(60).trim()), line('Ines Vale', { word: 'maker' }), line('30 × 20 cm', { word: 'size' })],
		40,
		16,
		measure,
	);
	expect(lines.at(-1)!.text).toBe('30 × 20 cm');
	expect(lines.find(({ text }) => text.endsWith('…'))!.word).toBe('title');
	expect([shortened, leftOut]).toEqual([['title'], []]);
	expect(fitLabel([line('one'), line('two', { word: 'size' })], 40, 6, measure)).toMatchObject({
		shortened: [],
		leftOut: ['size'],
	});
});

test('no line ever runs out of its label, whatever it says and however small the label', () => {
	const text = fc.string({ unit: 'grapheme', maxLength: 120 }).map((each) => each.replace(/\s+/g, ' ').trim() || 'x');
	fc.assert(
		fc.property(
			fc.array(fc.tuple(text, fc.boolean(), fc.boolean()), { minLength: 1, maxLength: 7 }),
			fc.integer({ min: 12, max: 110 }),
			fc.integer({ min: 5, max: 80 }),
			(texts, width, height) => {
				const wanted = texts.map(([each, isBold, hasArrow], at) =>
					line(each, { isBold, hasArrow, leastPoints: at === 0 ? 8 : 7 }),
				);
				const { lines, shortened, leftOut } = fitLabel(wanted, width, height, measure);
				const padding = paddingOf(width, height);
				for (const { text: own, isBold, left, top, points } of lines) {
					expect(left).toBe(padding);
					expect(top).toBeGreaterThanOrEqual(padding - 1e-9);
					expect(top + points * lineHeight * mmPerPoint).toBeLessThanOrEqual(height - padding + 1e-9);
					if (lettersIn(own) > 2)
						expect(left + measure(own, isBold) * points * mmPerPoint).toBeLessThanOrEqual(width - padding + 0.01);
				}
				if (shortened.length + leftOut.length === 0)
					expect(
						lines
							.map((each) => each.text)
							.join('')
							.replaceAll(' ', ''),
					).toBe(
						texts
							.map(([each]) => each)
							.join('')
							.replaceAll(' ', ''),
					);
			},
		),
		{ numRuns: runs(200, 5000) },
	);
});

const rows: Show['rows'] = [
	{
		id: 'a',
		order: 1,
		typed: {
			number: '1',
			title: 'Ebb',
			maker: 'Ines Vale',
			edition: '3/25',
			medium: 'Pigment print',
			year: '2024',
			price: '120',
			buyer: 'Tomas Reed',
			'picture width': '300',
			'picture height': '200',
		},
	},
	{
		id: 'b',
		order: 2,
		typed: { title: 'For Ines Vale', maker: 'Ines Vale', copies: '2', 'picture width': '300', 'picture height': '200' },
	},
	{ id: 'c', order: 3, typed: {} },
];

function labelsOf(
	kind: 'back' | 'wall',
	typed: TypedSettings,
	more: Partial<Show> = {},
	isOnlyNew = false,
	group = {},
) {
	const { settings } = readSettings(typed);
	const show: Show = { ...newShow('s'), settings: typed, rows, ...more };
	const results = show.rows.map((row) => judgeRow(row, settings));
	const run = { kind, sheet: a4, start: 1, isOnlyNew, group, show, results, settings, costOf: () => undefined };
	const made = labelPages(run, measure);
	const texts = made.pages.flat().map((label) => label?.lines.map(({ text }) => text).join(' | '));
	return { ...made, texts, whole: JSON.stringify(made) };
}

test('what stands on the wall and on the back: a label for each copy, and never who bought it', () => {
	const everything = {
		currency: 'EUR',
		labelContents: {
			back: 'this way up, title, maker, number, medium, edition, year, size, price',
			wall: 'title, maker, number, medium, edition, year, size, price',
		},
	};
	const wall = labelsOf('wall', everything);
	expect(wall.texts).toEqual([
		'Ebb | Ines Vale | Pigment print, 2024 | 200 × 300 mm (h × w) | No. 1, Edition 3/25 | 120.00 EUR',
		'For Ines Vale | Ines Vale | 200 × 300 mm (h × w)',
		'For Ines Vale | Ines Vale | 200 × 300 mm (h × w)',
	]);
	expect(wall.count).toBe(3);
	expect(wall.says).toEqual([]);
	expect(labelsOf('back', everything).texts[0]).toMatch(/^This way up \| Ebb \| Ines Vale/);
	for (const kind of ['back', 'wall'] as const) expect(labelsOf(kind, everything).whole).not.toContain('Reed');
});

test('where the rules of the show forbid the name, it stands on no label on the back, whatever was chosen', () => {
	const forbidden = { labels: { name: 'forbidden' }, labelContents: { back: ['title', 'maker'] } };
	const back = labelsOf('back', forbidden);
	expect(back.texts).toEqual(['Ebb', 'For Ines Vale', 'For Ines Vale']);
	expect(back.says).toEqual([
		'For Ines Vale: the maker’s name is in another cell that is printed, and the rules of the show forbid it.',
	]);
	expect(labelsOf('wall', forbidden).whole).toContain('Ines Vale');
});

test.each([
	['forbidden', ['maker'], false, true],
	['required', ['title'], true, true],
	['free', ['title'], false, false],
	['free', ['maker'], true, false],
])('name %s, chosen %j: the box is on %s, and says why it cannot be changed %s', (name, back, isOn, isRuled) => {
	const { settings } = readSettings({ labels: { name }, labelContents: { back } });
	const maker = labelChoices('back', settings).find(({ word }) => word === 'maker')!;
	expect([maker.isOn, maker.ruled !== undefined]).toEqual([isOn, isRuled]);
	expect(onLabel('back', settings).has('maker')).toBe(isOn);
	expect(labelChoices('wall', settings).every(({ ruled }) => ruled === undefined)).toBe(true);
});

test('a print that can’t be cut yet has no label that says its size: it may be a wrong one, and stays on the frame', () => {
	const slip = { title: 'Buoy shed', 'picture width': '51.2', 'picture height': '36', 'mount width': '700' };
	const own: Show['rows'] = [
		rows[0]!,
		{ id: 'd', order: 2, typed: slip },
		...Array.from({ length: 8 }, (_, at) => ({
			id: `e${at}`,
			order: 3 + at,
			typed: { title: `T${at}`, side: '7 elephants' },
		})),
	];
	const withSize = labelsOf('back', { labelContents: { back: ['title', 'size'] } }, { rows: own });
	expect(withSize.texts).toEqual(['Ebb | 200 × 300 mm (h × w)']);
	expect(withSize.says).toEqual([
		'Can’t be cut yet, so no label with a size: Buoy shed (Wrong unit?), ' +
			[0, 1, 2, 3, 4].map((at) => `T${at} (Not understood)`).join(', ') +
			' and 3 more.',
	]);
	// Without its size there is nothing on it that may be wrong.
	const bare = labelsOf('back', { labelContents: { back: ['title'] } }, { rows: own });
	expect([bare.count, bare.says]).toEqual([10, []]);
});

test('of copies that are ticked off as labelled none gets another label', () => {
	const made = [
		{ row: 'a', copy: 1, step: 'printed' },
		{ row: 'b', copy: 1, step: 'labelled' },
	] as const;
	const { pages } = labelsOf('back', {}, { made }, true);
	expect(pages.flat().map((label) => label && [label.place, label.copy])).toEqual([
		[0, 1],
		[1, 2],
	]);
});
