import type { CutSide } from '../../core/show/tick.ts';
import { widthOfWords } from '../length/widthOfWords.ts';

/** What a border says: its side, and its measure as it is shown. */
export interface BorderWords {
	readonly side: CutSide;
	readonly measure: string;
}

/** Where words begin, are centred or end, on their base line; in the drawing's units. */
export interface WordsAt {
	readonly x: number;
	readonly y: number;
	readonly anchor: 'start' | 'middle' | 'end';
}

/** Where a border's side and its measure stand, and the line that shows what it measures; in the drawing's units. */
export interface PlacedWords extends BorderWords {
	/** The dimension line, from the mount's edge to the line of the cut: its two ends. */
	readonly from: readonly [x: number, y: number];
	readonly to: readonly [x: number, y: number];
	/** The side is named outside the mount. */
	readonly sideAt: WordsAt;
	readonly measureAt: WordsAt;
	/** Whether the border is too narrow for its measure: it stands beside the mount too then, after the side. */
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
const lineHeight = 1.4;

/**
 * Where the words of the borders stand on the back of a mount, so that none can be read as a size of the window, nor two
 * over one another as a fraction: a side is named outside the mount, its measure stands in the border at a dimension line
 * over all of it; where the border is too narrow, beside the mount with the side.
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

/** A side: its measure over the dimension line, its name beyond the edge. */
function besideWindow(words: BorderWords, lines: BackLines, text: number): PlacedWords {
	const { side, measure } = words;
	const edge = side === 'left' ? lines.width : 0;
	const line = side === 'left' ? lines.left : lines.right;
	const y = (lines.top + lines.bottom) / 2;
	const isOutside = Math.abs(edge - line) < (widthOfWords(measure) + 2 * room) * text;
	const outwards = side === 'left' ? 1 : -1;
	const beyond = {
		x: edge + outwards * room * 1.6 * text,
		anchor: outwards > 0 ? ('start' as const) : ('end' as const),
	};
	return {
		...words,
		from: [edge, y],
		to: [line, y],
		sideAt: { ...beyond, y: isOutside ? y - 0.3 * text : y + 0.35 * text },
		measureAt: isOutside
			? { ...beyond, y: y + (lineHeight - 0.3) * text }
			: { x: (edge + line) / 2, y: y - room * text, anchor: 'middle' },
		isOutside,
	};
}

/** Top and bottom: the measure at the right of the dimension line, clear of the mark at the foot; the name over or under the mount. */
function overOrUnderWindow(words: BorderWords, lines: BackLines, text: number): PlacedWords {
	const { side, measure } = words;
	const [edge, line] = side === 'top' ? [0, lines.top] : [lines.height, lines.bottom];
	const foot = side === 'bottom' ? footHeight * text : 0;
	const isOutside = Math.abs(edge - line) - foot < (1 + room) * text;
	const middle = side === 'top' ? line / 2 : (line + edge - foot) / 2;
	const x = lines.width / 2;
	const y = side === 'top' ? -room * text * 1.6 : lines.height + 1.1 * text;
	const wide = (widthOfWords(measure) + room) * text;
	const at = isOutside ? x : x - wide / 2;
	const gap = room * 1.6 * text;
	return {
		...words,
		from: [at, edge],
		to: [at, line],
		sideAt: { x: isOutside ? x - gap / 2 : x, y, anchor: isOutside ? 'end' : 'middle' },
		measureAt: isOutside
			? { x: x + gap / 2, y, anchor: 'start' }
			: { x: at + gap, y: middle + 0.35 * text, anchor: 'start' },
		isOutside,
	};
}
