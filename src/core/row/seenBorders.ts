import { hiddenByFrame } from './frame.ts';
import type { WorkedRow } from './workedRow.ts';

/** The borders that show in a row's frame; undefined where it has no lip given or no window. */
export function seenBorders(worked: WorkedRow): { side: number; top: number; bottom: number } | undefined {
	const hidden = hiddenByFrame(worked);
	const { side, top, bottom } = worked.solved;
	if (!hidden || side === undefined || top === undefined || bottom === undefined) return undefined;
	return { side: side - hidden.width, top: top - hidden.height, bottom: bottom - hidden.height };
}
