import { expect, test } from 'vitest';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { whatToGet } from '../../../src/core/order/whatToGet.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import { writeToGet } from '../../../src/files/getCsv.ts';

test('what to get as a list: metres, money in the currency, prints by name, formulas made harmless', () => {
	const { settings } = readSettings({
		currency: 'EUR',
		frames: [{ name: '=Box', width: 500, height: 400, moulding: 20, lip: 6, depth: 40, price: '24' }],
		supplies: [{ kind: 'tape', pack: 50, price: '4.20' }],
	});
	const rows = [{ id: 'r', order: 1, typed: { shape: '3:2', maker: 'Ana', frame: '=Box' } }];
	const results = rows.map((row) => judgeRow(row, settings));
	const toGet = whatToGet({ rows, results, settings, plans: [], sticks: [] });
	const lines = writeToGet(toGet, settings, () => 'Ebb').split('\r\n');
	expect(lines[0]).toBe('kind,name,size,wanted,there,unit,packs,price,cost,prints');
	expect(lines).toContain("frame,'=Box,500 × 400 mm,1,0,,1,24.00,24.00,Ebb");
	expect(lines).toContain('tape,tape,,2.116,0.000,m,1,4.20,4.20,Ebb');
	expect(lines).toContain('total,EUR,,,,,,,28.20,');
	expect(lines).toContain('share,Ana,,,,,,,28.20,');
});
