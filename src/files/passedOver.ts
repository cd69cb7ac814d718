/** Why a line between the rows is no row, in words; undefined where it is one. */
export function passedOver(cells: readonly string[], headers: readonly string[]): string | undefined {
	const filled = cells.filter((cell) => cell.trim() !== '');
	if (filled.length > 1 && filled.every((cell) => /^[\s:]*[-–—=_]{2,}[\s:]*$/.test(cell)))
		return 'is a rule between lines, and passed over';
	const isHeader = filled.length > 1 && cells.every((cell, at) => cell.trim() === (headers[at] ?? '').trim());
	return isHeader ? 'names the columns once more, and is passed over' : undefined;
}

const totalWords =
	/^(?:(?:grand|sub|zwischen|gesamt|sub-)?\s*-?(?:totals?|sums?|summe|gesamt|gesamtsumme|totale|totaal|totaux|suma|somme|somma|som))(?:\s+(?:net|netto|gross|brutto|prices?|prints|works|general|général|generale|generaal))?\s*:?$/iu;

/** A cell of a sum: a number, perhaps with what it is of. */
const isFigure = (cell: string): boolean => /^[^\d\p{L}]{0,3}\s*-?[\d.,'’\s]*\d\s*[^\d]{0,12}$/u.test(cell.trim());

/** No cell of a sum under a list is longer. */
const longestSum = 60;

/**
 * Whether a row reads like the sum under a list: it begins with the word for it, and has nothing but figures else; or all
 * that stands in it are figures, one of which is the sum of those above it.
 * @param above the rows before it
 * @param isSummed whether the figures of a column may be added up: numbers of prints are not
 */
export function isTotal(
	cells: readonly string[],
	above: readonly (readonly string[])[],
	isLast: boolean,
	isSummed: (at: number) => boolean,
): boolean {
	const filled = cells.filter((cell) => cell.trim() !== '');
	const [first = '', ...rest] = filled;
	if (filled.some((cell) => cell.length > longestSum)) return false;
	if (totalWords.test(first.trim()) && (isLast || rest.every(isFigure))) return true;
	return (
		isLast &&
		above.length > 1 &&
		filled.every(isFigure) &&
		cells.some((cell, at) => isSummed(at) && isSumOf(cell, above, at))
	);
}

const amountOf = (cell: string): number =>
	Number(/^[^\d]{0,4}(\d+(?:[.,]\d{1,2})?)[^\d]*$/.exec(cell.trim())?.[1]?.replace(',', '.'));

function isSumOf(cell: string, above: readonly (readonly string[])[], at: number): boolean {
	const amounts = above
		.map((cells) => cells[at] ?? '')
		.filter((text) => text.trim() !== '')
		.map(amountOf);
	const sum = amounts.reduce((all, amount) => all + amount, 0);
	return amounts.length > 1 && Math.abs(sum - amountOf(cell)) < 0.005; // in hundredths, as prices are
}
