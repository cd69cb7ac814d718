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

test('cuts that were made ahead are not made again; what has ended makes none', () => {
	const kept = new KeptCuts();
	let looks = 0;
	const results = ['300', '310', '320'].map((width, place) => ({
		...judgeRow(row(`${place}`, width), settings),
		get isStopped() {
			looks++;
			return false;
		},
	}));
	const steps = kept.ahead(results, settings, () => looks === 2);
	expect([...steps]).toHaveLength(2);
	looks = 0;
	const cuts = results.map((result, place) => kept.of(result, place + 1, settings));
	expect(looks).toBe(1); // the third
	expect(cuts).toEqual(results.map((result, place) => windowCuts(result, place + 1, settings)));
});

test('rows that are cut alike share what the bench is set to; under other settings it is set alike for another border', () => {
	const kept = new KeptCuts();
	const cutsOf = (side: string, bench: object) => {
		const own = readSettings({ bench }).settings;
		const results = ['a', 'b'].map((id) =>
			judgeRow({ ...row(id, '300'), typed: { 'picture width': '300', 'picture height': '200', side } }, own),
		);
		const cuts = results.map((result, place) => kept.of(result, place + 1, own));
		expect(cuts).toEqual(results.map((result, place) => windowCuts(result, place + 1, own)));
		return cuts.map((ofRow) => ofRow.find(({ cut }) => cut.side === 'left')!);
	};
	const [one, other] = cutsOf('70', {});
	expect(other!.setUp).toBe(one!.setUp);
	const [wider] = cutsOf('72', { correction: '2 mm' });
	expect(wider!.key).toBe(one!.key);
	expect(wider!.setUp.border).not.toBe(one!.setUp.border);
});
