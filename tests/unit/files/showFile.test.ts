import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Tick } from '../../../src/core/show/tick.ts';
import { inches, mm, toMm } from '../../../src/core/length/length.ts';
import { workOut } from '../../../src/core/row/workOut.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { CutSheet } from '../../../src/core/show/cutSheet.ts';
import { printsOf } from '../../../src/core/show/blankRow.ts';
import { columns } from '../../../src/core/show/columns.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { upgrade, type Upgrade } from '../../../src/core/show/upgrade.ts';
import { jsonProblem } from '../../../src/files/jsonProblem.ts';
import { isShowFileText, readSettingsFile, readShowFile, writeShowFile } from '../../../src/files/showFile.ts';
import { textOfFile } from '../../../src/files/textOfFile.ts';
import { encode, encodings } from './encode.ts';
import { runs } from '../../soak.ts';

const show = {
	name: 'Salt',
	settings: { unit: 'cm', sizes: [{ name: 'Small', width: '30 cm', height: 200 }], boards: [] },
	rows: [
		{ id: 'a', order: 1.5, typed: { title: 'Ebb', top: '7,5' }, units: { top: 'cm' as const }, extra: { lab: 'x' } },
		{ id: 'b', order: 2, typed: { title: 'Quay' } },
	],
};
const file = { format: 'evenhang-show', version: 1, ...show };
const ticks: readonly Tick[] = [
	{
		row: show.rows[0]!.id,
		copy: 1,
		part: 'mount',
		side: 'left',
		border: mm(72.5),
		width: mm(600),
		height: inches(17.5),
		board: 'Chalk',
		thickness: mm(1.4),
	},
	{ row: show.rows[0]!.id, copy: 2, part: 'inner mount', side: 'spoilt', times: 2 },
];

const problemOf = (document: unknown): string => {
	const reading = readShowFile(typeof document === 'string' ? document : JSON.stringify(document));
	if ('value' in reading) throw new Error('it was read');
	return reading.problem;
};

describe('a show file', () => {
	test('gives back the show', () => expect(readShowFile(writeShowFile(show))).toEqual({ value: show }));

	test.each(encodings)('opens in %s', (encoding) => {
		const text = textOfFile(encode(writeShowFile(show), encoding));
		expect('value' in text && readShowFile(text.value)).toEqual({ value: show });
	});

	test('says what it is, before anything else', () => {
		expect(writeShowFile(show)).toMatch(/^\{\n\t"format": "evenhang-show",\n\t"version": 10,\n/);
		expect(isShowFileText(writeShowFile(show))).toBe(true);
		expect(isShowFileText('title,note\n{,}')).toBe(false);
	});

	test('gives back the prints of any show', () => {
		const text = fc.string({ unit: 'binary' });
		const typed = fc.dictionary(
			fc.constantFrom(...columns.map(({ name }) => name)),
			text.filter((each) => each.trim() !== ''),
			{
				noNullPrototype: true,
			},
		);
		const row = fc.record(
			{
				id: fc.uuid(),
				order: fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e9, max: 1e9 }).map((order) => order || 0),
				typed,
				units: fc.constant({ side: 'in' as const }),
				extra: fc.dictionary(
					text.filter((name) => name !== '__proto__'),
					text,
					{ minKeys: 1, noNullPrototype: true },
				),
			},
			{ requiredKeys: ['id', 'order', 'typed'] },
		);
		fc.assert(
			fc.property(text, fc.uniqueArray(row, { selector: ({ order }) => order }), (name, rows) => {
				const sorted = rows.toSorted((a, b) => a.order - b.order) as unknown as Row[];
				const each = { name, settings: { border: name }, rows: sorted };
				expect(readShowFile(writeShowFile(each))).toEqual({ value: { ...each, rows: printsOf(sorted) } });
			}),
			{ numRuns: runs(40, 5000) },
		);
	});

	test('needs no order numbers, and takes its rows in their order', () => {
		const ids = (rows: unknown[]) => {
			const reading = readShowFile(JSON.stringify({ ...file, rows }));
			if ('problem' in reading) throw new Error(reading.problem);
			return reading.value.rows.map(({ id, order }) => `${id}${order}`);
		};
		expect(ids([{ id: 'a' }, { id: 'b', typed: {} }])).toEqual(['a1', 'b2']);
		expect(
			ids([
				{ id: 'a', order: 5 },
				{ id: 'b', order: 2 },
			]),
		).toEqual(['b2', 'a5']);
		expect(
			ids([
				{ id: 'a', order: 5 },
				{ id: 'b', order: 5 },
			]),
		).toEqual(['a1', 'b2']);
	});

	test('keeps columns that it does not know', () => {
		const reading = readShowFile(JSON.stringify({ ...file, rows: [{ id: 'a', typed: { weave: 'x', title: 'y' } }] }));
		expect(reading).toMatchObject({ value: { rows: [{ typed: { title: 'y' }, extra: { weave: 'x' } }] } });
	});
});

