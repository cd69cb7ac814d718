import { type Length, length, toMm } from '../../core/length/length.ts';
import { seenBorders } from '../../core/row/seenBorders.ts';
import type { OnPaper } from '../../core/row/paper.ts';
import type { PaperEdge } from '../../core/settings/paper.ts';
import type { WorkedRow } from '../../core/row/workedRow.ts';
import { mountOf } from './layOutMount.ts';

/** A rectangle in millimetres from the top left corner of what lies in the frame. */
export interface Rectangle {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/** A row in its frame, seen from the front. */
export interface FramedLayout {
	/** The frame's outer edge. */
	readonly outer: Rectangle;
	/** The recess, which the lip hides. */
	readonly rebate: Rectangle;
	/** The lip's edge: what lies within it is seen. */
	readonly sight: Rectangle;
	/** The mount, or the paper of a print without one. */
	readonly inside: Rectangle;
	/** Undefined where there is no window; the paper of a float. */
	readonly window: Rectangle | undefined;
	/** The edge of a float's paper; undefined where there is a window, or no mount. */
	readonly floatEdge: PaperEdge | undefined;
	/** The window of an inner mount; undefined where there is none. */
	readonly inner: Rectangle | undefined;
	readonly picture: Rectangle | undefined;
	/** Whether the settings say the width of the face and the lip; what they don't is drawn as is usual. */
	readonly isKnown: boolean;
	/** The borders that show, in lengths; undefined where they are not known. */
	readonly seen: ReturnType<typeof seenBorders>;
}

/** A lip and a face as most frames have them, in mm. */
const usual = { lip: 6, face: 20 };

/** Where the parts of a row in its frame are; undefined where it has no frame, or nothing known to go in. */
export function layOutFramed(worked: WorkedRow): FramedLayout | undefined {
	const { frame, hasMount, onPaper } = worked;
	const { frame: own, inside, seat } = frame;
	if (!own || !inside || !seat) return undefined;
	const [width, height] = [toMm(inside.width), toMm(inside.height)];
	const lip = own.lip === undefined ? usual.lip : toMm(own.lip);
	const face = own.moulding === undefined ? Math.max(usual.face, 2 * lip) : toMm(own.moulding);
	const [across, down] = [toMm(length(seat.play.width)) / 2, toMm(length(seat.play.height)) / 2];
	const whole = { left: 0, right: width, top: 0, bottom: height };
	const rebate = grown(whole, across, down);
	const { floatEdge, innerMount, layout: known } = mountOf(worked);
	const layout = hasMount ? known : undefined;
	const box = (part: 'window' | 'picture'): Rectangle | undefined => {
		const [x, y] = [layout?.across[part], layout?.down[part]];
		return x && y && { left: x.start, right: x.end, top: y.start, bottom: y.end };
	};
	return {
		outer: grown(rebate, face - lip, face - lip),
		rebate,
		sight: grown(rebate, -lip, -lip),
		inside: whole,
		window: box('window'),
		floatEdge,
		inner: innerOf(box('window'), innerMount),
		picture: hasMount ? box('picture') : onPaper && lessMargins(whole, onPaper),
		isKnown: own.lip !== undefined && own.moulding !== undefined,
		seen: seenBorders(worked),
	};
}

const grown = ({ left, right, top, bottom }: Rectangle, across: number, down: number): Rectangle => ({
	left: left - across,
	right: right + across,
	top: top - down,
	bottom: bottom + down,
});

/** The window of an inner mount, which shows within that of the outer one. */
export const innerOf = (window: Rectangle | undefined, innerMount: Length | undefined): Rectangle | undefined =>
	window && innerMount !== undefined ? grown(window, -toMm(innerMount), -toMm(innerMount)) : undefined;

/** The picture on a paper. */
export const lessMargins = ({ right, bottom }: Rectangle, margins: OnPaper): Rectangle => ({
	left: toMm(margins.left),
	right: right - toMm(margins.right),
	top: toMm(margins.top),
	bottom: bottom - toMm(margins.bottom),
});
