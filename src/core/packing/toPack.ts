import type { RowResult } from '../findings/rowResult.ts';
import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';

/** A framed print to be packed: one copy of a row. */
export interface ToPack {
	/** The place of its row, from 0. */
	readonly place: number;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
	readonly copies: number;
	/** The outer size of its frame, its long side first. */
	readonly long: Length;
	readonly short: Length;
	/** Width of the frame's face: what another frame may rest on. */
	readonly face: Length;
	/** In whole grams, upwards; undefined where it is not known. */
	readonly grams: number | undefined;
	/** Whether a usual thickness stands for one that is not known. */
	readonly isAbout: boolean;
}

/** Prints without a frame, which lie flat in a folder: all copies of a row. */
export interface FlatPrint {
	readonly place: number;
	readonly copies: number;
	/** Of its mount, else of its paper or picture; undefined where that is not known. */
	readonly size: Size | undefined;
}

/** What is to be packed of a show. */
export interface PrintsToPack {
	readonly framed: readonly ToPack[];
	/** Framed prints whose outer size is not known: they come into no box until it is. */
	readonly unmeasured: readonly { readonly place: number; readonly copies: number }[];
	readonly flat: readonly FlatPrint[];
	/** Prints that whoever bought them has fetched: they are not packed. */
	readonly collected: readonly { readonly place: number; readonly copies: number }[];
}

/** The prints of a show as they are packed, each copy by itself; a row in which nothing is made has none. */
export function printsToPack(
	results: readonly Pick<RowResult, 'frame' | 'framed' | 'copies' | 'words'>[],
): PrintsToPack {
	const framed: ToPack[] = [];
	const unmeasured: { place: number; copies: number }[] = [];
	const flat: FlatPrint[] = [];
	const collected: { place: number; copies: number }[] = [];
	for (const [place, { frame, framed: hangs, copies, words }] of results.entries()) {
		if (copies === 0) continue;
		if (words.stage === 'collected') {
			collected.push({ place, copies });
			continue;
		}
		const face = frame.frame?.moulding;
		const { size, weightKg, isAbout } = hangs;
		if (frame.frame === undefined && frame.named.missing === undefined) {
			flat.push({ place, copies, size: frame.inside });
		} else if (size === undefined || face === undefined) {
			unmeasured.push({ place, copies });
		} else {
			const [long, short] = size.width >= size.height ? [size.width, size.height] : [size.height, size.width];
			const grams = weightKg === undefined ? undefined : Math.ceil(weightKg * 1000);
			for (let copy = 1; copy <= copies; copy++)
				framed.push({ place, copy, copies, long, short, face, grams, isAbout });
		}
	}
	return { framed, unmeasured, flat, collected };
}
