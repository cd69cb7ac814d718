import { type Length, toMm } from '../length/length.ts';
import { groupBy } from '../values/groupBy.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
import type { HangingLine } from '../walls/hangingList.ts';

/** A hook or nail of a print, as it is marked by a page held to the wall. */
export interface HookMark {
	/** The place of its print in the show, from 0. */
	readonly place: number;
	/** Which of the print's it is, and of how many. */
	readonly hook: number;
	readonly of: number;
	/** From the mark to the frame's edges, in mm: up to its top (below zero where the mark is above it), left and right. */
	readonly toTop: number;
	readonly toLeft: number;
	readonly toRight: number;
	/** Of the mark, from the wall's left and above the floor. */
	readonly left: Length;
	readonly height: Length;
	readonly wall: string;
	/** For which cord it is planned, from the frame’s top, while that is not measured; not whole. */
	readonly planned: number | undefined;
}

/** Heights of what stands over and under the drawing of a page, in mm; the styles hold to them. */
export const hookMarkMm = { ruler: 24, words: 36 } as const;
/** How much shorter a page is than its paper, at most, so that it makes no other one, in mm. */
const pageShorter = 1;
/** Room that a drawing keeps over the frame's top, and round the mark, in mm. */
const [overTop, roundMark] = [10, 15] as const;

/** How large the drawing of a page is, in mm. */
export function hookDrawing(paper: Paper): { readonly width: number; readonly height: number } {
	const { width, height } = pageRoom(paper);
	return { width, height: height - hookMarkMm.ruler - hookMarkMm.words - pageShorter };
}

/**
 * Where a mark lies in its drawing, in mm from its left and top: in the middle across, and as far under the frame's top as
 * it is. Undefined where that has no room.
 */
export function markInDrawing(
	{ toTop }: HookMark,
	paper: Paper,
): { readonly x: number; readonly y: number } | undefined {
	const { width, height } = hookDrawing(paper);
	const y = Math.max(overTop + toTop, roundMark);
	const lowest = Math.max(y, y - toTop);
	return lowest > height - roundMark ? undefined : { x: width / 2, y };
}

/**
 * The hooks of a hanging list on pages, true to size: a page for each way in which a mark lies under its frame's top, with
 * all prints that have it. What hangs on a rail, or without a frame, has none.
 */
export function hookMarks(lines: readonly HangingLine[], paper: Paper) {
	const marks = lines.flatMap(({ place, hung, print, hooks, mark }): HookMark[] => {
		if (!hooks) return [];
		const { hooks: all, fixing } = hooks;
		// The nail may stand above the hook's bearing.
		const above = all[0] && mark.what === 'nail' ? toMm(mark.height) - toMm(all[0].height) : 0;
		return all.map((hook, at) => ({
			...{ place, hook: at + 1, of: all.length, wall: hung.wall.name },
			planned: fixing.isToMeasure ? fixing.drop : undefined,
			toTop: fixing.drop / 1e7 - above,
			toLeft: fixing.hooks[at]! / 1e7,
			toRight: toMm(print.size.width) - fixing.hooks[at]! / 1e7,
			left: hook.left,
			height: at === 0 ? mark.height : ((hook.height + Math.round(above * 1e7)) as Length),
		}));
	});
	const { width } = hookDrawing(paper);
	// An edge that lies beside the page makes no other page.
	const seen = (edge: number) => (edge <= width / 2 ? edge.toFixed(2) : 'beside');
	const fitting = marks.filter((mark) => markInDrawing(mark, paper) !== undefined);
	const alike = groupBy(fitting, ({ toTop, toLeft, toRight }) =>
		[toTop.toFixed(2), seen(toLeft), seen(toRight)].join(' '),
	);
	const tooLow = marks.filter((mark) => !fitting.includes(mark)).map(({ place }) => place);
	return { pages: [...alike.values()], tooLow: [...new Set(tooLow)] };
}
