import type { RowResult } from '../../core/findings/rowResult.ts';
import { boardColour, inkOn } from '../../core/row/boardColour.ts';
import type { PaperEdge } from '../../core/settings/paper.ts';
import { toMm } from '../../core/length/length.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { named } from '../../core/values/named.ts';
import { innerOf, layOutFramed, lessMargins, type Rectangle } from './layOutFramed.ts';
import { mountOf } from './layOutMount.ts';

/** What is drawn of a print without its measures, in millimetres, each within the one before it. */
export interface DrawnPrint {
	/** The whole of it: the frame's outer edge, else the mount's, else the paper's. */
	readonly outer: Rectangle;
	/** The edge of the frame's lip; undefined without a frame. */
	readonly sight: Rectangle | undefined;
	/** Undefined without a mount. */
	readonly card: Rectangle | undefined;
	/** Undefined without a window; the paper of a float. */
	readonly window: Rectangle | undefined;
	/** The edge of a float's paper, which has no bevel; undefined where there is a window, or no mount. */
	readonly floatEdge: PaperEdge | undefined;
	/** The window of an inner mount; undefined where there is none. */
	readonly inner: Rectangle | undefined;
	readonly picture: Rectangle | undefined;
	readonly colours: BoardColours;
	/** How wide the bevel of a window is seen, in millimetres: as wide as its board is thick. */
	readonly bevel: number;
}

/** Colours of boards, as CSS has them; undefined where nothing says them. */
export interface BoardColours {
	readonly card?: string | undefined;
	readonly inner?: string | undefined;
	readonly undermount?: string | undefined;
	/** In which words and lines on the card are read, and on the undermount. */
	readonly ink?: string | undefined;
	readonly inkBehind?: string | undefined;
	/** In which a line that stands out on the card is drawn, and words on that line. */
	readonly accent?: readonly [line: string, words: string] | undefined;
}

/** A board as most are, in millimetres. */
const usualThickness = 1.4;

/** What is drawn of a print: in its frame, where it has one; undefined where no size of it is known. */
export function drawnPrint(result: RowResult): DrawnPrint | undefined {
	const parts = partsDrawn(result);
	return parts && { ...parts, ...boardsDrawn(result) };
}

/**
 * What the boards of a print look like.
 * @param settings names the undermount; without them it has no colour
 */
export function boardsDrawn(
	{ boards, read }: RowResult,
	settings?: Pick<Settings, 'undermount' | 'boards'>,
): Pick<DrawnPrint, 'colours' | 'bevel'> {
	const { thickness } = boards.mount.board ?? {};
	const { undermount } = settings ?? {};
	const behind = read.cells.isFloat
		? boards.mount
		: undermount && { name: undermount, board: named(undermount, settings!.boards) };
	return {
		colours: {
			card: boardColour(boards.mount),
			inner: boardColour(boards['inner mount']),
			ink: inkOn(boards.mount),
			...(behind && { undermount: boardColour(behind), inkBehind: inkOn(behind) }),
		},
		bevel: thickness === undefined ? usualThickness : toMm(thickness),
	};
}

type Parts = Omit<DrawnPrint, 'colours' | 'bevel'>;

function partsDrawn(result: RowResult): Parts | undefined {
	const framed = layOutFramed(result);
	if (framed) {
		const { outer, sight, inside, window, floatEdge, inner, picture } = framed;
		return { outer, sight, card: result.hasMount ? inside : undefined, window, floatEdge, inner, picture };
	}
	return result.hasMount ? drawnMount(result) : drawnPaper(result);
}

function drawnMount(result: RowResult): Parts | undefined {
	const { floatEdge, innerMount, layout } = mountOf(result);
	if (!layout) return undefined;
	const { across, down } = layout;
	const box = (part: 'mount' | 'window' | 'picture'): Rectangle | undefined => {
		const [x, y] = [across[part], down[part]];
		return x && y && { left: x.start, right: x.end, top: y.start, bottom: y.end };
	};
	const [card, window] = [box('mount')!, box('window')];
	const inner = innerOf(window, innerMount);
	return { outer: card, sight: undefined, card, window, floatEdge, inner, picture: box('picture') };
}

/** A print without a mount and a frame: its paper, with the picture on it, or the picture alone. */
function drawnPaper({ frame: { inside }, onPaper }: RowResult): Parts | undefined {
	if (!inside) return undefined;
	const outer = { left: 0, right: toMm(inside.width), top: 0, bottom: toMm(inside.height) };
	const picture = onPaper ? lessMargins(outer, onPaper) : outer;
	const nothing = { sight: undefined, card: undefined, window: undefined, floatEdge: undefined, inner: undefined };
	return { outer, ...nothing, picture };
}
