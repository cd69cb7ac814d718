import { formatLength, type Scale } from '../../core/length/formatLength.ts';
import type { CutSheet } from '../../core/show/cutSheet.ts';
import type { SheetCuts } from '../../core/sheets/knifeSteps.ts';

/** A sheet in a knife step, to be ticked off. */
export interface KnifeSheet {
	readonly sheet: CutSheet;
	/** Board and number: “Chalk, sheet 3”. */
	readonly name: string;
	/** The cuts of this step: their places in those of the sheet, from 0. */
	readonly places: readonly number[];
	/** The same in words, with the pieces that they go through. */
	readonly cutWords: string;
	/** Whether all of them are made. */
	readonly isMade: boolean;
}

/** The cuts of one sheet at one measure in words: `cut 2, of the piece 1200 × 900, from its left edge`. */
export function knifeSheet({ sheet, places }: SheetCuts, name: string, scale: Scale): KnifeSheet {
	const words = places.map((place) => {
		const { piece, across } = sheet.cuts[place]!;
		const size = `${formatLength(piece.width, scale)} × ${formatLength(piece.height, scale)}`;
		return `cut ${place + 1}, from the ${across === 'width' ? 'left' : 'top'} edge of ${size}`;
	});
	const isMade = places.every((place) => sheet.made.includes(place));
	return { sheet, name, places, cutWords: words.join('; '), isMade };
}

/** The edge that the cuts of a step are measured from: `left edge`, `top edge`, or both where sheets differ. */
export function edgeWords(sheets: readonly KnifeSheet[]): string {
	const sides = new Set(sheets.flatMap(({ sheet, places }) => places.map((place) => sheet.cuts[place]!.across)));
	const words = [...(sides.has('width') ? ['left'] : []), ...(sides.has('height') ? ['top'] : [])];
	return `${words.join(' or ')} edge`;
}

/**
 * Which sheets a step is of, named before one taps that all of them are cut, for not all may be in view: `sheets 2, 3, 7`.
 * Of several boards or kinds, or where a line does not hold them, their count alone: `9 sheets`.
 */
export function sheetsWords(sheets: readonly KnifeSheet[]): string {
	const parts = sheets.map(({ name }) => name.split(/ (?=\d+$)/));
	const [kind] = parts[0]!;
	return parts[8] || parts.some(([each]) => each !== kind)
		? `${parts.length} sheets`
		: `${kind!.split(' ').at(-1)}s ${parts.map(([, number]) => number).join(', ')}`;
}
