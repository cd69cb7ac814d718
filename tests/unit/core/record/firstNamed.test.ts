import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FirstNamed, firstNamed, recordSettings } from '../../../../src/core/record/inCurrency.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { listSteps } from '../values/listSteps.ts';

const prices = { '£5': 'GBP', '€7': 'EUR', '30': undefined, '': undefined } as const;
const { settings } = readSettings({});
const row = fc
	.constantFrom(...(Object.keys(prices) as (keyof typeof prices)[]))
	.map((price) => ({ id: 'r', order: 0, typed: { price }, price }));

test('after each edit the currency is that of the first price that names one', () =>
	fc.assert(
		fc.property(listSteps(row), (lists) => {
			let former: FirstNamed | undefined;
			for (const rows of lists) {
				former = firstNamed(rows, former);
				const codes = rows.map(({ price }) => prices[price]);
				const code = codes.find((each) => each !== undefined);
				expect(former.at?.currency.code).toBe(code);
				const results = rows.map((each) => workOut(each, settings));
				expect(recordSettings(results, settings).currency?.code).toBe(code);
			}
		}),
	));
