import { describe, expect, test } from 'vitest';
import { columns } from '../../../src/core/show/columns.ts';
import { guardCell, unguardCell } from '../../../src/files/formulaGuard.ts';
import { readHeader, resultLengths, resultTexts } from '../../../src/files/headers.ts';

describe('headers', () => {
	test.each<[string, string, string | undefined]>([
		['picture width', 'picture width', undefined],
		['Picture Width', 'picture width', undefined],
		['PICTURE_WIDTH', 'picture width', undefined],
		['picture-width', 'picture width', undefined],
		['pictureWidth', 'picture width', undefined],
		['picture width (mm)', 'picture width', 'mm'],
		['picture width(CM)', 'picture width', 'cm'],
		['picture width [in]', 'picture width', 'in'],
		['picture width ( inches )', 'picture width', 'in'],
		['picture width (")', 'picture width', 'in'],
		['picture width (m)', 'picture width', 'm'],
		['bottom weight (%)', 'bottom weight', '%'],
		['bottom weight (mm)', 'bottom weight', 'mm'],
		['mat', 'mount', undefined],
		['Mat width (in)', 'mount width', 'in'],
		['inner mat', 'inner mount', undefined],
	])('%s is the typed column %s in %s', (text, name, unit) =>
		expect(readHeader(text)).toEqual({ kind: 'typed', name, unit }),
	);

	test.each<[string, string, string | undefined]>([
		['result mount width (mm)', 'result mount width', 'mm'],
		['Result Overlap Side [in]', 'result overlap side', 'in'],
		['result findings', 'result findings', undefined],
		['result settings', 'result settings', undefined],
	])('%s is the result column %s in %s', (text, name, unit) =>
		expect(readHeader(text)).toEqual({ kind: 'result', name, unit }),
	);

	test.each([
		'',
		'width',
		'price (EUR)',
		'title (mm)',
		'picture width (%)',
		'picture width (px)',
		'result findings (mm)',
		'results',
	])('%j is none of ours', (name) => expect(readHeader(name)).toEqual({ kind: 'unknown', name }));

	test('every column is known by its own name', () => {
		for (const { name } of columns) expect(readHeader(name)).toMatchObject({ kind: 'typed', name });
		for (const name of [...resultLengths.map(({ name }) => name), ...resultTexts])
			expect(readHeader(name)).toMatchObject({ kind: 'result', name });
	});

	test('the result columns are those that the files have', () => {
		expect([...resultLengths.map(({ name }) => name), ...resultTexts]).toEqual([
			'result mount width',
			'result mount height',
			'result window width',
			'result window height',
			'result picture width',
			'result picture height',
			'result side',
			'result top',
			'result bottom',
			'result overlap side',
			'result overlap top',
			'result overlap bottom',
			'result findings',
			'result steps',
			'result settings',
		]);
	});
});

describe('cells that a spreadsheet would run', () => {
	test.each(['=1+1', '+1', '@SUM(1)', '-2+3', '-cmd', '-', '\tx', '\rx', "'quoted", "'", '＝1+1', '-1,5'])(
		'%j is guarded',
		(text) => {
			expect(guardCell(text)).toBe(`'${text}`);
			expect(unguardCell(guardCell(text))).toBe(text);
		},
	);
	test.each(['', '-6', '-6.25', '70', 'a=b', ' =1', '"', '−5', 'it’s'])('%j is left alone', (text) => {
		expect(guardCell(text)).toBe(text);
		expect(unguardCell(text)).toBe(text);
	});
});
