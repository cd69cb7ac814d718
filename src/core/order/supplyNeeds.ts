import type { RowResult } from '../findings/rowResult.ts';
import { type Length, length, mm, plus } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { suppliesByLength, type SupplyKind, supplyKinds } from '../settings/supply.ts';
import { type Need, take } from './getLine.ts';

/** A frame over this weight hangs on four rings, in kg. Common practice. */
const heavyKg = 8;
/** Rings of a frame, and of a heavy one. */
const ringsOf = { light: 2, heavy: 4 } as const;
/** Bumpers at a frame's lower corners. */
const bumpersOf = 2;
/** Cord for each framed width, in tenths: from ring to ring with slack, and what the knots take. */
const cordInTenths = 14;
/** What is added to lengths, in tenths: ends, and what is cut wrongly. */
const addedInTenths = 1;
/** What stands for a pack of what is got by length: a metre. */
const metre = mm(1000);

/**
 * What is used up with the prints, in the order of `supplyKinds`. What one copy needs is said by the show's list, else by
 * common practice; only a row with a spacer, or a frame, needs what belongs to it.
 * @param rows those that count, by their place
 */
export function supplyNeeds(rows: ReadonlyMap<number, RowResult>, { supplies, hanging }: Settings): readonly Need[] {
	return supplyKinds.flatMap((kind): readonly Need[] => {
		const listed = supplies.find((supply) => supply.kind === kind);
		const isByLength = suppliesByLength.includes(kind);
		const taken = new Map<number, bigint>();
		let isAbout = false;
		for (const [place, result] of rows) {
			const usual = usualOf(kind, result, hanging.kind);
			if (usual === undefined) continue;
			const each = listed?.each ?? usual.each;
			if (each === 0) continue;
			isAbout ||= listed?.each === undefined && usual.isAbout === true;
			take(taken, place, BigInt(each) * BigInt(result.copies));
		}
		const used = [...taken.values()].reduce((sum, own) => sum + own, 0n);
		if (used === 0n) return [];
		const wanted = Number(isByLength ? (used * BigInt(10 + addedInTenths) + 9n) / 10n : used);
		return [
			{
				kind,
				name: listed?.name ?? kind,
				...(isByLength && { isByLength }),
				wanted,
				there: listed?.count ?? 0,
				pack: listed?.pack ?? (isByLength ? metre : 1),
				price: listed?.price,
				taken,
				...(isAbout && { isAbout }),
			},
		];
	});
}

/** What one copy of a row needs by common practice; undefined where it needs none. */
function usualOf(
	kind: SupplyKind,
	result: WorkedRow,
	hangsBy: Settings['hanging']['kind'],
): { readonly each: number; readonly isAbout?: boolean } | undefined {
	const { frame, framed, read } = result;
	if (kind === 'hinges') return result.hinges && { each: result.hinges.count };
	if (kind === 'labels') return { each: 1 };
	if (kind === 'spacer') return read.cells.spacer && frame.inside ? { each: perimeter(frame.inside) } : undefined;
	if (!frame.frame) return undefined;
	if (kind === 'rings') return { each: (framed.weightKg ?? 0) > heavyKg ? ringsOf.heavy : ringsOf.light };
	if (kind === 'bumpers') return { each: bumpersOf };
	if (kind === 'cord' && hangsBy === 'two hooks') return undefined;
	// Where the moulding is not known, the rebate is the least that the frame can be.
	const size = framed.size ?? frame.seat?.rebate;
	if (!size) return undefined;
	const isAbout = framed.size === undefined;
	return { each: kind === 'tape' ? perimeter(size) : Math.ceil((size.width * cordInTenths) / 10), isAbout };
}

/** How much cord is cut off for one frame, knots and all, as it is reckoned in what to get; undefined where it has none. */
export function cordToCut(result: WorkedRow, { supplies, hanging }: Settings): Length | undefined {
	const usual = usualOf('cord', result, hanging.kind);
	const each = supplies.find(({ kind }) => kind === 'cord')?.each ?? usual?.each;
	return usual && each !== undefined ? length(each) : undefined;
}

const perimeter = ({ width, height }: Size): Length => plus(width, width, height, height);
