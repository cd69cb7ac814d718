import { length, toMm } from '../../core/length/length.ts';
import type { Layer } from '../../core/row/stack.ts';
import type { WorkedRow } from '../../core/row/workedRow.ts';
import type { Settings } from '../../core/settings/settings.ts';

/** A layer of a stack as it is drawn, in millimetres from the frame's outer edge and the back of its lip. */
export interface DrawnLayer {
	readonly what: Layer['what'];
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
	readonly isKnown: boolean;
}

/**
 * A cut through one side of a frame, its face above:
 *
 *     +-----------------+
 *     |            lip  |
 *     |        +--------+
 *     |        | glazing, mount, print, backing …
 *     |  face  | room for points
 *     +--------+
 */
export interface ProfileLayout {
	/** The corners of the moulding. */
	readonly moulding: readonly (readonly [x: number, y: number])[];
	readonly layers: readonly DrawnLayer[];
	/** What is left of the depth behind the stack; undefined where nothing is, or the depth is not known. */
	readonly left:
		| { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
		| undefined;
	/** What must be left of it for the points. */
	readonly pointsRoom: number;
	/** How far the stack stands out of the rebate. */
	readonly over: number;
	/** Whether the settings say depth, lip and face; what they don't is drawn as is usual. */
	readonly isKnown: boolean;
	/** The ends of the drawing. */
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/** A lip and a face as most frames have them, in mm, where the settings don't say. */
const usual = { lip: 6, face: 20 };
/** How thick a lip is drawn, and how much of what lies in the frame is shown beside it, in mm. */
const lipThick = 5;
const shownBeside = 22;
/** How wide a spacer is drawn: it lies at the edge, under the lip. */
const spacerWide = 5;

/** Where the parts of a row's frame and stack lie, seen from its side; undefined where it has no frame it lies in. */
export function layOutProfile({ frame, framed }: WorkedRow, settings: Settings): ProfileLayout | undefined {
	const { frame: own, seat } = frame;
	if (!own || !seat) return undefined;
	const lip = own.lip === undefined ? usual.lip : toMm(own.lip);
	const face = own.moulding === undefined ? Math.max(usual.face, 2 * lip) : toMm(own.moulding);
	const stack = toMm(framed.depth);
	const pointsRoom = toMm(settings.pointsRoom);
	const depth = own.depth === undefined ? stack + pointsRoom : toMm(own.depth);
	const inner = face - lip;
	const start = inner + Math.max(0, toMm(length(seat.play.width)) / 2);
	const right = face + shownBeside;
	let y = 0;
	const layers = framed.layers.map(({ what, thickness, isKnown }): DrawnLayer => {
		const height = toMm(thickness);
		const layer = { what, x: start, y, width: what === 'spacer' ? spacerWide : right - start, height, isKnown };
		y += height;
		return layer;
	});
	const over = Math.max(0, stack - depth);
	return {
		moulding: [
			[0, -lipThick],
			[face, -lipThick],
			[face, 0],
			[inner, 0],
			[inner, depth],
			[0, depth],
		],
		layers,
		left:
			own.depth === undefined || depth <= stack
				? undefined
				: { x: inner, y: stack, width: right - inner, height: depth - stack },
		pointsRoom,
		over,
		isKnown: own.lip !== undefined && own.moulding !== undefined && own.depth !== undefined,
		right,
		top: -lipThick,
		bottom: Math.max(depth, stack),
	};
}
