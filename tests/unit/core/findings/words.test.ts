import { describe, expect, test } from 'vitest';
import { acceptanceOf } from '../../../../src/core/findings/accepted.ts';
import type { Code, FiguresByCode } from '../../../../src/core/findings/figures.ts';
import type { FiguresOfOffers, Offer } from '../../../../src/core/findings/offers.ts';
import { labelOf, sentenceOf } from '../../../../src/core/findings/words/inWords.ts';
import { inches, mm } from '../../../../src/core/length/length.ts';

const scale = { unit: 'mm', ruler: mm(1) } as const;
const size = (width: number, height: number) => ({ width: mm(width), height: mm(height) });

/** What each code can find, each kind of it once. */
const samples: { readonly [C in Code]: readonly FiguresByCode[C][] } = {
	'not-read': [{ column: 'side', problem: '“x” is not a length' }],
	'adds-up': [
		{ kind: 'mount cell', axis: 'width', mount: mm(600), named: mm(500) },
		{ kind: 'cover', axis: 'width', picture: mm(456), asked: mm(450), overlap: mm(3), window: mm(446), more: mm(-4) },
		{
			kind: 'cover',
			axis: 'height',
			picture: mm(306),
			asked: mm(328),
			reveal: mm(6),
			signingSpace: mm(10),
			window: mm(330),
			more: mm(2),
		},
		{ kind: 'sum', parts: [mm(70), mm(310), mm(84)], total: mm(464), more: mm(14), mount: mm(450) },
		{ kind: 'all typed', axis: 'width' },
	],
	'does-not-fit': [
		{ kind: 'too large', axis: 'width', most: mm(20_000) },
		{ kind: 'all covered', axis: 'width', picture: mm(5), covered: mm(6) },
		{ kind: 'window too large', axis: 'width', of: 'window', window: mm(399), larger: mm(40), mount: mm(359) },
		{ kind: 'no window', axis: 'height', of: 'window', borders: [mm(70), mm(80)], left: mm(-50), mount: mm(100) },
		{
			kind: 'no border',
			axis: 'width',
			of: 'window',
			border: mm(80),
			window: mm(530),
			both: mm(610),
			mount: mm(600),
			left: mm(-10),
		},
		{ kind: 'other axis', axis: 'width', other: 'height' },
		{ kind: 'all reveal', axis: 'width', picture: mm(-2), window: mm(18) },
		{ kind: 'window below nothing', axis: 'height', window: mm(-1) },
		{ kind: 'ruler', axis: 'width', ruler: mm(1), mount: mm(3) },
	],
	'falls-through': [{ axis: 'width', window: mm(400), larger: mm(10), paper: mm(390) }],
	'paper-short': [
		{ kind: 'smaller', axis: 'width', paper: size(297, 420), short: mm(3), picture: mm(300) },
		{ kind: 'past the edge', edge: 'left', past: mm(3) },
		{ kind: 'hardly held', at: 'side', reaches: mm(2), held: { usual: mm(5) } },
		{ kind: 'hardly held', at: 'top', reaches: mm(-2), held: { usual: mm(5) } },
	],
	'over-limit': [{ kind: 'largest', mount: size(701, 500), limit: size(700, 499), within: mm(2) }],
	'under-limit': [
		{ kind: 'exact', mount: size(399, 300), limit: size(400, 301), within: mm(1) },
		{ kind: 'picture area', area: { mm2: 29_980 }, least: { mm2: 30_000 } },
	],
	'too-thick': [{ what: ['mount', 'print'], parts: [mm(1.4), mm(0.3)], total: mm(1.7), most: mm(1.5) }],
	'frame-clash': [
		{ kind: 'not listed', frame: 'Elm' },
		{ kind: 'too large', what: 'mount', axis: 'width', inside: mm(506), frame: 'Oak', over: mm(4), rebate: mm(502) },
		{ kind: 'gap', what: 'paper', axis: 'height', inside: mm(490), frame: 'Oak', play: mm(12), lip: mm(6) },
		{
			kind: 'unusual play',
			what: 'picture',
			axis: 'width',
			inside: mm(501.5),
			frame: 'Oak',
			play: mm(0.5),
			least: { usual: mm(1) },
			most: { usual: mm(5) },
		},
	],
	'too-deep': [
		{ what: ['glazing', 'mount', 'print'], parts: [mm(2), mm(1.4)], total: mm(3.4), depth: mm(3), left: mm(-0.4) },
		{ what: ['spacer', 'print'], parts: [mm(3), mm(5)], total: mm(8), depth: mm(9), left: mm(1), points: mm(2) },
	],
	'no-board': [
		{ kind: 'not in stock', board: 'Ochre', part: 'mount' },
		{ kind: 'too small', board: 'Chalk', part: 'undermount', blank: size(701, 450) },
	],
	'touches-glass': [
		{ kind: 'nothing between', glazing: 'glass', surface: 'gloss' },
		{ kind: 'loose', surface: 'pastel' },
		{ kind: 'thin spacer', glazing: 'acrylic', spacer: mm(2), least: mm(3) },
		{ kind: 'thin spacer', glazing: 'acrylic', spacer: mm(2), least: { usual: mm(5) }, over: { usual: mm(600) } },
	],
	'edition-clash': [
		{ kind: 'no such number', edition: '30/25', number: '30', size: '25' },
		{ kind: 'copies', edition: '3/25', copies: { count: 2 } },
		{ kind: 'again', edition: '3/25', title: 'Tide', times: { count: 4 }, rows: [{ count: 2 }, { count: 5 }] },
	],
	'needs-size': [
		{ kind: 'open', open: ['width', 'height'], or: 'window' },
		{ kind: 'open', open: ['width'], or: 'any' },
		{ kind: 'no frame' },
		{ kind: 'no frame', mount: size(600, 450) },
		{ kind: 'left by the mount', size: size(466, 308), blank: { columns: ['picture width', 'picture height'] } },
		{ kind: 'left by the mount', side: mm(308), blank: { columns: ['picture height'] } },
	],
	'needs-paper': [
		{ kind: 'float' },
		{ kind: 'both', window: size(468, 318), picture: size(456, 306) },
		{ kind: 'one', axis: 'width', window: mm(468), picture: mm(456) },
	],
	'own-size': [
		{ mount: size(620, 481), shows: size(600, 450), clear: { columns: ['side'] } },
		{ mount: { width: mm(620), height: undefined }, shows: size(600, 450), typed: { columns: ['side', 'top'] } },
	],
	'shape-clash': [{ picture: size(360, 240), shape: '4:5', lost: { percent: 46.67 }, axis: 'width', by: 'picture' }],
	turned: [{ picture: size(300, 200), mount: size(400, 500) }],
	uneven: [{ side: mm(149), top: mm(70), difference: mm(79), share: { percent: 112.857 }, allowed: { percent: 15 } }],
	'thin-border': [{ borders: { top: mm(38), bottom: mm(39) }, least: mm(40) }],
	'lip-shrinks': [{ frame: 'Oak', seen: [{ border: 'side', shows: mm(38.1), length: mm(43) }], least: mm(40) }],
	'top-heavy': [{ bottom: mm(70), narrower: mm(10), top: mm(80) }],
	'bottom-heavy': [{ bottom: mm(110), wider: mm(70), top: mm(40) }],
	'weight-lost': [{ bottom: mm(80), top: mm(70), over: mm(10), asked: mm(8.4) }],
	'bare-paper': [{ axis: 'width', window: mm(462), picture: mm(456), bare: mm(3) }],
	'thin-overlap': [{ at: 'side', covered: mm(1), tolerance: mm(2) }],
	'paper-crowds': [
		{ at: 'side', from: mm(4), margin: mm(5) },
		{ at: 'bottom', from: mm(-3), margin: mm(5) },
	],
	'paper-margin': [
		{ kind: 'too large', axis: 'width', picture: mm(412), printable: mm(410) },
		{ kind: 'margin', edge: 'right', margin: mm(2), least: mm(5) },
	],
	'paper-bounds': [{ holds: size(410, 287), takes: size(462, 308) }],
	'no-frame': [
		{ kind: 'too few', frame: 'Oak', wanted: { count: 12 }, there: { count: 8 } },
		{ kind: 'too few sticks', frame: 'Oak', wanted: { count: 12 }, there: { count: 8 } },
		{ kind: 'short stick', frame: 'Oak', leg: mm(2505), stick: mm(2400) },
	],
	heavy: [
		{ weight: { kg: 31.4 }, most: { kg: 25 } },
		{ load: { kg: 18.2 }, factor: { count: 4 }, rating: { kg: 45 } },
		{ below: mm(0), rating: { kg: 45 } },
		{ below: mm(10), rating: { kg: 45 } },
	],
	'off-wall': [
		{ wall: { said: 'North' }, past: mm(200), kind: 'wall' },
		{ wall: { said: 'North' }, past: mm(200), kind: 'left' },
		{ wall: { said: 'North' }, past: mm(200), kind: 'part' },
	],
	'hangs-over': [
		{
			wall: { said: 'North' },
			overlaps: [
				{ kind: 'print', other: { id: 'r7', said: '12 Rain' }, by: mm(20) },
				{ kind: 'obstacle', other: { said: 'door' }, by: mm(20) },
			],
		},
		{ wall: { said: 'North' }, overlaps: [{ kind: 'floor', under: mm(30) }] },
		{
			wall: { said: 'North' },
			overlaps: [
				{ kind: 'floor', under: mm(0) },
				{ kind: 'top', over: mm(30), height: mm(2400) },
			],
		},
	],
	'past-guide': [
		{ kind: 'below nothing', cuts: [{ of: 'mount', border: 'side', length: mm(1) }], setting: mm(-2) },
		{
			kind: 'out of range',
			cuts: [{ of: 'inner mount', border: 'top', length: mm(95) }],
			least: mm(20),
			greatest: mm(90),
		},
		{
			kind: 'out of range',
			cuts: [{ of: 'mount', border: 'bottom', length: mm(62), setting: mm(62.5) }],
			greatest: mm(62),
		},
	],
	'signature-covered': [{ covered: mm(3) }],
	'signed-on-mount': [{}],
	'low-resolution': [{ picture: size(500, 333), pixelsAnInch: { count: 180 }, least: { count: 240 } }],
	crops: [{ pixels: '6000 x 4000', shape: '1:1', lost: { percent: 33.333 }, axis: 'width' }],
	'off-ruler': [{ borders: { side: mm(72.4) }, ruler: mm(1) }],
	'unit-slip': [
		{
			typed: [{ column: 'mount', lengths: [mm(50), mm(40)] }],
			readings: [{ as: 'cm', lengths: [[mm(500), mm(400)]] }],
			outcome: 'fits',
		},
	],
};

