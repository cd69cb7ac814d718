/** Cells of this many signs, millions of which take minutes or hours to read in the wrong way. */
export const largeCells = (size: number): readonly (readonly [what: string, cell: string])[] => [
	['one word', 'x'.repeat(size)],
	['words', 'word '.repeat(size / 5)],
	['lines', `"${'word\n'.repeat(size / 5)}"`],
	['digits', '5'.repeat(size)],
	['numbers', '5 '.repeat(size / 2)],
	['signs of times', '5 x '.repeat(size / 4)],
	['fractions', '1/2 '.repeat(size / 4)],
	['blanks before a number', `${' '.repeat(size)}7`],
	['blanks between a number and its unit', `7${' '.repeat(size)}mm`],
	['quotes', `"${'""'.repeat(size / 2)}"`],
];

/** Three rows of many columns that nobody knows, behind two that are. */
export function manyColumns(count = 100_000): string {
	const names = Array.from({ length: count }, (_, place) => `column of others ${place}`);
	const rows = ['a', 'b', 'c'].map((row) => [row, '70', ...names.map((_, place) => `${row}${place}`)].join(','));
	return [`title,side,${names.join(',')}`, ...rows].join('\n');
}

/** Cells without a header. */
export const manyCells = (count = 100_000): string => `title,side\nPier,70${',x'.repeat(count)}\n`;

/** Rows of one print id. */
export const equalIds = (count = 5000): string =>
	`print id,title,edition\n${Array.from({ length: count }, (_, place) => `same,Print ${place},3/25\n`).join('')}`;

/** Prints of one number of one edition. */
export const equalEditions = (count = 5000): string => `title,edition\n${'Pier,3/25\n'.repeat(count)}`;
