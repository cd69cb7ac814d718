import { sameWithin } from '../length/length.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { type Fixing, isFlat, leastDrop, ringsOf } from './fixing.ts';

/** From this many times the weight on a ring a cord counts as nearly flat: at 30° it is one, at 15° about two. */
const muchOfWeight = 2;

/**
 * What is wrong with a cord that hardly rises to its hook, and what would help, in a sentence; undefined where it rises
 * enough, and where there is no cord. It is said whether or not a rating is known.
 *
 * The pull on a ring is weight / (2 · sin α), with α the angle by which the cord rises: without bound as α goes to 0.
 */
export function cordCaution(
	worked: Pick<WorkedRow, 'framed' | 'read' | 'frame'>,
	fixing: Fixing,
	settings: Pick<Settings, 'hanging' | 'unit'>,
): string | undefined {
	const help = helpFor(worked, fixing, settings);
	if (isFlat(fixing))
		return `Its cord is flat. The pull on each ring has no limit, and the hook may not hold it. ${help}.`;
	const { pullKg } = fixing;
	const { weightKg } = worked.framed;
	if (pullKg === undefined || weightKg === undefined || pullKg < muchOfWeight * weightKg) return undefined;
	return `Its cord is nearly flat. Each ring is pulled by ${(pullKg / weightKg).toFixed(1)} times its weight. ${help}.`;
}

/** What keeps the cord from rising: the typed drop, the rings near the top, else the cord's own length. */
function helpFor(
	worked: Pick<WorkedRow, 'framed' | 'read' | 'frame'>,
	{ rise }: Fixing,
	settings: Pick<Settings, 'hanging' | 'unit'>,
): string {
	if (worked.read.cells.drop !== undefined) return 'Type a smaller drop, or lower the rings';
	const room = ringsOf(worked, settings) - leastDrop(settings.unit);
	return room - (rise ?? 0) <= sameWithin ? 'Lower the rings' : 'Give the cord more slack';
}
