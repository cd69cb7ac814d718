import type { Length } from '../length/length.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { RowId } from './row.ts';

/** What a blank of board becomes. */
export type BoardPart = 'mount' | 'inner mount' | 'undermount';

/** What a blank becomes. */
export type BlankPart = BoardPart | FrameMaterial;

/** One blank that is wanted: the outer rectangle of one mount. */
export interface Blank {
	/** Place of the row in the show, from 1; 0 for a spare. */
	readonly row: number;
	/** Undefined for a spare. */
	readonly rowId: RowId | undefined;
	/** Which of the row's copies, from 1; for a spare, which of the board's spares. */
	readonly copy: number;
	readonly part: BlankPart;
	/** As the mount hangs. */
	readonly width: Length;
	readonly height: Length;
}
