import { describe, expect, test } from 'vitest';
import { columns } from '../../../src/core/show/columns.ts';
import { guardCell, unguardCell } from '../../../src/files/formulaGuard.ts';
import { readHeader, resultLengths, resultPlaces, resultTexts, resultWeight } from '../../../src/files/headers.ts';

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
		['picture width {mm}', 'picture width', 'mm'],
		['picture width (in.)', 'picture width', 'in'],
		['picture width (in mm)', 'picture width', 'mm'],
		['picture width in mm', 'picture width', 'mm'],
		['picture width / mm', 'picture width', 'mm'],
		['Image width/mm', 'picture width', 'mm'],
		['picture width: cm', 'picture width', 'cm'],
		['Mat Width"', 'mount width', 'in'],
		['Mat Width ″', 'mount width', 'in'],
		['art width', 'picture width', undefined],
		['Artwork size', 'picture width', undefined],
		['width of picture', 'picture width', undefined],
		['Width picture', 'picture width', undefined],
		['sight height', 'window height', undefined],
		['mat opening width (in)', 'window width', 'in'],
		['mount outer size', 'mount', undefined],
		['top border (mm)', 'top', 'mm'],
		['Border, bottom', 'bottom', undefined],
		['side borders', 'side', undefined],
		['Photographer name', 'maker', undefined],
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

	test.each<[string, string, string | undefined, boolean]>([
		['image size (w x h)', 'picture width', undefined, false],
		['Image size (H×W)', 'picture width', undefined, true],
		['artwork h x w, cm', 'picture width', 'cm', true],
		['window (height x width, in)', 'window width', 'in', true],
		['Mat W*H (mm)', 'mount', 'mm', false],
		['paper size, h by w', 'paper', undefined, true],
	])('%s holds sizes of %s in %s, height first: %s', (text, name, unit, isHeightFirst) =>
		expect(readHeader(text)).toEqual({ kind: 'typed', name, unit, ...(isHeightFirst && { isHeightFirst }) }),
	);

	test('a header of a megabyte is none of ours, at once', () => {
		for (const text of [' ', '(', 'in ', 'w x ', '- '].map((part) => `title${part.repeat(500_000)}!`)) {
			expect(readHeader(text).kind).toBe('unknown');
			// Read badly, this lasts minutes, and the runner gives up.
		}
	});

	test('every column is known by its own name', () => {
		for (const { name } of columns) expect(readHeader(name)).toMatchObject({ kind: 'typed', name });
		for (const name of [...resultLengths.map(({ name }) => name), resultWeight, ...resultPlaces, ...resultTexts])
			expect(readHeader(name)).toMatchObject({ kind: 'result', name });
	});

	test('the result columns are those that the files have', () => {
		expect([...resultLengths.map(({ name }) => name), resultWeight, ...resultPlaces, ...resultTexts]).toEqual([
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
			'result framed width',
			'result framed height',
			'result weight (kg)',
			'result hang left',
			'result hook height',
			'result findings',
			'result steps',
			'result settings',
		]);
	});
});

describe('cells that a spreadsheet would run', () => {
	test.each([
		'=1+1',
		'+1',
		'@SUM(1)',
		'-2+3',
		'-cmd',
		'-',
		'\tx',
		'\rx',
		'\nx',
		' =1',
		'\u00a0+1',
		"'quoted",
		"'",
		'＝1+1',
		'-1,5',
	])('%j is guarded', (text) => {
		expect(guardCell(text)).toBe(`'${text}`);
		expect(unguardCell(guardCell(text))).toBe(text);
	});
	test.each(['', '-6', '-6.25', '70', 'a=b', ' 1', '"', '−5', 'it’s'])('%j is left alone', (text) => {
		expect(guardCell(text)).toBe(text);
		expect(unguardCell(text)).toBe(text);
	});
});
