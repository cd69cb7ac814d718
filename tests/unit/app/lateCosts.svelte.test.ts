import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LateCosts } from '../../../src/app/lateCosts.svelte.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { costReason, printCosts } from '../../../src/core/order/printCosts.ts';
import { whatToGet } from '../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../src/core/settings/settings.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const row = { id: 'a', order: 1, typed: { 'picture width': '300', 'picture height': '200', paper: 'Rag' } };

function costsOf(show: TypedSettings, rows = [row]) {
	const { settings } = readSettings(show);
	const toGet = vi.fn(() =>
		whatToGet({ rows, results: rows.map((each) => judgeRow(each, settings)), settings, plans: [], sticks: [] }),
	);
	const costs = new LateCosts();
	costs.begin(() => ({ rows, settings, toGet, printCosts, costReason }));
	return { costs, settings, toGet };
}

test('costs come when typing pauses, with their reason; a row that has changed since has none', () => {
	const { costs, settings } = costsOf({ papers: [{ name: 'Rag', width: 329, height: 483, price: '4.20' }] });
	costs.later();
	costs.later();
	expect(costs.costOf(row)).toBeUndefined();
	vi.runAllTimers();
	expect(costs.costOf(row)).toBe(420);
	expect(costs.reasonOf(row, settings)).toMatch(/^What it needs costs 4\.20: 4\.20 for Rag\. No price yet for /);
	const onOther = { ...row, typed: { ...row.typed, paper: 'A3' } };
	expect(costs.costOf(onOther)).toBeUndefined();
	expect(costs.reasonOf(onOther, settings)).toBeUndefined();
});

test('a print that is sold meanwhile costs what it did; what it takes without a price is said', () => {
	const { costs } = costsOf({ papers: [{ name: 'Rag', width: 329, height: 483, price: '4.20' }] });
	costs.now();
	const sold = { ...row, typed: { ...row.typed, stage: 'sold', buyer: 'R. Thistle' } };
	expect(costs.costOfRow(sold)).toEqual({ minorUnits: 420, isPartial: true });
	expect(costs.costOfRow({ ...sold, id: 'b' })).toBeUndefined();
});

test('in a show without prices nothing is worked out', () => {
	const { costs, toGet } = costsOf({ papers: [{ name: 'Rag', width: 329, height: 483 }] });
	costs.now();
	expect(toGet).not.toHaveBeenCalled();
	expect(costs.costOf(row)).toBeUndefined();
});

test('stopped, it works nothing out', () => {
	const { costs, toGet } = costsOf({ papers: [{ name: 'Rag', width: 329, height: 483, price: '4.20' }] });
	costs.later();
	costs.stop();
	vi.runAllTimers();
	expect(toGet).not.toHaveBeenCalled();
});