describe('a file that is no show file, or is damaged, is refused with its place', () => {
	test.each<[string, unknown, RegExp]>([
		['empty', '', /^the file is empty$/],
		['cut off', writeShowFile(show).slice(0, 200), /^this file cannot be read: it breaks off in line \d+$/],
		[
			'not JSON',
			'title,note\n',
			/^this file cannot be read: it is damaged in line 1: “title,note” stands where a value should$/,
		],
		['a comma too many', '{\n"format": "evenhang-show",\n}', /line 3: “}” stands where a name in quotes should/],
		['a list', [1], /holds no show and no settings/],
		['another format', { format: 'other', version: 1 }, /^this is no show file/],
		['settings', { border: 70 }, /^this is no show file/],
		[
			'newer',
			{ ...file, version: 11 },
			/a show file of version 11, newer than the 10 that this app opens. Update the app/,
		],
		['without a version', { ...file, version: undefined }, /its version is not given/],
		['of version 0', { ...file, version: 0 }, /its version is 0/],
		['of version "1"', { ...file, version: '1' }, /its version is "1"/],
		['with a name that is none', { ...file, name: 3 }, /damaged: name is not a text/],
		['with settings that are a list', { ...file, settings: [] }, /damaged: settings is not a record/],
		[
			'with settings that go on for ever',
			`{"format":"evenhang-show","version":1,"settings":{"x":${'['.repeat(200_000)}${']'.repeat(200_000)}}}`,
			/damaged: settings has lists in lists more than 20 deep/,
		],
		[
			'with views that go on for ever',
			`{"format":"evenhang-show","version":7,"views":${'['.repeat(30)}${']'.repeat(30)}}`,
			/damaged: views has lists in lists more than 20 deep/,
		],
		[
			'with a row of which something goes on for ever',
			`{"format":"evenhang-show","version":7,"rows":[{"id":"a","x":${'['.repeat(30)}${']'.repeat(30)}}]}`,
			/damaged: rows\[0\]\.x has lists in lists more than 20 deep/,
		],
		['with rows that are no list', { ...file, rows: {} }, /damaged: rows is not a list/],
		['with a row that is none', { ...file, rows: [{ id: 'a' }, 7] }, /damaged: rows\[1\] is not a record/],
		['with a row without an id', { ...file, rows: [{ typed: {} }] }, /rows\[0\]\.id is not a text/],
		[
			'with two rows of one id',
			{ ...file, rows: [{ id: 'a' }, { id: 'b' }, { id: 'a' }] },
			/rows\[2\]\.id is that of rows\[0\] too/,
		],
		['with an order that is none', { ...file, rows: [{ id: 'a', order: 'x' }] }, /rows\[0\]\.order is not a number/],
		[
			'with a cell that is no text',
			{ ...file, rows: [{ id: 'a', typed: { top: 7 } }] },
			/rows\[0\]\.typed\["top"\] is not a text/,
		],
		['with cells that are a list', { ...file, rows: [{ id: 'a', typed: [] }] }, /rows\[0\]\.typed is not a record/],
		[
			'with a unit that is none',
			{ ...file, rows: [{ id: 'a', units: { top: 'ell' } }] },
			/rows\[0\]\.units gives “top” the unit “ell”/,
		],
		[
			'with extra cells that are no texts',
			{ ...file, rows: [{ id: 'a', extra: { x: null } }] },
			/rows\[0\]\.extra\["x"\] is not a text/,
		],
	])('%s', (_, document, sentence) => expect(problemOf(document)).toMatch(sentence));

	test('a picture', () => {
		expect(textOfFile(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13))).toEqual({
			problem: 'the file is not text: it is a picture or a film',
		});
	});
});

