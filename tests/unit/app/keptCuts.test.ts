import { expect, test } from 'vitest';
import { KeptCuts } from '../../../src/app/keptCuts.ts';
import { orderBench } from '../../../src/core/bench/orderBench.ts';
import { windowCuts } from '../../../src/core/bench/windowCuts.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';

const { settings } = readSettings({});
const row = (id: string, width: string): Row => ({
	id,
	order: 0,
	typed: { 'picture width': width, 'picture height': '200' },
});

test('the order is the same from cuts that were kept, whichever row, place or setting has changed', () => {
	const kept = new KeptCuts();
	const [a, b, c] = [row('a', '300'), row('b', '310'), row('c', '320')];
	const result = new Map([a, b, c].map((each) => [each, judgeRow(each, settings)]));
	const inches = readSettings({ bench: 'straight edge', bottomWeight: '20' }).settings;
	for (const [rows, own] of [
		[[a, b], settings],
		[[a, b], settings],
		[[b, c, a], settings], // other places
		[[b, c], inches],
	] as const) {
		const results = rows.map((each) => (own === settings ? result.get(each)! : judgeRow(each, own)));
		const plan = orderBench(rows, results, own, undefined, kept.of);
		expect(plan.steps.length).toBeGreaterThan(0);
		expect(plan).toEqual(orderBench(rows, results, own));
	}
	expect(kept.of(result.get(a)!, 3, settings)).toBe(kept.of(result.get(a)!, 3, settings));
	expect(kept.of(result.get(a)!, 2, settings)).toEqual(windowCuts(result.get(a)!, 2, settings));
});
