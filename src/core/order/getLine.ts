import type { Size } from '../length/size.ts';
import type { SupplyKind } from '../settings/supply.ts';

/** What kind of thing is got, in the order of the list. */
export const getKinds = [
	...(['board', 'glazing', 'backing', 'frame', 'stick', 'paper'] as const),
	...(['spacer', 'tape', 'cord', 'rings', 'bumpers', 'hinges', 'labels'] as const),
] as const satisfies readonly (SupplyKind | 'board' | 'glazing' | 'backing' | 'frame' | 'stick' | 'paper')[];

/** One of `getKinds`. */
export type GetKind = (typeof getKinds)[number];

/** What there is to say of one thing that is got. Amounts are pieces, or a `Length` where it is got by length. */
export interface Need {
	readonly kind: GetKind;
	readonly name: string;
	/** Of a sheet, a blank, a stick or a paper. */
	readonly size?: Partial<Size>;
	/** Of what is cut into blanks: where it is no whole sheet. */
	readonly piece?: 'offcut' | 'blank';
	readonly isByLength?: boolean;
	readonly wanted: number;
	readonly there: number;
	/** What a pack holds. */
	readonly pack: number;
	/** Of a pack, in whole minor units; undefined where none is given. */
	readonly price: number | undefined;
	/** How much of it each print takes, by the print's place in the show from 0. */
	readonly taken: ReadonlyMap<number, bigint>;
	/**
	 * Of sheets: what is cut from these. A board in two sizes is shared by what each print takes of both, wherever the plan
	 * happens to lay it.
	 */
	readonly cutFor?: ReadonlyMap<number, bigint>;
	/** Whether a figure of common practice stands for a size that is not known. */
	readonly isAbout?: boolean;
}

/** A line of what is to be got. */
export interface GetLine extends Need {
	/** Whole packs, of what is not there. */
	readonly packs: number;
	/** In whole minor units; undefined where no price. */
	readonly cost: number | undefined;
}

/** What has to be bought of a need: whole packs, of what is not there. */
export function lineOf(need: Need): GetLine {
	const packs = Math.ceil(Math.max(0, need.wanted - need.there) / need.pack);
	return { ...need, packs, cost: need.price === undefined ? undefined : packs * need.price };
}

/** Adds what a print takes to what is taken. */
export function take(taken: Map<number, bigint>, place: number, amount: bigint): void {
	taken.set(place, (taken.get(place) ?? 0n) + amount);
}
