import { expect, test } from 'vitest';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { salesOf } from '../../../src/core/record/sales.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../src/core/show/row.ts';
import { writeSales } from '../../../src/files/salesCsv.ts';

const { settings } = readSettings({ currency: 'EUR', commission: '50%' });
const prints: readonly Typed[] = [
	{ number: '1', title: 'Pier', maker: 'A', edition: '1/3', price: '90.50', stage: 'sold', buyer: 'R. Thistle' },
	{ number: '2', title: '=Weir', maker: 'B', copies: '2', net: '20', stage: 'collected' },
	{ number: '3', title: 'Quay', maker: 'B', price: 'NFS', stage: 'sold' },
	{ number: '4', title: 'Ebb', price: '70', stage: 'hung', buyer: 'S. Fern' },
];
const rows = prints.map((typed, at): Row => ({ id: `r${at}`, order: at + 1, typed }));
const sales = salesOf({
	...{ rows, settings, results: rows.map((row) => judgeRow(row, settings)) },
	costOf: () => undefined,
});

test('what is sold, a line each, then the makers, then all; no buyer', () =>
	expect(writeSales(sales, false)).toBe(
		[
			'kind,number,title,maker,edition,copies,stage,price,currency,sold,commission,vat,due',
			'print,1,Pier,A,1/3,1,sold,90.50,EUR,90.50,,,',
			"print,2,'=Weir,B,,2,collected,40.00,EUR,80.00,,,",
			'print,3,Quay,B,,1,sold,NFS,,,,,',
			'maker,,,A,,1,,,EUR,90.50,45.25,0.00,45.25',
			'maker,,,B,,2,,,EUR,80.00,40.00,0.00,40.00',
			'total,,,,,3,,,EUR,170.50,85.25,0.00,85.25',
			'',
		].join('\r\n'),
	));

test('with buyers only where that is asked for, and only of what is sold', () => {
	const lines = writeSales(sales, true).split('\r\n');
	expect(lines[0]).toMatch(/,due,buyer$/);
	expect(lines[1]).toMatch(/,R\. Thistle$/);
	expect(writeSales(sales, true)).not.toContain('Fern');
	expect(writeSales(sales, false)).not.toMatch(/Thistle|buyer/);
});
