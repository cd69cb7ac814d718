import { expect, test } from 'vitest';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import {
	guideProblem,
	sidesInWords,
	activeStation,
	stationsOf,
	stepMounts,
} from '../../../../src/core/bench/stations.ts';
import { tickKey } from '../../../../src/core/show/tick.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';

const board = { kind: 'sheet', width: 1200, height: 900 };
const boards = [
	{ ...board, name: 'A', thickness: 1.4 },
	{ ...board, name: 'B', thickness: 2.2 },
];
function benchOf(bench: unknown, typed: readonly Row['typed'][]) {
	const { settings } = readSettings({ mountSize: '600 x 450 mm', border: 70, bottomWeight: 12, boards, bench });
	const rows = typed.map((each, index): Row => ({ id: `r${index}`, order: index + 1, typed: each }));
	const results = rows.map((row) => judgeRow(row, settings));
	const { steps } = orderBench(rows, results, settings);
	return { rows, results, settings, steps, stations: stationsOf(steps, settings.bench) };
}

test('a test cut comes first, and again wherever the thickness changes', () => {
	const { stations } = benchOf('guide', [{ shape: '3:2', board: 'B' }, { shape: '3:2' }]);
	expect(stations.map(({ kind }) => kind)).toEqual([
		'test cut',
		'step',
		'step',
		'step',
		'test cut',
		'step',
		'step',
		'step',
	]);
	expect(new Set(stations.map(({ key }) => key)).size).toBe(stations.length);
});

test('a fresh blade is due after so many mounts, four cuts each', () => {
	const { stations } = benchOf({ kind: 'guide', way: 'mount by mount', bladeEvery: 1 }, [
		{ shape: '3:2' },
		{ shape: '3:2' },
	]);
	const due = stations.flatMap((station) => (station.kind === 'step' && station.isBladeDue ? [station.number] : []));
	// 78, 72, 70 and 70, 72, 78: the setting at which one ends begins the next, so the fifth cut is in the third step
	expect(due).toEqual([4]);
	expect(
		benchOf('guide', [{ shape: '3:2' }]).stations.some((station) => station.kind === 'step' && station.isBladeDue),
	).toBe(false);
});

test('a mount is ticked off when its cuts of the step are, as the row asks now', () => {
	const { rows, results, settings, steps } = benchOf('guide', [{ shape: '3:2', copies: '2' }]);
	const sides = steps.find(({ cuts }) => cuts.some(({ side }) => side === 'left'))!;
	const mounts = stepMounts(sides, rows, results, settings, new Map());
	expect(mounts.map(({ copy, isMade, sides: cut }) => [copy, isMade, sidesInWords(cut)])).toEqual([
		[1, false, 'both sides'],
		[2, false, 'both sides'],
	]);
	const ticks = new Map(mounts[1]!.cuts.map((cut) => [tickKey(cut), cut]));
	const made = () => stepMounts(sides, rows, results, settings, ticks).map(({ isMade }) => isMade);
	expect(made()).toEqual([false, true]);
	const [key, tick] = [...ticks][0]!;
	ticks.set(key, { ...tick, border: settings.ruler });
	expect(made(), 'cut somewhere else').toEqual([false, false]);
});

test('the active step is the one named, else the first that is not done, with its test cut', () => {
	const { stations } = benchOf('guide', [{ shape: '3:2', board: 'B' }, { shape: '3:2' }]);
	expect(activeStation(stations, stations[5]!.key, () => false)).toBe(5);
	expect(activeStation(stations, undefined, () => false)).toBe(0);
	const done = new Set(stations.slice(0, 4));
	expect(activeStation(stations, 'gone', (station) => done.has(station))).toBe(4);
	done.add(stations[5]!);
	expect(activeStation(stations, 'gone', (station) => done.has(station))).toBe(6);
	expect(activeStation(stations, 'gone', () => true)).toBe(0);
	expect(activeStation([], undefined, () => true)).toBe(0);
});

test('a step that the guide cannot be set to says so; a straight edge holds any', () => {
	const limits = { greatest: 75, least: 71, correction: 1 };
	const problems = (kind: string) => {
		const { steps, settings } = benchOf({ kind, ...limits }, [{ shape: '3:2' }]);
		return steps.map((step) => guideProblem(step, settings.bench));
	};
	expect(problems('guide')).toEqual(['past', undefined, 'under']); // 78 is set to 77, 72 to 71, 70 is too narrow
	expect(problems('straight edge')).toEqual([undefined, undefined, undefined]);
});
