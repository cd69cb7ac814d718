import type { RowResult } from '../findings/rowResult.ts';
import { gravestWords } from '../findings/together.ts';
import { formatLength, formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import type { Size } from '../length/size.ts';
import { type OnPaper, wayOf } from '../row/paper.ts';
import { shownMargins } from '../row/shownMargins.ts';
import { amountWords } from './getWords.ts';
import { piecesOf, type PrintedPicture } from './printList.ts';
import type { NotPrinted, PaperToPrint, PictureToPrint } from './whatToPrint.ts';
import { countOf } from '../values/countOf.ts';
import { listed } from '../values/listed.ts';
import { sameWithin } from '../length/length.ts';
import { trimWords } from '../reasons/trimWords.ts';
import type { Settings } from '../settings/settings.ts';

/** Which way up a picture is printed. */
export const wayWords = (picture: Size): 'landscape' | 'portrait' | 'square' =>
	({ wide: 'landscape', tall: 'portrait', square: 'square' } as const)[wayOf(picture) ?? 'square'];

/** How often a picture is printed: `4 copies`, `1 copy and 2 proofs`. */
export function copiesWords({ copies, proofs }: Pick<PrintedPicture, 'copies' | 'proofs'>): string {
	const words = countOf(copies, 'copy', 'copies');
	return proofs === 0 ? words : `${words} and ${countOf(proofs, 'proof', 'proofs')}`;
}

/** What a picture takes of its paper: `6 sheets`, `6 pieces of 306 mm`. */
export function takesWords(picture: PrintedPicture, scale: Scale): string {
	const pieces = piecesOf(picture);
	if (picture.cutOff === undefined) return countOf(pieces, 'sheet');
	return `${countOf(pieces, 'piece')} of ${formatWithUnit(picture.cutOff, scale)}`;
}

/** How a picture lies on a roll, and at which of its sides that is cut; undefined on a sheet. */
export function rollWords({ picture, cutOff }: PrintedPicture): string | undefined {
	if (cutOff === undefined) return undefined;
	return wayOf(picture) === 'wide'
		? 'Height across the roll, cut left and right'
		: 'Width across the roll, cut above and below';
}

/** The four margins: `left 12, top 14, right 12, bottom 14 mm`. */
export function marginWords(on: OnPaper, scale: Scale): string {
	const { left, top, right, bottom } = shownMargins(on, scale);
	return `left ${formatLength(left, scale)}, top ${formatLength(top, scale)}, right ${formatLength(right, scale)}, bottom ${formatWithUnit(bottom, scale)}`;
}

/**
 * What else there is to know before a picture is printed, in sentences: the sides on which no white edge is left to hold it
 * by, and how its paper is trimmed.
 */
export function printNotes({ on, trimmed }: PictureToPrint, settings: Settings): readonly string[] {
	const sides = (['left', 'right', 'top', 'bottom'] as const).filter((side) => on[side] <= sameWithin);
	return [
		...(sides.length > 0 ? [`No white edge ${sideWords(sides)} to hold the print by.`] : []),
		...(trimmed ? [trimWords(trimmed, settings)] : []),
	];
}

const sideWords = (sides: readonly ('left' | 'right' | 'top' | 'bottom')[]): string =>
	sides.length === 4 ? 'on any side' : `at the ${listed(sides)}`;

/** The size of a picture. */
export const pictureWords = ({ picture }: PrintedPicture, scale: Scale): string =>
	formatSize(picture.width, picture.height, scale);

/** How much of a paper is printed: `12 sheets`, `18.98 m of the roll`. */
export function wantedWords({ pieces, rollLength, line }: PaperToPrint): string {
	if (rollLength !== undefined) return `${amountWords(line.wanted, line)} of the roll`;
	return countOf(pieces, 'sheet');
}

/** Why a print is left out of what is printed or got. @param result what the row works out */
export function leftOutWords(reason: NotPrinted['reason'], result: RowResult | undefined, scale: Scale): string {
	switch (reason) {
		case 'stop':
			return gravestWords(result?.findings ?? [], scale) ?? 'It has something to put right first.';
		case 'no-size':
			return 'Its size is not known yet.';
		case 'no-paper':
			return 'It has no paper yet.';
		case 'no-copies':
			return 'Its number of copies is 0.';
		case 'untyped':
			return 'Nothing is typed in it yet.';
	}
}
