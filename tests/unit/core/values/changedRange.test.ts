import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changedRange, withRange } from '../../../../src/core/values/changedRange.ts';
import { listSteps } from './listSteps.ts';

const [a, b, c, d] = [{}, {}, {}, {}];

test.each([
	{ former: [a, b, c], now: [a, b, c], range: { from: 3, to: 3, shift: 0 } },
	{ former: [a, b, c], now: [a, d, c], range: { from: 1, to: 2, shift: 0 } },
	{ former: [a, b, c], now: [a, d, b, c], range: { from: 1, to: 2, shift: 1 } },
	{ former: [a, b, c], now: [a, c], range: { from: 1, to: 1, shift: -1 } },
	{ former: [a, a], now: [a, a, a], range: { from: 2, to: 3, shift: 1 } },
	{ former: [a, a, a], now: [a], range: { from: 1, to: 1, shift: -2 } },
	{ former: [], now: [a], range: { from: 0, to: 1, shift: 1 } },
])('the shortest range that differs: $range', ({ former, now, range }) => {
	expect(changedRange(former, now)).toEqual(range);
});

test('a list that follows from another is as if made whole, and nothing outside of the range is made', () =>
	fc.assert(
		fc.property(listSteps(fc.record({ figure: fc.nat() })), ([first, ...lists]) => {
			const doubled = ({ figure }: { readonly figure: number }) => 2 * figure;
			let [former, made] = [first!, first!.map(doubled)] as [typeof first & object, readonly number[]];
			for (const list of lists) {
				const range = changedRange(former, list);
				made = withRange(made, range, (place) => doubled(list[place]!));
				expect(made).toEqual(list.map(doubled));
				former = list;
			}
		}),
	));

test('of a list that was made of another nothing is compared', () => {
	let looks = 0;
	const former = new Proxy([a, b, c], { get: (list, key) => (looks++, Reflect.get(list, key) as unknown) });
	const range = { from: 1, to: 2, shift: 0 };
	const now = withRange(former, range, () => d);
	looks = 0;
	expect(changedRange(former, now)).toEqual(range);
	expect(looks).toBe(0);
	expect(changedRange([a], now), 'of another list').toEqual({ from: 1, to: 3, shift: 2 });
});