describe('settings from a file', () => {
	test.each<[string, unknown]>([
		['a bare record', { border: 70 }],
		['under settings', { settings: { border: 70 } }],
		['a show file', { ...file, settings: { border: 70 } }],
	])('%s', (_, document) => expect(readSettingsFile(JSON.stringify(document))).toEqual({ value: { border: 70 } }));

	test.each<[string, string, RegExp]>([
		['a newer show file', JSON.stringify({ ...file, version: 11 }), /version 11/],
		['a list', '[]', /holds no show and no settings/],
		['not JSON', 'border: 70', /damaged in line 1/],
	])('%s is refused', (_, text, sentence) => {
		const reading = readSettingsFile(text);
		expect('problem' in reading && reading.problem).toMatch(sentence);
	});
});

test('what is ticked off is given back to the last unit', () => {
	expect(readShowFile(writeShowFile({ ...show, ticks }))).toEqual({ value: { ...show, ticks } });
});

test.each([
	[{}, /ticks is not a list/],
	[[3], /ticks\[0\] is not a record/],
	[[{ row: 'a', copy: 0, part: 'mount', side: 'left' }], /ticks\[0\]\.copy/],
	[[{ row: 'a', copy: 1, part: 'undermount', side: 'left' }], /ticks\[0\]\.part/],
	[[{ row: 'a', copy: 1, part: 'mount', side: 'front' }], /ticks\[0\]\.side/],
	[[{ row: 'a', copy: 1, part: 'mount', side: 'top', border: '70', width: 1, height: 1 }], /ticks\[0\]\.border/],
	[
		Array.from({ length: 2 }, () => ({ row: 'a', copy: 1, part: 'mount', side: 'spoilt', times: 1 })),
		/ticks\[1\] is there/,
	],
])('ticks that are damaged are refused with their place: %j', (damaged, sentence) => {
	const reading = readShowFile(JSON.stringify({ ...file, version: 2, ticks: damaged }));
	expect('problem' in reading && reading.problem).toMatch(sentence);
});

const cutSheet: CutSheet = {
	id: 's1',
	stock: {
		...{ board: 'Chalk', kind: 'sheet', width: inches(47.25), height: mm(900), trim: mm(5) },
		...{ grain: 'width', price: 1250, pack: 10, count: undefined },
	},
	blanks: [
		{
			...{ row: 0, rowId: 'a', copy: 1, part: 'mount', turned: true },
			...{ x: mm(5), y: mm(5), width: mm(550), height: mm(700) },
		},
		{
			...{ row: 0, rowId: undefined, copy: 1, part: 'mount', turned: false },
			...{ x: mm(555), y: mm(5), width: mm(520), height: mm(420) },
		},
	],
	cuts: [
		{ piece: { x: mm(0), y: mm(0), width: inches(47.25), height: mm(900) }, across: 'width', at: mm(5) },
		{ piece: { x: mm(5), y: mm(0), width: mm(1195), height: mm(900) }, across: 'height', at: mm(5) },
	],
	offcuts: [{ x: mm(555), y: mm(430), width: mm(520), height: mm(465) }],
	made: [0],
	isSpoilt: false,
};

