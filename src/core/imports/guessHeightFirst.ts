import { splitSizeText } from '../length/parseSize.ts';
import { asTyped } from '../show/asTyped.ts';
import type { Row } from '../show/row.ts';

/** Whether cells that hold sizes look as if they gave the height first. */
export type GuessHeightFirst = (cells: readonly string[]) => boolean;

/** So many different sizes must be turned, and more than are not: fewer may be by chance. */
const fewestTurned = 3;

const plain = (text: string) => text.replaceAll(/\s*(?:mm|cm|in|")?\s*$/g, '').replace(',', '.');

/** Guesses by the prints that are here: their sizes stand in the list the other way round. */
export function guessHeightFirst(rows: readonly Row[]): GuessHeightFirst {
	const typed = rows.flatMap((row) => [
		[asTyped(row, 'picture width'), asTyped(row, 'picture height')],
		...(['paper', 'mount'] as const).map((column) => {
			const size = splitSizeText(asTyped(row, column));
			return [size?.width, size?.height];
		}),
	]);
	const known = new Set(
		typed.flatMap(([width, height]) => (width && height ? [`${plain(width)} ${plain(height)}`] : [])),
	);
	return (cells) => {
		const sizes = [...new Set(cells)].flatMap((cell) => splitSizeText(cell) ?? []);
		const alike = sizes
			.map(({ width, height }) => [plain(width), plain(height)] as const)
			.filter(([width, height]) => width !== height);
		const turned = alike.filter(([first, second]) => known.has(`${second} ${first}`)).length;
		const asHere = alike.filter(([first, second]) => known.has(`${first} ${second}`)).length;
		return turned >= fewestTurned && turned > asHere;
	};
}
