import { describe, expect, test } from 'vitest';
import exampleShow from '../../../shared/samples/example.evenhang.json?raw';
import { advise } from '../../../src/core/advice/advise.ts';
import type { Unit } from '../../../src/core/length/reading.ts';
import { bordersOf } from '../../../src/core/reasons/bordersOf.ts';
import { figuresOf } from '../../../src/core/reasons/figuresOf.ts';
import { factsOf } from '../../../src/core/reasons/factsOf.ts';
import { protectionOf } from '../../../src/core/reasons/protection.ts';
import { askableKeys, whyItIsSo } from '../../../src/core/reasons/whyItIsSo.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { kindOf } from '../../../src/core/show/columns.ts';
import { pinRow } from '../../../src/core/commands/pinRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readShowFile } from '../../../src/files/showFile.ts';
import { cellViews } from '../../../src/ui/grid/cellView.ts';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { frontWords } from '../../../src/ui/mount/mountWords.ts';

const example = readShowFile(exampleShow);
if ('problem' in example) throw new Error(example.problem);
const { rows: exampleRows, settings: exampleSettings } = example.value;

/** Rows whose figures lie on no ruler: thirds, inches in a metric show, slips of every kind. */
const awkward: readonly Row['typed'][] = [
	{ shape: '16:9' },
	{ shape: '3:4', mount: 'fit', 'picture width': '257.333 mm' },
	{ 'picture width': '16 1/3 in', 'picture height': '11 in' },
	{ 'picture width': '4.56 mm', 'picture height': '3.06 mm' },
	{ 'picture width': '333.333 mm', shape: '7:5', paper: 'A4' },
	{ 'picture width': '400 mm', 'picture height': '300 mm', reveal: '1/3 in', 'signing space': '1/2 in', paper: 'A3' },
	{ 'mount height': '450 mm', top: '70.125 mm', bottom: '84 mm', 'picture height': '316 mm' },
	{ 'window width': '400.55 mm', 'window height': '260.333 mm' },
	{ 'picture width': '700 mm', 'picture height': '500 mm' },
	{ 'inner mount': '1/7 in', shape: '3:2', frame: 'Large oak' },
	{ 'picture width': '300 mm', 'picture height': '300 mm', 'bottom weight': '1/3 in', overlap: '0.197 in' },
];

const rulers: Readonly<Record<Unit, string>> = { mm: '1 mm', cm: '1 mm', in: '1/16 in' };

/** What must not be seen in a show of each unit; shares, weights and what was typed aside. */
const forbidden: Readonly<Record<Unit, RegExp>> = { mm: /\d\.\d\d/, cm: /\d\.\d{3}/, in: /\d\.\d/ };
const isForbidden = (text: string, unit: Unit) =>
	forbidden[unit].test(text.replace(/[\d.]+ (?:%|kg)/g, '').replace(/“[^”]*”|which is not [^ ]+:/g, ''));

function textsOf(row: Row, unit: Unit): readonly string[] {
	const typed = { ...exampleSettings, unit, ruler: rulers[unit] };
	const { settings } = readSettings(typed);
	const own = pinRow(row, 'mm', unit, settings.sizes);
	const result = judgeRow(own, settings);
	const { advice, cannotBeEven = '' } = advise(own, result, settings);
	const cells = cellViews({ row: own, result, steps: [], settings }, gridColumns).filter((_, place) => {
		const { column } = gridColumns[place]!;
		return column === undefined || !['text', 'shape'].includes(kindOf(column));
	});
	return [
		...result.findings.flatMap(({ message, mends }) => [message, ...mends.map(({ label }) => label)]),
		...advice.map(({ message }) => message),
		cannotBeEven,
		...askableKeys.map((key) => whyItIsSo(result, key, settings) ?? ''),
		...factsOf(result, settings),
		...figuresOf(result, settings).map(({ figures }) => figures),
		...bordersOf(result, settings).flatMap(({ figures }) => figures),
		protectionOf(result, settings),
		frontWords(result.solved, settings),
		...cells.map(({ text }) => text),
	].filter((text) => text !== '');
}

const rows = [...exampleRows, ...awkward.map((typed, place) => ({ id: `awkward ${place}`, order: place, typed }))];

describe.each<Unit>(['mm', 'cm', 'in'])('a show in %s', (unit) => {
	const texts = rows.flatMap((row) => textsOf(row, unit));

	test('says much of its rows', () => expect(texts.length).toBeGreaterThan(1000));

	test('shows no length finer than anybody sets it, and no decimals of an inch', () =>
		expect(texts.filter((text) => isForbidden(text, unit))).toEqual([]));
});

test.each<[string, Unit]>([
	['The paper is 257.333 mm wide.', 'mm'],
	['25.7333', 'cm'],
	['0.197 in hold it.', 'in'],
])('“%s” would be seen', (text, unit) => expect(isForbidden(text, unit)).toBe(true));
