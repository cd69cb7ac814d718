import { inches, type Length, length, mm, sameWithin } from '../length/length.ts';
import { onRuler } from '../length/ruler.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { sizeOnWall } from './sizeOnWall.ts';

/** How a framed print hangs on its hooks, wherever it hangs. Lengths in units, not whole. */
export interface Fixing {
	/** From the frame's top to the hook, cord pulled up. */
	readonly drop: number;
	/** From the frame's left edge to each hook, or on a rail to each ring. */
	readonly hooks: readonly number[];
	/** Pull on each ring of a cord, in kg; undefined where there is no cord, its weight is not known, or it is flat. */
	readonly pullKg: number | undefined;
	/** How far its cord rises from the rings to the hook, below zero where it does not; undefined where there is none. */
	readonly rise: number | undefined;
	/** Length of the cord between its rings; undefined where there is none, or a typed drop leaves none. */
	readonly cord: number | undefined;
	/** Whether it hangs by a cord whose drop is not typed: a cord is never pulled up as it was reckoned. */
	readonly isToMeasure: boolean;
}

/** The least drop of a cord: a hook nearer to the top would be seen. Common practice. */
export const leastDrop = (unit: Settings['unit']) => (unit === 'in' ? inches(0.75) : mm(20));

/**
 * The hooks of a framed print; undefined without a frame, and where the rings would have no room.
 *
 *     ┌────────────────┐ ─┐
 *     │       /\       │  │ drop
 *     │  o──       ──o │ ─┘ rings: the hook holds the cord's middle, which rises above them
 *     │                │
 *
 * The cord is half a side of two right triangles: its rise is √((c/2)² − (s/2)²), and the sine of its angle is the rise by
 * half the cord.
 */
export function fixingOf(
	worked: Pick<WorkedRow, 'frame' | 'framed' | 'read'>,
	{ hanging, unit }: Pick<Settings, 'hanging' | 'unit'>,
): Fixing | undefined {
	const size = sizeOnWall(worked);
	if (!worked.frame.frame || !size) return undefined;
	const span = size.width - 2 * hanging.inset;
	if (span <= 0) return undefined;
	const rings = ringsOf(worked, { hanging });
	const typed = worked.read.cells.drop;
	const atRings = [hanging.inset, size.width - hanging.inset];
	if (hanging.kind !== 'cord')
		return {
			...{ drop: typed ?? rings, hooks: atRings, pullKg: undefined, rise: undefined, cord: undefined },
			isToMeasure: false,
		};
	const slack = 1 + hanging.slackPercent / 100;
	const highest = Math.max(0, rings - leastDrop(unit));
	const rise = typed === undefined ? Math.min((span / 2) * Math.sqrt(slack ** 2 - 1), highest) : rings - typed;
	const half = Math.hypot(span / 2, rise);
	const { weightKg } = worked.framed;
	return {
		drop: rings - rise,
		hooks: [size.width / 2],
		pullKg: weightKg === undefined || isFlat({ rise }) ? undefined : (weightKg * half) / (2 * rise),
		rise,
		cord: rise < 0 ? undefined : 2 * half,
		isToMeasure: typed === undefined,
	};
}

/** From the frame's top to the rings, in units, not whole: never below its middle. */
export function ringsOf(
	worked: Pick<WorkedRow, 'frame' | 'framed' | 'read'>,
	{ hanging: { rings } }: Pick<Settings, 'hanging'>,
): number {
	const { height } = sizeOnWall(worked)!;
	return Math.min(rings.kind === 'length' ? rings.length : (height * rings.percent) / 100, height / 2);
}

/** Whether a cord does not rise to its hook: by the sine of an angle of 0 its pull has no bound then. */
export const isFlat = ({ rise }: Pick<Fixing, 'rise'>): boolean => rise !== undefined && rise <= sameWithin;

/** How many times what it has to hold a fixing is rated for. Common practice. */
export const safetyFactor = 4;

/** What each fixing has to hold, in kg: the print, or what its cord pulls at both rings where that is more. */
export const loadOf = (weightKg: number, { pullKg }: Pick<Fixing, 'pullKg'>): number =>
	Math.max(weightKg, 2 * (pullKg ?? 0));

/** Where the hooks of a print are on its wall. */
export interface Hooks {
	readonly fixing: Fixing;
	/** Each from the wall's left edge and above the floor; on a rail, which has its own, none. */
	readonly hooks: readonly { readonly left: Length; readonly height: Length }[];
	/** How far the rail's cords reach down to the rings; undefined without a rail, or where its height is not set. */
	readonly railCord: Length | undefined;
}

/** The hooks of a print that hangs, heights on the ruler; undefined where it has none. */
export function hooksOf(
	worked: Pick<WorkedRow, 'frame' | 'framed' | 'read'>,
	{ left, centre }: { readonly left: Length; readonly centre: Length },
	settings: Pick<Settings, 'hanging' | 'ruler' | 'unit'>,
): Hooks | undefined {
	const fixing = fixingOf(worked, settings);
	if (!fixing) return undefined;
	const { height } = sizeOnWall(worked)!;
	const above = centre + height / 2 - fixing.drop;
	const { kind, nail } = settings.hanging;
	if (kind === 'rail')
		return { fixing, hooks: [], railCord: nail > above ? onRuler(nail - above, settings.ruler) : undefined };
	return {
		fixing,
		hooks: fixing.hooks.map((hook) => ({
			left: length(Math.round(left + hook)),
			height: onRuler(above, settings.ruler),
		})),
		railCord: undefined,
	};
}
