import type { Settings } from '../settings/settings.ts';
import { type MadeStep, madeSteps } from '../show/madeTick.ts';
import type { WorkedRow } from './workedRow.ts';

/** What of a row says which steps make it. */
type Making = Pick<WorkedRow, 'hasMount' | 'read' | 'hinges' | 'materials' | 'frame' | 'copies'>;

/**
 * The steps that make a print ready to hang, in order. A float has no window to be clean, a print that hangs in no frame
 * nothing to be sealed or corded, and only what hangs by a cord between its rings has one: two hooks take the rings
 * themselves, and the cords of a rail are the rail's. Whether a print is signed and labelled is asked of each.
 * @returns none for a row in which nothing is made
 */
export function makingSteps(
	{ hasMount, read, hinges, materials, frame, copies }: Making,
	{ hanging }: Settings,
): readonly MadeStep[] {
	if (copies === 0) return [];
	// A frame that is in no list is a frame all the same.
	const isFramed = frame.frame !== undefined || frame.named.missing !== undefined;
	const isAsked: Readonly<Record<MadeStep, boolean>> = {
		printed: true,
		signed: true,
		hinged: hinges !== undefined,
		'window clean': hasMount && !read.cells.isFloat,
		'glazing clean': materials.glazing !== undefined,
		sealed: isFramed,
		labelled: true,
		corded: isFramed && hanging.kind === 'cord',
	};
	return madeSteps.filter((step) => isAsked[step]);
}
