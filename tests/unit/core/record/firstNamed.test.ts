import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FirstNamed, firstNamed } from '../../../../src/core/record/inCurrency.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { listSteps } from '../values/listSteps.ts';

const prices = { '£5': 'GBP', '€7': 'EUR', '30': undefined, '': undefined } as const;
const { settings } = readSettings({});
/** Each row another object, with the reading of its own price. */
const priced = fc
	.constantFrom(...(Object.keys(prices) as (keyof typeof prices)[]))
	.map((price) => ({ price, ...workOut({ id: 'r', order: 0, typed: { price } }, settings) }));

test('after each edit the currency is that of the first price that names one', () =>
	fc.assert(
		fc.property(listSteps(priced), (lists) => {
			let former: FirstNamed | undefined;
			for (const results of lists) {
				former = firstNamed(results, former);
				const codes = results.map(({ price }) => prices[price]);
				expect(former.at?.currency.code).toBe(codes.find((code) => code !== undefined));
			}
		}),
	));
