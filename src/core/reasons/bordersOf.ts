import { hiddenByFrame } from '../row/frame.ts';
import { boardThickness } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { sayer } from './sayer.ts';

/** What is known of a print's borders in one way, in the show's unit, which its table says once. */
export interface BorderFigures {
	readonly what: 'To cut' | 'Visible' | 'In the frame';
	/** At a side, at the top and at the bottom. */
	readonly figures: readonly string[];
}

/**
 * The borders of a mount as a table: what is cut, what is seen of it within the bevel, and of that inside the frame. Empty
 * where there is no mount, or its size is not known.
 */
export function bordersOf(worked: WorkedRow, settings: Settings): readonly BorderFigures[] {
	const { read, solved, hasMount, boards } = worked;
	const { windowWidth, windowHeight, mountWidth, mountHeight } = solved;
	if (!windowWidth || !windowHeight || !mountWidth || !mountHeight) return [];
	const { side, top, bottom } = solved;
	if (!hasMount || read.cells.isFloat || side === undefined || top === undefined || bottom === undefined) return [];
	const { n } = sayer(settings);
	const frame = hiddenByFrame(worked);
	const { thickness } = boardThickness(boards.mount);
	const less = (what: BorderFigures['what'], across: number, down: number) => ({
		what,
		figures: [n(side - across), n(top - down), n(bottom - down)],
	});
	return [
		less('To cut', 0, 0),
		less('Visible', thickness, thickness),
		...(frame ? [less('In the frame', frame.width, frame.height)] : []),
	];
}
