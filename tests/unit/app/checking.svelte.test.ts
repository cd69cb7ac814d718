import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Checking, type ToCheck } from '../../../src/app/checking.svelte.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers().restoreAllMocks());

const { settings } = readSettings({
	mountSize: '600 x 450 mm',
	border: '70 mm',
	boards: [
		{ name: 'Chalk', width: '1200 mm', height: '800 mm' },
		{ name: 'Slate', width: '1200 mm', height: '800 mm' },
	],
});
const noBoard = (place: number, board = `Oat ${place}`): Row => ({
	id: `r${place}`,
	order: place,
	typed: { 'picture width': '456', 'picture height': '306', board },
});
const manyRows = (count: number) => Array.from({ length: count }, (_, place) => noBoard(place));

function asked(rows: readonly Row[], of: ToCheck['of'] = 'stop'): ToCheck {
	return { of, rows, results: rows.map((row) => judgeRow(row, settings)), scale: settings };
}
const ids = ({ listed }: Checking) => listed.map(({ prints }) => prints.map(({ row }) => row.id).join(' '));

/** A clock by which each look at the time is a millisecond later: a slice has a few steps. */
function slowly(): void {
	let now = 0;
	vi.spyOn(performance, 'now').mockImplementation(() => now++);
}

test('of a short show all is there at once', () => {
	const checks = new Checking();
	checks.begin(asked(manyRows(5)));
	expect(ids(checks)).toEqual(['r0', 'r1', 'r2', 'r3', 'r4']);
	expect([checks.isLate, checks.isCut, checks.isLess]).toEqual([false, false, false]);
	expect(checks.listed[0]!.mends[0]!.map(({ changes }) => changes)).toContainEqual([
		{ id: 'r0', cells: { board: 'Slate' } },
	]);
});

test('of a long one it comes some at a time, and says so until it is all there', () => {
	slowly();
	const checks = new Checking();
	checks.begin(asked(manyRows(60)));
	expect([checks.listed.length, checks.isLate]).toEqual([0, true]);
	const seen = new Set<number>();
	while (checks.isLate) {
		vi.runOnlyPendingTimers();
		seen.add(checks.listed.length);
	}
	expect(checks.listed.length).toBe(60);
	expect(seen.size).toBeGreaterThan(5);
	expect(vi.getTimerCount()).toBe(0);
});

test('no more than a hundred are listed until more are asked for; then the first of them is waited for', async () => {
	const checks = new Checking();
	checks.begin(asked(manyRows(250)));
	vi.runAllTimers();
	expect([checks.listed.length, checks.isCut, checks.isLate]).toEqual([100, true, false]);
	slowly();
	const more = vi.fn();
	const first = checks.more().then(more);
	expect(checks.isLate).toBe(true);
	await first;
	expect(checks.listed.length).toBeGreaterThan(100);
	vi.runAllTimers();
	expect([checks.listed.length, checks.isCut]).toEqual([200, true]);
	void checks.more();
	vi.runAllTimers();
	expect([checks.listed.length, checks.isCut, checks.isLate]).toEqual([250, false, false]);
});

test('after an edit what is listed stays, but for the prints that have changed, until as much is there again', () => {
	const rows = manyRows(60);
	const checks = new Checking();
	checks.begin(asked(rows));
	vi.runAllTimers();
	slowly();
	const mended = [noBoard(0, 'Chalk'), ...rows.slice(1)];
	checks.begin(asked(mended));
	expect(checks.isLate).toBe(true);
	expect(ids(checks)).toEqual(rows.slice(1).map(({ id }) => id));
	while (checks.isLate) {
		vi.runOnlyPendingTimers();
		expect(checks.listed.length).toBe(59);
	}
	expect(checks.listed.map(({ prints }) => mended.includes(prints[0]!.row)).every(Boolean)).toBe(true);
	expect(checks.isLate).toBe(false);
});

test('a mend of several leaves out those that have changed while the list is late', () => {
	const rows = [0, 1, 2].map((place) => noBoard(place, 'same'));
	const checks = new Checking();
	checks.begin(asked(rows));
	expect(ids(checks)).toContain('r0 r1 r2');
	slowly();
	const others = Array.from({ length: 40 }, (_, place) => noBoard(place + 3));
	checks.begin(asked([noBoard(0, 'Chalk'), rows[1]!, rows[2]!, ...others]));
	expect(checks.isLate).toBe(true);
	expect(ids(checks)).toEqual(['r1 r2']);
	expect(checks.listed[0]!.mends[0]![0]!.changes.map(({ id }) => id)).toEqual(['r1', 'r2']);
});

test('of two that are asked for, one after the other, the last is listed', () => {
	slowly();
	const checks = new Checking();
	checks.begin(asked(manyRows(60)));
	vi.runOnlyPendingTimers();
	checks.begin(asked(manyRows(30)));
	expect(vi.getTimerCount()).toBe(1);
	vi.runAllTimers();
	expect(checks.listed.length).toBe(30);
	expect(checks.isLate).toBe(false);
});

test('stopped, it lists nothing more', () => {
	slowly();
	const checks = new Checking();
	checks.begin(asked(manyRows(60)));
	checks.stop();
	vi.runAllTimers();
	expect(checks.listed).toEqual([]);
});

test('of a level the prints of which it is the worst are listed; once there are none of them, the others', () => {
	const good: Row = {
		id: 'good',
		order: 9,
		typed: { 'picture width': '570', 'picture height': '420', board: 'Chalk' },
	};
	const checks = new Checking();
	checks.begin(asked([...manyRows(2), good], 'look'));
	expect([ids(checks), checks.isLess]).toEqual([['good'], true]);
	checks.begin(asked(manyRows(2), 'look'));
	expect([ids(checks), checks.isLess]).toEqual([['r0', 'r1'], false]);
});
