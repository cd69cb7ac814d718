import { longestHeader, readHeader, unitIn } from './headers.ts';

/** Words that say which side of a size, or which border, stands in a column; their group stands in the line above. */
const sideWords = /^(?:w|h|width|height|size|side|top|bottom)$/i;

/**
 * Puts two header lines into one, where the second names no rows: units under the names, or the sides of a size under
 * what the size is of, `mount` over `width` and `height`, said once for both.
 * @returns undefined where the second line is a row like the others
 */
export function joinHeaderLines(first: readonly string[], second: readonly string[]): readonly string[] | undefined {
	const isUnit = (cell: string) => unitIn(cell) !== undefined;
	const below = second.map((cell) => cell.trim());
	if (below.some((cell) => cell.length > longestHeader)) return undefined;
	if (below.every((cell) => cell === '' || isUnit(cell))) {
		const joined = first.map((cell, at) => withUnit(cell, below[at] ?? ''));
		const isWrong = joined.some((cell, at) => below[at] && isKnown(first[at]!) && !isKnown(cell));
		return !isWrong && joined.some((cell, at) => below[at] && isKnown(cell)) ? joined : undefined;
	}
	if (below.every((cell) => !sideWords.test(withoutUnit(cell)))) return undefined;
	let group = '';
	const joined = Array.from({ length: Math.max(first.length, below.length) }, (_, at) => {
		const [above, under] = [first[at]?.trim() ?? '', below[at] ?? ''];
		if (above !== '') group = above;
		if (under === '') return above;
		return isUnit(under) ? withUnit(above, under) : sideWords.test(withoutUnit(under)) ? `${group} ${under}` : under;
	});
	const isNamed = below.every((cell, at) => cell === '' || isUnit(cell) || isKnown(joined[at]!));
	return isNamed && joined.filter(isKnown).length > first.filter(isKnown).length ? joined : undefined;
}

const isKnown = (header: string): boolean => readHeader(header).kind !== 'unknown';

/** A name with the unit that stands under it. */
const withUnit = (name: string, unit: string): string =>
	unit === '' || name.trim() === '' ? name : `${name.trim()} (${unit.replace(/^[([{]|[)\]}]$/g, '')})`;

const withoutUnit = (cell: string): string => cell.replace(/\s*[([{][^()[\]{}]*[)\]}]$/, '');
