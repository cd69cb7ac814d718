import { expect, test } from 'vitest';
import { pixelsAnInchOf } from '../../../../src/core/row/resolution.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import { resultOf, rowOf, wideShow, withChange } from './rowOf.ts';

const inchShow = { unit: 'in', mountSize: '20 x 16 in', border: '2 in', ruler: '1/16 in' };
const sizeOf = ({ solved }: ReturnType<typeof resultOf>) =>
	[solved.pictureWidth!, solved.pictureHeight!].map((side) => side / 1e7);
const found = (line: string, code: string, show: TypedSettings = wideShow) =>
	resultOf(rowOf(line), show).findings.find((each) => each.code === code);

test('the shape is that of the file, unless one is typed', () => {
	expect(sizeOf(resultOf(rowOf('pixels 6000 x 4000')))).toEqual(sizeOf(resultOf(rowOf('shape 3:2'))));
	expect(sizeOf(resultOf(rowOf('pixels 6000 x 4000, shape 1:1')))).toEqual([308, 308]);
	expect(resultOf(rowOf('pixels 6000 x 4000')).findings.map(({ code }) => code)).not.toContain('needs-size');
});

test('pixels that cannot be read are not-read, and no shape', () => {
	const { findings, read } = resultOf(rowOf('pixels 6000'));
	expect(findings[0]).toMatchObject({ code: 'not-read', cells: ['pixels'] });
	expect(read.cells.shape).toBeUndefined();
});

test.each([
	// 2400 px at 10 in are 240 an inch
	['picture 10 x 8, pixels 2400 x 1920', undefined],
	['picture 10 x 8, pixels 2399 x 1920', 239],
	['picture 10 x 8, pixels 2400 x 1919', 239],
	['picture 10 x 8, pixels 1200 x 960', 120],
	// the file is cropped to a square: its 4000 make 10 in
	['picture 10 x 10, pixels 6000 x 2000', 200],
])('%s: %s pixels an inch are too few', (line, count) => {
	const finding = found(line, 'low-resolution', inchShow);
	expect(finding && (finding.figures as { pixelsAnInch: { count: number } }).pixelsAnInch.count).toBe(count);
});

test('the mend prints at the largest size that holds the fewest pixels an inch', () => {
	const row = rowOf('picture 15 x 10, pixels 2700 x 1800');
	const before = resultOf(row, inchShow);
	const finding = before.findings.find(({ code }) => code === 'low-resolution')!;
	expect(finding.message).toBe('At 15 × 10 in the file has 180 pixels an inch, under your 240.');
	expect(finding.mends.map(({ label }) => label)).toEqual(['Set picture to 11 1/4 × 7 1/2']);
	const after = resultOf(withChange(row, finding.mends[0]!.change), inchShow);
	expect(pixelsAnInchOf(after)).toBeCloseTo(240, 9);
	expect(after.findings.map(({ code }) => code)).not.toContain('low-resolution');
});

test('a print cropped to a shape of its own keeps it when it is made smaller', () => {
	const row = rowOf('picture 10 x 10, pixels 6000 x 2000');
	const mend = resultOf(row, inchShow).findings.find(({ code }) => code === 'low-resolution')!.mends[0]!;
	// 2000 px at 240 an inch are 8 1/3 in, 8 21/64 on the ruler
	expect(mend.label).toBe('Set picture to 8 21/64 × 8 21/64');
	const after = resultOf(withChange(row, mend.change), inchShow);
	expect(after.findings.map(({ code }) => code)).not.toContain('low-resolution');
});

test('in a metric show it goes down to what is shown of a length', () => {
	const finding = found('pixels 3000 x 2000', 'low-resolution')!;
	// 3000 px at 240 an inch are 317.5 mm
	expect(finding.mends[0]!.label).toBe('Set picture to 317.5 × 211.7');
	expect(
		resultOf(withChange(rowOf('pixels 3000 x 2000'), finding.mends[0]!.change)).findings.map(({ code }) => code),
	).not.toContain('low-resolution');
});

test('the setting says how many', () => {
	const line = 'picture 10 x 8, pixels 2400 x 1920';
	expect(found(line, 'low-resolution', { ...inchShow, pixelsAnInch: '300' })).toBeDefined();
	expect(found(line, 'low-resolution', { ...inchShow, pixelsAnInch: 0 })).toBeUndefined();
});

test.each([
	[
		'shape 1:1, pixels 6000 x 4000',
		'The file is 6000 × 4000 and the shape 1:1. 33.3 % of its width is cut off, half at each side.',
	],
	[
		'shape 3:2, pixels 4000 x 3000',
		'The file is 4000 × 3000 and the shape 3:2. 11.1 % of its height is cut off, half at top and bottom.',
	],
	['shape 3:2, pixels 6000 x 4000', undefined],
	['shape 3:2, pixels 6000 x 4001', undefined],
	['pixels 6000 x 4000', undefined],
])('%s: %s', (line, message) => {
	const finding = found(line, 'crops');
	expect(finding?.message).toBe(message);
	if (message)
		expect(finding).toMatchObject({
			level: 'note',
			cells: ['shape'],
			mends: [{ label: 'Clear shape', change: { shape: '' } }],
		});
});

test('typed sizes against the shape of the file', () => {
	expect(found('picture 300 x 300, pixels 6000 x 4000', 'shape-clash')!.message).toContain('which is not 3:2');
});
