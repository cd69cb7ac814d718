import { describe, expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { formatMark, toMark } from '../../../../src/core/length/formatMark.ts';
import { inches, mm, toMm } from '../../../../src/core/length/length.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Typed } from '../../../../src/core/show/row.ts';
import { gapsOf } from '../../../../src/core/walls/gapsOf.ts';
import { hangingList } from '../../../../src/core/walls/hangingList.ts';
import { markedOf } from '../../../../src/core/walls/marked.ts';
import { wallLabels } from '../../../../src/core/walls/wallLabels.ts';
import { neighboursOf, placeWords } from '../../../../src/core/walls/wallWords.ts';
import { print, rowsOf } from './wallOf.ts';

const north = { name: 'North', length: 4000 };

function listOf(prints: readonly Typed[], typed: TypedSettings = { walls: [north] }) {
	const { settings, problems } = readSettings(typed);
	expect(problems).toEqual([]);
	const rows = rowsOf(prints);
	const lines = hangingList(
		rows.map((row) => judgeRow(row, settings)),
		settings,
	);
	return { lines, rows, settings };
}

describe('what is marked on a wall by hand', () => {
	test.each([
		['a half goes up', 604.5, '1 mm', 'mm', '605'],
		['a finer ruler has halves', 604.5, '0.5 mm', 'mm', '604.5'],
		['of a coarse ruler no more is lost', 604.4, '5 mm', 'mm', '604'],
		['in centimetres', 604.5, '1 mm', 'cm', '60.5'],
		['an inch ruler in a metric show', 604.5, '1/16 in', 'mm', '605'],
		['in inches to a sixteenth', 604.5, '1/16 in', 'in', '23 13/16'],
		['whatever the ruler', 604.5, '1/8 in', 'in', '23 13/16'],
	] as const)('%s', (_, value, typedRuler, unit, shown) => {
		const { settings } = readSettings({ unit, ruler: typedRuler });
		expect(formatMark(mm(value), settings)).toBe(shown);
	});

	test('the ways from mark to mark add up, as they are shown', () => {
		const frames = [{ name: 'Plain', clearance: 0, moulding: 20, lip: 20 }];
		const framed = (size: string) => print(size, { frame: 'Plain' });
		const { lines, settings } = listOf([framed('501x400'), framed('500x400'), framed('333x400')], {
			...{ frames, walls: [north] },
		});
		const shown = lines.map((line) => markedOf(line, settings));
		expect(shown[0]!.fromLast).toBeUndefined();
		for (const [at, { left, fromLast, height }] of shown.entries()) {
			for (const each of [left, height]) expect(toMm(each) % 1).toBe(0);
			if (at > 0) expect(fromLast).toBe(left - shown[at - 1]!.left);
			expect(Math.abs(left - lines[at]!.mark.left)).toBeLessThanOrEqual(mm(0.5));
		}
		// what is worked out stays as it is
		expect(lines.map(({ mark }) => toMm(mark.left) % 1)).toContain(0.5);
		expect(toMark(inches(10.03), { unit: 'in', ruler: inches(1 / 16) })).toBe(inches(10));
	});
});

describe('in the drawing of a wall', () => {
	const labels = (prints: readonly Typed[]) => {
		const { lines, rows } = listOf(prints, { walls: [north, { name: 'South', length: 4000 }] });
		return [...wallLabels(lines, rows)].map(([place, { text, isOwn }]) => `${place}: ${text}${isOwn ? '' : '?'}`);
	};
	const on = (wall: string, number = '') => print('500x400', { wall, number });
	test('each print has its own number on every wall, whatever its place there', () =>
		expect(labels([on('North', '1'), on('South', '11'), on('North', '2'), on('South', '10')])).toEqual([
			...['0: 1', '2: 2', '1: 11', '3: 10'],
		]));
	test('where a number is missing, or is there twice, each has a letter, which is no number of another', () =>
		expect(labels([on('North', '1'), on('North'), on('South', '7'), on('South', '7')])).toEqual([
			...['0: A?', '1: B?', '2: A?', '3: B?'],
		]));
	test('after Z comes AA', () => {
		const texts = [
			...wallLabels(
				Array.from({ length: 53 }, (_, place) => ({ place, number: place + 1, hung: {} as never })),
				Array.from({ length: 53 }, () => ({ typed: {} })),
			).values(),
		].map(({ text }) => text);
		expect([texts[25], texts[26], texts[51], texts[52]]).toEqual(['Z', 'AA', 'AZ', 'BA']);
	});
});

describe('what is beside a print', () => {
	const door = { name: 'door', left: 1800, bottom: 0, width: 400, height: 2000 };
	const radiator = { name: 'radiator', left: 200, bottom: 100, width: 300, height: 500 };
	const { lines, rows, settings } = listOf([print('600x400'), print('600x400')], {
		walls: [{ ...north, obstacles: [door, radiator] }],
	});
	const [{ hung, print: first }] = lines as [(typeof lines)[0]];
	test('a door at its height is nearer than the print behind it; a radiator under it is not in the way', () => {
		const { left, right } = neighboursOf(hung, first);
		expect([left, right].map(({ print: other, obstacle }) => other ?? obstacle?.name)).toEqual([undefined, 'door']);
		expect([left, right].map(({ distance }) => toMm(distance))).toEqual([600, 600]);
		expect(placeWords(hung, first, rows, settings, undefined)).toContain(
			'600 mm to the wall’s left end, 600 mm from the door',
		);
	});
	test('gaps end at it', () =>
		expect(gapsOf(lines).map(({ from, to }) => `${from / 1e7}–${to / 1e7}`)).toEqual([
			...['0–600', '1200–1800', '2200–2800', '3400–4000'],
		]));
});