test('the sheets that are cut are given back to the last unit', () => {
	const cut = { ...show, cutSheets: [cutSheet, { ...cutSheet, id: 's2', made: [0, 1], isSpoilt: true }] };
	expect(readShowFile(writeShowFile(cut))).toEqual({ value: cut });
});

test.each<[string, unknown, RegExp]>([
	['no list', {}, /cutSheets is not a list/],
	['no record', [3], /cutSheets\[0\] is not a record/],
	['no name', [{ ...asJson(), id: '' }], /cutSheets\[0\]\.id is not a text/],
	['the same twice', [asJson(), asJson()], /cutSheets\[1\] is there twice/],
	['a cut that is not there', [{ ...asJson(), made: [2] }], /cutSheets\[0\]\.made names a cut/],
	['an odd part', [asJson({ part: 'frame' })], /cutSheets\[0\]\.blanks\[0\]\.part is none of/],
	['an odd size', [asJson({ width: 'wide' })], /cutSheets\[0\]\.blanks\[0\]\.width is not a length/],
	['odd stock', [{ ...asJson(), stock: { board: 'x', kind: 'roll' } }], /cutSheets\[0\]\.stock\.kind is none of/],
])('cut sheets that are damaged are refused with their place: %s', (_, damaged, sentence) => {
	const reading = readShowFile(JSON.stringify({ ...file, version: 4, cutSheets: damaged }));
	expect('problem' in reading && reading.problem).toMatch(sentence);
});

/** The sheet as a file has it, one blank of it changed. */
function asJson(blank?: object) {
	const { cutSheets } = JSON.parse(writeShowFile({ ...show, cutSheets: [cutSheet] })) as {
		cutSheets: [{ blanks: object[] }];
	};
	const [first, ...others] = cutSheets[0].blanks;
	return { ...cutSheets[0], blanks: [{ ...first, ...blank }, ...others] };
}

/** As version 2 wrote it: ticks, and no sheets of board yet. */
const secondForm = `{
	"format": "evenhang-show",
	"version": 2,
	"name": "Salt",
	"settings": { "unit": "cm", "boards": [{ "name": "Chalk", "width": "120", "height": "90", "pack": 10 }] },
	"rows": [{ "id": "a", "order": 1, "typed": { "title": "Ebb", "shape": "3:2" } }],
	"ticks": [
		{ "row": "a", "copy": 1, "part": "mount", "side": "left", "border": 72.5, "width": 600, "height": 450 },
		{ "row": "a", "copy": 1, "part": "mount", "side": "spoilt", "times": 1 }
	]
}
`;

/** As version 3 wrote it: a frame's width and height were its rebate. */
const thirdForm = `{
	"format": "evenhang-show",
	"version": 3,
	"name": "Salt",
	"settings": {
		"unit": "mm",
		"frames": [
			{ "name": "Oak", "width": "502", "height": 402, "depth": "18 mm", "lip": 6 },
			{ "name": "Half", "height": "400", "price": "9900" },
			"no frame"
		],
		"boards": [
			{ "name": "Chalk", "width": 1120, "height": 815, "price": "1250" },
			{ "name": "Slate", "width": 1120, "height": 815, "price": 1450 },
			{ "name": "Odd", "width": 1120, "height": 815, "price": "12.50" }
		]
	},
	"rows": [{ "id": "a", "order": 1, "typed": { "title": "Ebb", "shape": "3:2", "frame": "Oak" } }],
	"ticks": [],
	"cutSheets": []
}
`;

/** As version 4 wrote it: how the show is looked at stood among its settings. */
const fourthForm = `{
	"format": "evenhang-show",
	"version": 4,
	"name": "Salt",
	"settings": { "unit": "cm", "views": { "inHand": "Sizing", "sort": { "column": "title", "way": "up" } } },
	"rows": [{ "id": "a", "order": 1, "typed": { "title": "Ebb" } }],
	"ticks": [],
	"cutSheets": []
}
`;

