import type { CutSide } from '../../core/show/tick.ts';
import { widthOfWords } from '../length/widthOfWords.ts';

/** What a border says: its side, and its measure as it is shown. */
export interface BorderWords {
	readonly side: CutSide;
	readonly measure: string;
}

/** Where the words of a border stand, and the line that shows what they measure; in the drawing's units. */
export interface PlacedWords extends BorderWords {
	/** The dimension line, from the mount's edge to the line of the cut: its two ends. */
	readonly from: readonly [x: number, y: number];
	readonly to: readonly [x: number, y: number];
	/** Where the words begin, are centred or end, on their base line. */
	readonly x: number;
	readonly y: number;
	readonly anchor: 'start' | 'middle' | 'end';
	/** Whether the measure stands on a line of its own under the side. */
	readonly isTwoLines: boolean;
	/** Whether the border is too narrow for its words: they stand beside the mount then. */
	readonly isOutside: boolean;
}

/** Edges of the mount (from 0) and its lines of the window as they are drawn, in the drawing's units. */
export interface BackLines {
	readonly width: number;
	readonly height: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/** The height of the mark at the foot, in letters. */
export const footHeight = 0.625;
/** Room that words need around them, in letters. */
const room = 0.25;
/** From one base line to the next, in letters. */
export const lineHeight = 1.4;

/**
 * Where the measures of the borders stand on the back of a mount, so that none can be read as a size of the window: in
 * their border, beside a dimension line over all of it; where it is too narrow, beside the mount at the end of that line.
 * @param lines the left border lies at the right, as on the back
 * @param text the height of the letters
 */
export function placeBorderWords(
	borders: readonly BorderWords[],
	lines: BackLines,
	text: number,
): readonly PlacedWords[] {
	return borders.map((words) =>
		words.side === 'left' || words.side === 'right'
			? besideWindow(words, lines, text)
			: overOrUnderWindow(words, lines, text),
	);
}

/** A side: its name over the dimension line, its measure under it. */
function besideWindow(words: BorderWords, lines: BackLines, text: number): PlacedWords {
	const { side, measure } = words;
	const edge = side === 'left' ? lines.width : 0;
	const line = side === 'left' ? lines.left : lines.right;
	const y = (lines.top + lines.bottom) / 2;
	const wide = Math.max(widthOfWords(side), widthOfWords(measure)) * text;
	const isOutside = Math.abs(edge - line) < wide + 2 * room * text;
	const outwards = side === 'left' ? 1 : -1;
	return {
		...words,
		from: [edge, y],
		to: [line, y],
		x: isOutside ? edge + outwards * room * 1.6 * text : (edge + line) / 2,
		// Outside there is no line between the two.
		y: isOutside ? y - 0.3 * text : y - 0.45 * text,
		anchor: isOutside ? (outwards > 0 ? 'start' : 'end') : 'middle',
		isTwoLines: true,
		isOutside,
	};
}

/** Top and bottom: both words in one line, at the right of the dimension line, clear of the mark at the foot. */
function overOrUnderWindow(words: BorderWords, lines: BackLines, text: number): PlacedWords {
	const { side, measure } = words;
	const [edge, line] = side === 'top' ? [0, lines.top] : [lines.height, lines.bottom];
	const high = Math.abs(edge - line);
	const wide = widthOfWords(`${side} ${measure}`) * text;
	const foot = side === 'bottom' ? footHeight * text : 0;
	const isOutside = high - foot < (1 + room) * text;
	const middle = side === 'top' ? line / 2 : (line + edge - foot) / 2;
	const x = lines.width / 2 - (wide + room * text) / 2;
	const outside = side === 'top' ? -room * text * 1.6 : lines.height + 1.1 * text;
	return {
		...words,
		from: [isOutside ? lines.width / 2 - text : x, edge],
		to: [isOutside ? lines.width / 2 - text : x, line],
		x: isOutside ? lines.width / 2 - text : x + room * 1.6 * text,
		y: isOutside ? outside : middle + 0.35 * text,
		anchor: isOutside ? 'middle' : 'start',
		isTwoLines: false,
		isOutside,
	};
}
