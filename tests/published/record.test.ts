import { expect, test } from 'vitest';
import { judgeRow } from '../../src/core/findings/judgeRow.ts';
import { priceOf } from '../../src/core/record/priceOf.ts';
import { priceText } from '../../src/core/record/priceWords.ts';
import { salesOf } from '../../src/core/record/sales.ts';
import { readSettings } from '../../src/core/settings/readSettings.ts';
import type { Row } from '../../src/core/show/row.ts';
import { formatMoney } from '../../src/core/values/money.ts';
import { cases } from '../../shared/check-values/record.json' with { type: 'json' };

test.each(cases.sales)(
	'$price at $commission commission and $vat VAT on that leaves $due ($source)',
	({ price, commission, vat, ...published }) => {
		const { settings } = readSettings({ commission, vat });
		const row: Row = { id: 'a', order: 1, typed: { title: 'Work', price, stage: 'sold' } };
		const { total } = salesOf({
			...{ rows: [row], results: [judgeRow(row, settings)], settings },
			costOf: () => undefined,
		});
		const say = (minorUnits: number) => formatMoney(minorUnits, undefined);
		expect([say(total.commission), say(total.vat), say(total.due)]).toEqual([
			...[published.commissionDue, published.vatDue, published.due],
		]);
	},
);

test.each([...cases.prices, cases.roundedUp])(
	'for $net the price is $price at $commission commission and $vat VAT on that ($source)',
	({ net, price, commission, vat, priceStep }) => {
		const { settings } = readSettings({ commission, vat, priceStep });
		const row: Row = { id: 'a', order: 1, typed: { title: 'Work', net } };
		expect(priceText(priceOf(row, judgeRow(row, settings), undefined, settings))).toBe(price);
	},
);
