import { formatLength, type Scale } from '../../core/length/formatLength.ts';
import { toMm } from '../../core/length/length.ts';
import type { Layout } from '../../core/sheets/layout.ts';
import type { PlacedBlank } from '../../core/show/cutSheet.ts';
import { inMm, type Place } from './drawnSheet.ts';
import { offcutWord, type PieceLines, pieceLines } from './pieceLines.ts';

/** What the pieces of a drawn sheet say. */
export interface SheetWords {
	/** The words of an offcut, line by line: in one where it is flat. */
	readonly ofOffcut: (offcut: Layout['offcuts'][number]) => readonly string[];
	/** The words of a blank, line by line, at its place among the blanks. */
	readonly ofBlank: (blank: PlacedBlank, place: number) => readonly string[];
	/** How they stand in the piece: as a letter where it is too narrow for them. */
	readonly linesOf: (at: Place, said: readonly string[]) => PieceLines;
	/** What the letters stand for, from “a” on. */
	readonly legend: readonly string[];
}

/** The letter that stands for what is at that place in the legend. */
export const letterAt = (place: number): string => String.fromCharCode(97 + place);

const alongOne = (said: readonly string[]) => said.filter((word) => word !== '').join(' ');

/**
 * What the pieces of a sheet say.
 * @param nameOf what a blank is called, at its place among the blanks
 * @param size of the letters, in millimetres of the sheet
 */
export function sheetWords(
	{ blanks, offcuts }: Pick<Layout, 'blanks' | 'offcuts'>,
	nameOf: (blank: PlacedBlank, place: number) => string,
	scale: Scale,
	size: number,
): SheetWords {
	const sizeText = ({ width, height }: Pick<PlacedBlank, 'width' | 'height'>) =>
		`${formatLength(width, scale)} × ${formatLength(height, scale)}`;
	const ofOffcut: SheetWords['ofOffcut'] = (offcut) => {
		const text = sizeText(offcut);
		return toMm(offcut.height) < size * 3.1 ? [`${offcutWord} ${text}`] : [offcutWord, text];
	};
	const ofBlank: SheetWords['ofBlank'] = (blank, place) => [
		nameOf(blank, place),
		sizeText(blank),
		blank.part === 'mount' ? '' : blank.part,
	];
	const placedIn = (at: Place, said: readonly string[]) => pieceLines(said, at.width, at.height, size);
	const legend = [
		...new Set(
			[
				...offcuts.map((offcut) => ({ at: inMm(offcut), said: ofOffcut(offcut) })),
				...blanks.map((blank, place) => ({ at: inMm(blank), said: ofBlank(blank, place) })),
			].flatMap(({ at, said }) => (placedIn(at, said).way === 'letter' ? [alongOne(said)] : [])),
		),
	];
	return {
		ofOffcut,
		ofBlank,
		linesOf: (at, said) => {
			const placed = placedIn(at, said);
			return placed.way === 'letter' ? { ...placed, lines: [letterAt(legend.indexOf(alongOne(said)))] } : placed;
		},
		legend,
	};
}
