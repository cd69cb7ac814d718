import { type Length, length, mmPerMetre, plus, toMm } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import type { RowFrame } from './frame.ts';
import { type Layer, layersOf, type Stacked, thicknessOf } from './stack.ts';

/** A row as it hangs: in its frame, or without one. */
export interface FramedRow {
	/** The outer size of the frame, else of the mount; undefined where moulding or lip are not known. */
	readonly size: Size | undefined;
	/** What lies in it, from the front. */
	readonly layers: readonly Layer[];
	/** All of that together. */
	readonly depth: Length;
	/** In kg; undefined where the frame's own weight is not known. */
	readonly weightKg: number | undefined;
	/** Whether a usual thickness stands for one that is not known. */
	readonly isAbout: boolean;
}

/** The outer size of a row, what lies in its frame, how deep that is, and what it weighs. */
export function frameRow(stacked: Stacked, frame: RowFrame, settings: Settings): FramedRow {
	const layers = layersOf(stacked, settings);
	const size = framedSize(frame);
	return {
		size,
		layers,
		depth: thicknessOf(layers),
		weightKg: weightOf(layers, frame, size),
		isAbout: layers.some(({ isKnown }) => !isKnown),
	};
}

/** `rebate + 2·(moulding − lip)`; without a frame what would go into one. */
function framedSize({ frame, seat, inside, named }: RowFrame): Size | undefined {
	if (named.missing !== undefined) return undefined;
	if (!frame) return inside;
	const { moulding, lip } = frame;
	if (!seat || moulding === undefined || lip === undefined) return undefined;
	const outer = (rebate: Length): Length => length(rebate + 2 * (moulding - lip));
	return { width: outer(seat.rebate.width), height: outer(seat.rebate.height) };
}

/** Area × Σ (thickness × density) + weight of the moulding × outer perimeter. */
function weightOf(layers: readonly Layer[], { frame, inside, named }: RowFrame, size: Size | undefined) {
	if (!inside || named.missing !== undefined) return undefined;
	const ofLayers = areaM2(inside) * layers.reduce((sum, { thickness, density }) => sum + toMm(thickness) * density, 0);
	if (!frame) return ofLayers;
	if (frame.weightKgPerMetre === undefined || !size) return undefined;
	return ofLayers + frame.weightKgPerMetre * perimeterM(size);
}

/** In square metres. */
export const areaM2 = ({ width, height }: Size): number => (toMm(width) / mmPerMetre) * (toMm(height) / mmPerMetre);

/** In metres. */
export const perimeterM = ({ width, height }: Size): number => toMm(plus(width, width, height, height)) / mmPerMetre;
