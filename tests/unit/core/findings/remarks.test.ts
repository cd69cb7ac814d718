import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { withEditionClashes } from '../../../../src/core/findings/editionClashes.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { needsOf, remarksOf } from '../../../../src/core/findings/remarks.ts';
import { rowOf, wideShow } from './rowOf.ts';

const { settings } = readSettings(wideShow);
const shown = (...lines: string[]) => {
	const rows = lines.map(rowOf);
	return { rows, results: rows.map((row) => judgeRow(row, settings)) };
};
const remarks = (...lines: string[]) => {
	const { rows, results } = shown(...lines);
	return remarksOf(rows, results, settings).map(({ message }) => message);
};

test('one title at two sizes in one edition', () => {
	expect(
		remarks(
			'title Tide, maker A, edition 1/25, picture 456 x 306',
			'title tide, maker a, edition 2/25, picture 300 x 200',
		),
	).toEqual(['“Tide” by A is printed at 456 × 306 mm and 300 × 200 mm in one edition. An edition has one size.']);
	expect(
		remarks(
			'title Blue Sea, maker Ann  Lee, edition 1/25, picture 456 x 306',
			'title Blue  Sea, maker Ann Lee, edition 2/25, picture 300 x 200',
		),
	).toHaveLength(1);
	expect(
		remarks(
			'title Tide, maker A, edition 1/25, picture 456 x 306',
			'title Tide, maker B, edition 2/25, picture 300 x 200',
		),
	).toEqual([]);
	expect(remarks('title Tide, edition open, picture 456 x 306', 'title Tide, edition open, picture 300 x 200')).toEqual(
		[],
	);
});

test.each([
	[50, 5, false],
	[50, 6, true],
	[25, 2, false],
	[25, 3, true],
])(
	'an edition of %i with %i proofs is over a tenth: %s (edition of 50: at most 5; cartage.org.lb)',
	(size, proofs, isOver) => {
		const said = remarks(`title Tide, edition 1/${size}, shape 3:2`, `title Tide, edition AP 1/${proofs}, shape 3:2`);
		expect(said.some((message) => message.includes('over a tenth'))).toBe(isOver);
	},
);

test('the same number twice stops both rows, and a proof is no number', () => {
	const { rows, results } = shown(
		'title Tide, edition 3/25, shape 3:2',
		'title Tide , edition 3/25, shape 3:2',
		'title Tide, edition AP 3/5, shape 3:2',
	);
	const all = withEditionClashes(rows, results, settings);
	expect(all.map(({ isStopped }) => isStopped)).toEqual([true, true, false]);
	expect(all[0]!.findings[0]!.message).toBe('Edition 3/25 of “Tide” is there twice: also in row 2.');
	expect(all[2]).toBe(results[2]);
});

test('two editions of a title may have two sizes, and a row of which no copy is made has none', () => {
	const large = 'title Tide, maker A, edition 1/5, picture 456 x 306';
	expect(remarks(large, 'title Tide, maker A, edition 1/25, picture 300 x 200')).toEqual([]);
	expect(remarks(large, 'title Tide, maker A, edition 2/5, picture 300 x 200, copies 0')).toEqual([]);
	expect(remarks(large, 'title Tide, maker A, edition 2/5, picture 300 x 200')).toHaveLength(1);
	const proof = 'title Tide, maker A, edition HC 1/2, picture 300 x 200';
	expect(remarks(large, proof), 'a proof of the only edition').toHaveLength(1);
	expect(remarks(large, proof, 'title Tide, maker A, edition 1/25, picture 300 x 200')).toEqual([]);
});

test('a row of which no copy is made has its number to itself', () => {
	const { rows, results } = shown(
		'title Tide, edition 3/25, shape 3:2',
		'title Tide, edition 3/25, shape 3:2, copies 0',
	);
	expect(withEditionClashes(rows, results, settings)).toBe(results);
});

test('mount sizes count either way round, borders all together', () => {
	const { results } = shown('shape 3:2', 'shape 2:3', 'picture 300 x 200, mount fit');
	expect(needsOf(results).mountSizes).toBe(2);
	expect(needsOf(shown('picture 300 x 200, mount fit').results)).toEqual({ mountSizes: 1, borders: 2 });
});

test('a row without copies needs no mount: its copies are 0, or nothing is typed in it', () => {
	const untyped = judgeRow({ id: 'r', order: 0, typed: {}, extra: { crate: '7' } }, settings);
	const none = shown('shape 3:2, copies 0').results;
	expect(needsOf([untyped, ...none])).toEqual({ mountSizes: 0, borders: 0 });
	expect(needsOf(shown('shape 3:2').results).mountSizes).toBe(1);
});

test('the same number of a title in other figures or letters is another print only in another series', () => {
	const codes = (first: string, second: string) => {
		const { rows, results } = shown(
			`title Tide, shape 3:2, edition ${first}`,
			`title Tide, shape 3:2, edition ${second}`,
		);
		return withEditionClashes(rows, results, settings).map(({ isStopped, findings }) => [
			findings.filter(({ code }) => code === 'edition-clash').map(({ level }) => level),
			isStopped,
		])[0];
	};
	expect(codes('AP 1/3', 'a/p 1/3')).toEqual([['stop'], true]);
	expect(codes('III/X', 'iii / x')).toEqual([['stop'], true]);
	expect(codes('III/X', '3/10')).toEqual([[], false]);
	expect(codes('HC 1/3', 'AP 1/3')).toEqual([[], false]);
	expect(codes('BAT', 'BAT')).toEqual([[], false]);
	// One finding of a code: that it is there twice says more than that it has two copies.
	expect(codes('3/25, copies 2', '3/25')).toEqual([['stop'], true]);
});
