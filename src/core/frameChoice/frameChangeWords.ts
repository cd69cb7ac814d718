import { formatLength, formatSize, type Scale } from '../length/formatLength.ts';
import type { SolvedRow } from '../row/solvedRow.ts';
import type { ColumnName } from '../show/columns.ts';
import type { CellTexts, Row } from '../show/row.ts';
import { shownText } from '../values/shownText.ts';
import type { FrameChoice, FramedPrint } from './giveFrames.ts';

/**
 * How many prints get a frame, and what becomes of their pictures.
 * @param given how many get one, at least 1
 * @param of how many there are without one
 * @param difference by how much the long sides of their pictures change in all
 * @param kept how many of those given have that frame already, in the same size
 */
export function givenWords(given: number, of: number, difference: string, kept = 0): string {
	if (kept === given) {
		const all = of === 1 ? 'The print' : given === of ? `All ${of} prints` : `${given} of ${of} prints`;
		return keptWords(all, given);
	}
	if (kept > 0) {
		const moved = given - kept;
		const sides = moved === 1 ? 'The long side of its picture changes' : 'The long sides of their pictures change';
		return `${moved} of ${of} prints ${moved === 1 ? 'gets' : 'get'} another frame or size. ${sides} by ${difference}${moved === 1 ? '' : ' in all'}. ${keptWords(`${kept} ${kept === 1 ? 'print' : 'prints'}`, kept)}`;
	}
	const isOne = given === 1;
	const prints = of === 1 ? 'The print' : given === of ? `All ${of} prints` : `${given} of ${of} prints`;
	const sides = isOne
		? `long side of its picture changes by ${difference}`
		: `long sides of their pictures change by ${difference} in all`;
	return `${prints} ${isOne ? 'gets' : 'get'} a frame. The ${sides}.`;
}

/** What applying does to prints that have the frame and the size already. */
const keptWords = (prints: string, count: number): string =>
	count === 1
		? `${prints} keeps its frame and size. Its mount follows the frame from now on.`
		: `${prints} keep their frame and size. Their mount follows the frame from now on.`;

/** What is known of the other choices, in words. */
export function provenWords({ isMost, proven }: Pick<FrameChoice, 'isMost' | 'proven'>): string {
	if (proven) return 'No other choice frames more prints or changes their pictures less.';
	return isMost
		? 'No other choice frames more prints. The search ran out of time, so one that changes their pictures less may exist.'
		: 'The search ran out of time. There may be a better choice.';
}

/** What a frame changes of a print besides its frame and its mount, in words; empty where nothing. */
export function frameChangeWords({ before, after, change }: FramedPrint, row: Row, scale: Scale): string {
	const cells = cellWords(change, row);
	const words = [...sizeWords({ before, after }, scale), cells].filter(Boolean).join(' ');
	const isSameSize = before.mountWidth === after.mountWidth && before.mountHeight === after.mountHeight;
	return words !== '' && words === cells && isSameSize ? `Same size. ${words}` : words;
}

/** Whether the picture or a border looks different with its frame. */
export const isPictureChanged = (print: FramedPrint, scale: Scale): boolean => sizeWords(print, scale).some(Boolean);

const sizeWords = ({ before, after }: Pick<FramedPrint, 'before' | 'after'>, scale: Scale): readonly string[] => [
	pictureWords(before, after, scale),
	borderWords(before, after, scale),
];

/**
 * Why a print is given no frame, in words.
 * @param stop why it can't be cut as it is, in a sentence; undefined where it can
 */
export function noFrameWords({ isSuited }: FramedPrint, stop: string | undefined): string {
	if (isSuited) return 'No frame is left for it.';
	return stop === undefined ? 'No frame in the list suits it.' : `Can’t be cut yet. ${stop}`;
}

function pictureWords(before: SolvedRow, after: SolvedRow, scale: Scale): string {
	const size = ({ pictureWidth, pictureHeight }: SolvedRow) =>
		pictureWidth === undefined || pictureHeight === undefined
			? undefined
			: formatSize(pictureWidth, pictureHeight, scale);
	return instead('Picture', size(before), size(after));
}

function borderWords(before: SolvedRow, after: SolvedRow, scale: Scale): string {
	const borders = ({ side, top, bottom }: SolvedRow) =>
		side === undefined && top === undefined && bottom === undefined
			? undefined
			: [side, top, bottom].map((border) => (border === undefined ? '?' : formatLength(border, scale))).join(', ');
	return instead('Side, top, bottom', borders(before), borders(after));
}

/** What something is after, in place of what it was before; empty where both look the same. */
function instead(what: string, before: string | undefined, after: string | undefined): string {
	if (after === undefined || after === before) return '';
	return before === undefined ? `${what} ${after}.` : `${what} ${after} instead of ${before}.`;
}

/** What it types in the place of what somebody typed. */
const cellWords = (change: CellTexts, { typed }: Row): string =>
	(Object.entries(change) as [ColumnName, string][])
		.flatMap(([column, text]) => {
			const before = typed[column];
			return before === undefined || before.trim().toLowerCase() === text.toLowerCase()
				? []
				: `“${text}” replaces “${shownText(before)}” in the ${column} cell.`;
		})
		.join(' ');
