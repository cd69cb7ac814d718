import { expect, test } from 'vitest';
import { recordOf } from '../../../../src/core/lists/recordOf.ts';
import { showOf } from './showOf.ts';

test('prices as typed, worked out or words, values that are amounts, all in the currency that is named', () => {
	const { rows, results, settings } = showOf(
		[
			'price 450 EUR, value 400, stage sold',
			'net 100, value see the letter, stage Collected',
			'price NFS, value 90 GBP, stage held',
			'title Ebb',
		],
		{ unit: 'mm', commission: '50%' },
	);
	const record = recordOf({ rows, results, settings, costOf: () => undefined });
	expect(rows.map((_, place) => record.priceOf(place))).toEqual(['450.00 EUR', '200.00 EUR', 'NFS', '']);
	expect(rows.map((_, place) => record.valueOf(place))).toEqual([40_000, undefined, undefined, undefined]);
	expect(record.settings.currency?.code).toBe('EUR');
	expect(rows.map((_, place) => record.isSold(place))).toEqual([true, true, false, false]);
	expect(rows.map((_, place) => record.saleOf(place).isCollected)).toEqual([false, true, false, false]);
});
