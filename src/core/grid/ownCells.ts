/** The type under which the grid puts on the clipboard what of its cells was typed. */
export const ownCellsType = 'application/x-evenhang-typed';

/** What of copied cells was typed, blank where it was not, for the clipboard: pasted here, they stay what they are. */
export const writeOwnCells = (typed: readonly (readonly string[])[]): string => JSON.stringify(typed);

/** Reads what `writeOwnCells` wrote; undefined where it is anything else. */
export function readOwnCells(text: string): readonly (readonly string[])[] | undefined {
	try {
		const cells: unknown = JSON.parse(text);
		return isTable(cells) ? cells : undefined;
	} catch {
		return undefined;
	}
}

const isTable = (value: unknown): value is string[][] =>
	Array.isArray(value) &&
	value.length > 0 &&
	value.every((row) => Array.isArray(row) && row.length > 0 && row.every((text) => typeof text === 'string'));
