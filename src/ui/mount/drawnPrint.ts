import type { RowResult } from '../../core/findings/rowResult.ts';
import { floatDrawn, layOutMount } from './layOutMount.ts';
import { layOutFramed, type Rectangle } from './layOutFramed.ts';

/** What is drawn of a print without its measures, in millimetres, each within the one before it. */
export interface DrawnPrint {
	/** The whole of it: the frame's outer edge, else the mount, else the picture. */
	readonly outer: Rectangle;
	/** The edge of the frame's lip; undefined without a frame. */
	readonly sight: Rectangle | undefined;
	/** Undefined without a mount. */
	readonly card: Rectangle | undefined;
	readonly window: Rectangle | undefined;
	readonly picture: Rectangle | undefined;
}

/** What is drawn of a print: in its frame, where it has one; undefined where no size of it is known. */
export function drawnPrint(result: RowResult): DrawnPrint | undefined {
	const framed = layOutFramed(result);
	if (framed) {
		const { outer, sight, inside, window, picture } = framed;
		return { outer, sight, card: inside, window, picture };
	}
	const solved = result.read.cells.isFloat ? floatDrawn(result.solved, result.onPaper) : result.solved;
	const layout = layOutMount(solved);
	if (!layout) return undefined;
	const { across, down } = layout;
	const box = (part: 'mount' | 'window' | 'picture'): Rectangle | undefined => {
		const [x, y] = [across[part], down[part]];
		return x && y && { left: x.start, right: x.end, top: y.start, bottom: y.end };
	};
	const [card, picture] = [box('mount')!, box('picture')];
	return result.hasMount
		? { outer: card, sight: undefined, card, window: box('window'), picture }
		: { outer: picture ?? card, sight: undefined, card: undefined, window: undefined, picture: picture ?? card };
}
