import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FirstNamed, firstNamed } from '../../../../src/core/record/inCurrency.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { listSteps } from '../values/listSteps.ts';

const prices = { '£5': 'GBP', '€7': 'EUR', '30': undefined, '': undefined } as const;
const row = fc
	.constantFrom(...(Object.keys(prices) as (keyof typeof prices)[]))
	.map((price): Row => ({ id: 'r', order: 0, typed: { price } }));

test('after each edit the currency is that of the first price that names one', () =>
	fc.assert(
		fc.property(listSteps(row), (lists) => {
			let former: FirstNamed | undefined;
			for (const rows of lists) {
				former = firstNamed(rows, former);
				const codes = rows.map(({ typed }) => prices[typed.price as keyof typeof prices]);
				expect(former.at?.currency.code).toBe(codes.find((code) => code !== undefined));
			}
		}),
	));