/** Words that stand for one another in figures; what is in none of them is a name, and may be any. */
const choices: readonly (readonly string[])[] = [
	['width', 'height'],
	['side', 'top', 'bottom'],
	['mount', 'paper', 'picture'],
	['glazing', 'spacer'],
	['mount', 'inner mount', 'undermount'],
	['window', 'shape', 'any'],
	['picture', 'window'],
	['largest', 'smallest', 'exact'],
	['cm', 'inches'],
	['fits', 'nearly fits'],
];
/** Which of the choices a figure of this name has, where its word is in two of them. */
const choiceOf = (name: string, word: string) => {
	const fitting = choices.filter((words) => words.includes(word));
	if (name === 'part' || name === 'of') return fitting.find((words) => words.includes('inner mount'));
	if (name === 'what') return fitting.find((words) => words.includes(word === 'print' ? 'glazing' : 'paper'));
	if (name === 'by') return fitting.find((words) => words.includes('window') && words.length === 2);
	return fitting[0];
};

interface Changed {
	/** Where the figure stands: `borders.top`. */
	readonly path: string;
	readonly figures: unknown;
	/** Whether it is a figure of the row, by which it is accepted: not what is usual, and no way out. */
	readonly isOfRow: boolean;
}

/** The figures with one of them changed, each in turn. */
function changes(figure: unknown, name = '', isOfRow = true): readonly Changed[] {
	if (typeof figure === 'number') {
		const isLength = !['percent', 'count', 'mm2'].includes(name);
		const more = isLength ? mm(7) : name === 'mm2' ? 500 : 2;
		// Away from nothing: what is below it is said otherwise.
		return [{ path: name, figures: figure < 0 ? figure - more : figure + more, isOfRow }];
	}
	if (typeof figure === 'string') {
		const others = choiceOf(name, figure);
		return [{ path: name, figures: others?.find((word) => word !== figure) ?? `${figure} 9`, isOfRow }];
	}
	if (typeof figure !== 'object' || figure === null) return [];
	return Object.entries(figure).flatMap(([key, value]: [string, unknown]) => {
		// By what another print is known, not said.
		if (key === 'id') return [];
		// Of another kind other figures are found.
		if (key === 'kind' && !['largest', 'exact'].includes(value as string)) return [];
		const isOther = key === 'usual' || key === 'columns' || key === 'said';
		return changes(value, Array.isArray(figure) ? name : key, isOfRow && !isOther).map((one) => ({
			path: `${key}${one.path === key ? '' : `.${one.path}`}`,
			isOfRow: one.isOfRow,
			figures: Array.isArray(figure)
				? figure.map((each: unknown, i) => (`${i}` === key ? one.figures : each))
				: { ...figure, [key]: one.figures },
		}));
	});
}

