/** Why a line between the rows is no row, in words; undefined where it is one. */
export function passedOver(cells: readonly string[], headers: readonly string[]): string | undefined {
	const filled = cells.filter((cell) => cell.trim() !== '');
	if (filled.length > 1 && filled.every((cell) => /^[\s:]*[-–—=_]{2,}[\s:]*$/.test(cell)))
		return 'is a rule between lines, and passed over';
	const isHeader = filled.length > 1 && cells.every((cell, at) => cell.trim() === (headers[at] ?? '').trim());
	return isHeader ? 'names the columns once more, and is passed over' : undefined;
}

/** Whether a row reads like the sum under a list. */
export const isTotal = (cells: readonly string[]): boolean =>
	/^(?:grand |sub)?(?:total|sum)s?\s*:?$/i.test(cells.find((cell) => cell.trim() !== '')?.trim() ?? '');
