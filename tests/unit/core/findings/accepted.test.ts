import { expect, test } from 'vitest';
import { accept, withdraw } from '../../../../src/core/findings/accepted.ts';
import { resultOf, rowOf, withChange } from './rowOf.ts';

const codes = (row: ReturnType<typeof rowOf>) => resultOf(row).findings.map(({ code }) => code);

test('a look is accepted, kept in the row, and taken back', () => {
	const row = rowOf('picture 308 x 308');
	const { findings } = resultOf(row);
	const accepted = withChange(row, accept([findings[0]!], row));
	expect(accepted.typed.accepted).toBe('uneven(side:149mm/top:70mm/difference:79mm/share:112.857%/allowed:15%)');
	expect(resultOf(accepted)).toMatchObject({ findings: [], accepted: [{ code: 'uneven' }] });
	expect(withChange(accepted, withdraw([findings[0]!], accepted))).toEqual(row);
});

test('it comes back when its figures change, and only then', () => {
	const accepted = rowOf(
		'picture 308 x 308, accepted uneven(side:149mm/top:70mm/difference:79mm/share:112.857%/allowed:15%)',
	);
	expect(codes(accepted)).toEqual([]);
	expect(codes(withChange(accepted, { title: 'Tide' }))).toEqual([]);
	expect(codes(withChange(accepted, { top: '73' }))).toContain('uneven');
});

test('several are accepted side by side; a new acceptance takes the place of the same one', () => {
	const row = rowOf('picture 528 x 339');
	const { findings } = resultOf(row);
	let accepted = row;
	for (const finding of findings) accepted = withChange(accepted, accept([finding], accepted));
	for (const finding of findings) accepted = withChange(accepted, accept([finding], accepted));
	expect(accepted.typed.accepted?.split(' ')).toEqual([
		'uneven(side:39mm/top:55mm/difference:16mm/share:41.026%/allowed:15%)',
		'thin-border(side:39mm/least:40mm)',
	]);
	expect(codes(accepted)).toEqual([]);
});

test('a stop cannot be accepted', () => {
	const row = rowOf('picture 456 x 306, reveal 6, paper A4, accepted falls-through');
	expect(codes(row)).toContain('falls-through');
	expect(resultOf(row).isStopped).toBe(true);
});

test('a bare code accepts nothing: it could never come back', () =>
	expect(codes(rowOf('shape 1:1, accepted uneven'))).toContain('uneven'));

test.each([
	['shape 4:5, picture 360 x 240', { shape: '1:4' }, 'shape-clash'],
	['picture 456 x 306, paper 592 x 400', { paper: '640 x 440' }, 'paper-crowds'],
])('%s, accepted, is told again with %o', (line, change, code) => {
	const row = rowOf(line);
	const finding = resultOf(row).findings.find((one) => one.code === code)!;
	const accepted = withChange(row, accept([finding], row));
	expect(codes(accepted)).not.toContain(code);
	expect(codes(withChange(accepted, change))).toContain(code);
});