const all = Object.entries(samples).flatMap(([code, figures]) =>
	figures.map((one) => [code, 'kind' in one ? one.kind : '', one] as const),
) as unknown as readonly (readonly [Code, string, FiguresByCode[Code]])[];

describe.each(all)('%s %s', (code, _, figures) => {
	test('has a sentence in each unit', () => {
		for (const unit of ['mm', 'cm', 'in'] as const) {
			const sentence = sentenceOf(code, figures, { unit, ruler: unit === 'in' ? inches(1 / 16) : mm(1) });
			expect(sentence).toMatch(/^[A-Z\d].*\.$/);
			expect(sentence).not.toMatch(/undefined|NaN|\[object|, *\.| than\./);
		}
	});

	test('says each of its figures, and is accepted by each', () => {
		const sentence = sentenceOf(code, figures, scale);
		const acceptance = acceptanceOf({ code, figures });
		expect(acceptance).not.toMatch(/[\s;,]/);
		for (const { path, figures: other, isOfRow } of changes(figures) as readonly (Changed & {
			figures: FiguresByCode[Code];
		})[]) {
			expect(sentenceOf(code, other, scale), path).not.toBe(sentence);
			if (isOfRow) expect(acceptanceOf({ code, figures: other }), path).not.toBe(acceptance);
			else expect(acceptanceOf({ code, figures: other }), path).toBe(acceptance);
		}
	});
});

/** What each mend can do. */
const offers: { readonly [Kind in keyof FiguresOfOffers]: FiguresOfOffers[Kind] } = {
	clear: { columns: ['side'], becomes: mm(67) },
	'cut to fit': { mount: size(596, 450) },
	'mount it in a window': {},
	'give a mount': {},
	set: { column: 'picture width', to: mm(456) },
	'set size': { of: 'paper', name: 'A3', size: size(297, 420) },
	'set name': { column: 'board', name: 'Slate' },
	'set text': { column: 'signed on', text: 'back' },
	swap: { of: 'mount' },
	'set the gap': { wall: 'North', gap: mm(40) },
	'read in a unit': { lengths: [[mm(456)], [mm(306)]] },
};

test.each(Object.entries(offers))('the mend %s has a label that says each of its figures', (kind, figures) => {
	const labelled = (of: object) => labelOf({ kind, ...of } as Offer, scale);
	expect(labelled(figures)).toMatch(/^[A-Z].*[^.]$/);
	for (const { path, figures: other } of changes(figures))
		expect(labelled(path === 'on' ? { on: 'picture' } : (other as object)), path).not.toBe(labelled(figures));
});