/** As version 6 wrote it: no mount was made to its frame, and a size could be called so. */
const sixthForm = `{
	"format": "evenhang-show",
	"version": 6,
	"name": "Salt",
	"settings": {
		"unit": "mm",
		"mountSize": "Frame",
		"sizes": [{ "name": "Frame", "width": 600, "height": 450 }, { "name": "Small", "width": 300, "height": 200 }],
		"frames": [{ "name": "Oak", "width": 700, "height": 500 }]
	},
	"rows": [
		{ "id": "a", "order": 1, "typed": { "shape": "3:2", "frame": "Oak" } },
		{ "id": "b", "order": 2, "typed": { "shape": "3:2", "frame": "Oak", "mount": "fit" } },
		{ "id": "c", "order": 3, "typed": { "shape": "3:2", "frame": " None " } },
		{ "id": "d", "order": 4, "typed": { "shape": "3:2", "mount": "frame", "paper": " FRAME" } },
		{ "id": "e", "order": 5, "typed": { "shape": "3:2" }, "extra": { "mounting": "wet" } }
	]
}
`;

/** As version 7 wrote it: nothing could be hung. */
const seventhForm = `{
	"format": "evenhang-show",
	"version": 7,
	"name": "Salt",
	"settings": { "unit": "mm", "walls": [{ "name": "North", "length": 4000 }] },
	"rows": [{ "id": "a", "order": 1, "typed": { "shape": "3:2", "wall": "North" } }]
}
`;

/** As version 8 wrote it: no step of making was ticked off. */
const eighthForm = `{
	"format": "evenhang-show",
	"version": 8,
	"name": "Salt",
	"settings": { "unit": "mm" },
	"rows": [{ "id": "a", "order": 1, "typed": { "shape": "3:2", "copies": "2" } }],
	"hung": [{ "row": "a", "wall": "North", "left": 120.5, "centre": 1450 }]
}
`;

/** As version 9 wrote it: what was printed was forgotten. */
const ninthForm = `{
	"format": "evenhang-show",
	"version": 9,
	"name": "Salt",
	"settings": { "unit": "mm" },
	"rows": [{ "id": "a", "order": 1, "typed": { "shape": "3:2" } }],
	"made": [{ "row": "a", "copy": 1, "step": "printed" }]
}
`;

