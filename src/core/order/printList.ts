import type { RowResult } from '../findings/rowResult.ts';
import { type Length, length, plus, times, zero } from '../length/length.ts';
import { bareName } from '../length/paperSizes.ts';
import type { Size } from '../length/size.ts';
import { type OnPaper, wayOf } from '../row/paper.ts';
import type { Paper } from '../settings/paper.ts';
import type { Settings } from '../settings/settings.ts';

/** A picture that is printed, and where on its paper. */
export interface PrintedPicture {
	/** The print's place in the show from 0. */
	readonly place: number;
	readonly picture: Size;
	readonly on: OnPaper;
	readonly copies: number;
	readonly proofs: number;
	/** What is cut off a roll for each; undefined on a sheet. */
	readonly cutOff: Length | undefined;
}

/** What is printed on one paper. */
export interface PrintedPaper {
	/** As the show's list has it, else as the size that is typed. */
	readonly name: string;
	/** Undefined where the show's list has none of that name. */
	readonly listed: Paper | undefined;
	/** Of a sheet; of a roll its width alone. */
	readonly size: Partial<Size>;
	readonly pictures: readonly PrintedPicture[];
	/** Sheets, copies and proofs together; pieces of a roll. */
	readonly pieces: number;
	/** Length of the roll that they take; undefined for sheets. */
	readonly rollLength: Length | undefined;
}

const isRoll = (listed: Paper | undefined): boolean => listed !== undefined && listed.height === undefined;

/**
 * What is printed, by paper: those of the show's list in its order, then others by their names.
 * @param rows those that count, by their place
 * @param nameOf the text of a row's paper cell, for a paper that is not listed
 */
export function printList(
	rows: ReadonlyMap<number, RowResult>,
	nameOf: (place: number) => string,
	{ papers, proofs }: Settings,
): readonly PrintedPaper[] {
	const groups = new Map<string, { name: string; listed: Paper | undefined; size: Size; pictures: PrintedPicture[] }>();
	for (const [place, { onPaper, read, solved, copies }] of rows) {
		const { pictureWidth: width, pictureHeight: height } = solved;
		if (!onPaper || !read.cells.paper || width === undefined || height === undefined || copies === 0) continue;
		const listed = papers.find(({ name }) => name === read.cells.paper!.listed);
		const name = listed?.name ?? nameOf(place).trim();
		const group = groups.get(bareName(name)) ?? { name, listed, size: onPaper.paper, pictures: [] };
		groups.set(bareName(name), group);
		const along = wayOf({ width, height }) === 'wide' ? onPaper.paper.width : onPaper.paper.height;
		const cutOff = isRoll(listed) ? along : undefined;
		group.pictures.push({ place, picture: { width, height }, on: onPaper, copies, proofs, cutOff });
	}
	const order = (listed: Paper | undefined) => (listed ? papers.indexOf(listed) : papers.length);
	return [...groups.values()]
		.sort((a, b) => order(a.listed) - order(b.listed))
		.map(({ name, listed, size, pictures }) => ({
			name,
			listed,
			size: listed ? { width: listed.width, ...(listed.height !== undefined && { height: listed.height }) } : size,
			pictures,
			pieces: pictures.reduce((sum, picture) => sum + piecesOf(picture), 0),
			rollLength: isRoll(listed)
				? plus(zero, ...pictures.map((picture) => times(picture.cutOff ?? zero, piecesOf(picture))))
				: undefined,
		}));
}

/** How often a picture is printed: its copies, and the proofs. */
export const piecesOf = ({ copies, proofs }: PrintedPicture): number => copies + proofs;

/** How much of a paper a picture takes: sheets, or a length of the roll. */
export const takenBy = (picture: PrintedPicture): Length | number =>
	picture.cutOff === undefined ? piecesOf(picture) : length(picture.cutOff * piecesOf(picture));