describe('older forms', () => {
	test('a file of version 9, from before it was remembered what is printed, opens as it is, and that comes back', () => {
		const opened = readShowFile(ninthForm);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value).not.toHaveProperty('printing');
		expect(opened.value.made).toHaveLength(1);
		const printing = { paper: 'Letter', shown: ['back labels', 'of a later version'], labels: { back: { start: 4 } } };
		expect(readShowFile(writeShowFile({ ...opened.value, printing }))).toEqual({
			value: { ...opened.value, printing },
		});
		const deep: unknown = JSON.parse(`${'['.repeat(90)}${']'.repeat(90)}`);
		expect(problemOf({ ...(JSON.parse(ninthForm) as object), version: 10, printing: deep })).toContain('printing');
	});

	test('a file of version 8, from before making was ticked off, opens as it is, and what is made comes back', () => {
		const opened = readShowFile(eighthForm);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value).not.toHaveProperty('made');
		expect(opened.value.hung).toHaveLength(1);
		const made = [
			{ row: 'a', copy: 1, step: 'printed' as const },
			{ row: 'a', copy: 2, step: 'glazing clean' as const },
		];
		expect(readShowFile(writeShowFile({ ...opened.value, made }))).toEqual({ value: { ...opened.value, made } });
		for (const [stored, problem] of [
			[7, 'made is not a list'],
			[[7], 'made[0] is not a record'],
			[[{ ...made[0], row: '' }], 'made[0].row is not a text'],
			[[made[0], { ...made[0], copy: 0 }], 'made[1].copy is not a whole number'],
			[[{ ...made[0], step: 'dusted' }], 'made[0].step is no step of making a print'],
			[[made[0], made[0]], 'made[1] is there twice'],
		] as const)
			expect(problemOf({ ...(JSON.parse(eighthForm) as object), version: 9, made: stored })).toContain(problem);
	});

	test('a file of version 7, from before anything was hung, opens as it is, and what is hung comes back', () => {
		const opened = readShowFile(seventhForm);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value).not.toHaveProperty('hung');
		const hung = [{ row: 'a', wall: 'North', left: mm(120.5), centre: mm(1450) }];
		expect(readShowFile(writeShowFile({ ...opened.value, hung }))).toEqual({ value: { ...opened.value, hung } });
		for (const [each, problem] of [
			[7, 'hung[0] is not a record'],
			[{ ...hung[0], row: '' }, 'hung[0].row is not a text'],
			[{ ...hung[0], left: 'x' }, 'hung[0].left is not a length in mm'],
		] as const)
			expect(
				readShowFile(JSON.stringify({ ...(JSON.parse(seventhForm) as object), version: 8, hung: [each] })),
			).toEqual({
				problem: expect.stringContaining(problem) as string,
			});
	});

	test('a row of version 6 keeps the show’s mount beside its frame, and a size called frame has another name', () => {
		const opened = readShowFile(sixthForm);
		if ('problem' in opened) throw new Error(opened.problem);
		const { settings, rows } = opened.value;
		expect(settings).toMatchObject({ mountSize: 'frame size', sizes: [{ name: 'frame size' }, { name: 'Small' }] });
		expect(rows.map(({ typed }) => typed)).toEqual([
			{ shape: '3:2', frame: 'Oak', mount: 'show' },
			{ shape: '3:2', frame: 'Oak', mount: 'fit' },
			{ shape: '3:2', frame: ' None ' },
			{ shape: '3:2', mount: 'frame size', paper: 'frame size' },
			{ shape: '3:2' },
		]);
		const read = readSettings(settings);
		expect(read.problems).toEqual([]);
		const widths = rows.map((row) => toMm(workOut(row, read.settings).solved.mountWidth!));
		expect(widths.filter((_, i) => i !== 1)).toEqual([600, 600, 600, 600]);
		expect(readShowFile(writeShowFile(opened.value))).toEqual(opened);
	});

	test('what a file of version 3 calls the width and height of a frame is its rebate, and a price in coins', () => {
		const opened = readShowFile(thirdForm);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value.settings).toEqual({
			unit: 'mm',
			frames: [
				{ name: 'Oak', rebateWidth: '502', rebateHeight: 402, depth: '18 mm', lip: 6 },
				{ name: 'Half', rebateHeight: '400', price: 9900 },
				'no frame',
			],
			boards: [
				{ name: 'Chalk', width: 1120, height: 815, price: 1250 },
				{ name: 'Slate', width: 1120, height: 815, price: 1450 },
				{ name: 'Odd', width: 1120, height: 815, price: '12.50' },
			],
		});
		expect(readShowFile(writeShowFile(opened.value))).toEqual(opened);
	});

	const innerCut = { ...ticks[0]!, part: 'inner mount', border: 75, width: 594, height: 444, thickness: 1.4 };
	test.each([
		['guide and stops', [innerCut], { kind: 'guide and stops', inner: 'own blank' }],
		[{ overcut: '2 mm' }, [innerCut], { overcut: '2 mm', inner: 'own blank' }],
		[undefined, [innerCut], { inner: 'own blank' }],
		['guide', [{ ...innerCut, part: 'mount' }], 'guide'],
		['guide', [ticks[1]], 'guide'],
	])(
		'a file of version 5 on the bench %j keeps the inner windows that are cut: on their own blanks',
		(bench, made, now) => {
			const stored = { ...file, version: 5, settings: { bench }, ticks: made };
			const opened = readShowFile(JSON.stringify(stored));
			expect(opened).toMatchObject({ value: { settings: { bench: now } } });
		},
	);

	test.each([undefined, null, 'Oak', { width: 3 }])('frames that are no list (%j) stay as they are', (frames) => {
		const stored = JSON.stringify({ ...file, version: 3, settings: { frames } });
		expect(readShowFile(stored)).toMatchObject({
			value: { settings: JSON.parse(JSON.stringify({ frames })) as object },
		});
	});

	test.each([
		['version 4', fourthForm],
		['today’s version, written by hand', fourthForm.replace('"version": 4', '"version": 10')],
	])('views among the settings of a file of %s are those of the show', (_, text) => {
		const opened = readShowFile(text);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value.settings).toEqual({ unit: 'cm' });
		expect(opened.value.views).toEqual({ inHand: 'Sizing', sort: { column: 'title', way: 'up' } });
		expect(readShowFile(writeShowFile(opened.value))).toEqual(opened);
	});
	test('views that are a number, past all numbers too, are none', () => {
		for (const number of ['7', '1e999']) {
			const opened = readShowFile(`{"format":"evenhang-show","version":7,"settings":{},"rows":[],"views":${number}}`);
			expect(opened, number).toMatchObject({ value: { rows: [] } });
			expect('value' in opened && opened.value.views).toBeUndefined();
		}
	});

	test('a file of version 2, from before boards were planned, opens as it is', () => {
		const opened = readShowFile(secondForm);
		if ('problem' in opened) throw new Error(opened.problem);
		expect(opened.value).not.toHaveProperty('cutSheets');
		expect(opened.value).toMatchObject({ rows: [{ id: 'a' }], ticks: [{ side: 'left' }, { side: 'spoilt' }] });
		expect(readShowFile(writeShowFile(opened.value))).toEqual(opened);
	});

	test('a file of version 1, from before anything could be ticked off, opens as it is', () => {
		expect(readShowFile(JSON.stringify(file))).toEqual({ value: show });
	});

	const steps: Record<number, Upgrade> = {
		1: ({ title, ...rest }) => ({ ...rest, name: title }),
		2: (stored) => ({ ...stored, ticks: [] }),
	};
	test('are brought to today’s, step by step', () => {
		expect(upgrade({ version: 1, title: 'Salt' }, 3, steps)).toEqual({
			value: { version: 3, name: 'Salt', ticks: [] },
		});
		expect(upgrade({ version: 2, name: 'Salt' }, 3, steps)).toEqual({ value: { version: 3, name: 'Salt', ticks: [] } });
		expect(upgrade({ version: 3, name: 'Salt' }, 3, steps)).toEqual({ value: { version: 3, name: 'Salt' } });
		expect(upgrade({ version: 4 }, 3, steps)).toHaveProperty('problem');
	});
	test('a way that is missing is a slip of ours', () => {
		expect(() => upgrade({ version: 1 }, 3, { 2: (stored) => stored })).toThrow(RangeError);
	});
});

describe('where a text stops being JSON', () => {
	test.each([
		'',
		'{',
		'[1,]',
		'{"a":1,}',
		'{"a" 1}',
		'[1 2]',
		'{a:1}',
		"{'a':1}",
		'"a',
		'01',
		'1.',
		'[1]]',
		'nul',
		'"\t"',
		'{"a":}',
		'-',
	])('%j', (text) => {
		expect(() => JSON.parse(text) as unknown).toThrow();
		expect(jsonProblem(text)).toMatch(/^it (?:is damaged|breaks off) in line 1/);
	});
	test('agrees with the engine on what is JSON', () =>
		fc.assert(
			fc.property(fc.json(), fc.nat(40), fc.constantFrom('', ',', '}', ']', '"', '1', ':'), (json, at, sign) => {
				const place = at % (json.length + 1);
				const text = json.slice(0, place) + sign + json.slice(place + (at % 2));
				const isJson = (() => {
					try {
						JSON.parse(text);
						return true;
					} catch {
						return false;
					}
				})();
				expect(jsonProblem(json)).toBeUndefined();
				expect(jsonProblem(text) === undefined).toBe(isJson);
			}),
			{ numRuns: runs(700, 20_000) },
		));
});
