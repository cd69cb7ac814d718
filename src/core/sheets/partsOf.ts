import { type Length, minus } from '../length/length.ts';
import type { RowResult } from '../row/rowResult.ts';
import { boardNamed, boardOf, innerBoardOf } from '../row/stack.ts';
import type { Row } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import type { BlankPart } from './blank.ts';

/** A blank that each copy of a row wants. */
export interface Part {
	/** The board's name as it stands in the settings, else as typed; empty where none is named and the show has none. */
	readonly board: string;
	readonly part: BlankPart;
	/** As the mount hangs. */
	readonly width: Length;
	readonly height: Length;
}

/** The blanks of a row whose mount has a size: the mount, the inner mount, the undermount. */
export function partsOf(
	row: Row,
	{ solved, innerMount }: Pick<RowResult, 'solved' | 'innerMount'>,
	settings: Settings,
): readonly Part[] {
	const size = { width: solved.mountWidth!, height: solved.mountHeight! };
	const board = boardOf(row, settings)?.name ?? row.typed.board?.trim() ?? '';
	const innerBoard = row.typed['inner board']?.trim()
		? (innerBoardOf(row, settings)?.name ?? row.typed['inner board'].trim())
		: board;
	const smaller = settings.innerBlankSmaller;
	const inward = (side: Length) => minus(side, smaller, smaller);
	const undermount = boardNamed(settings.undermount, settings)?.name ?? settings.undermount?.trim() ?? '';
	return [
		{ board, part: 'mount', ...size },
		...(innerMount
			? [{ board: innerBoard, part: 'inner mount' as const, width: inward(size.width), height: inward(size.height) }]
			: []),
		...(undermount === '' ? [] : [{ board: undermount, part: 'undermount' as const, ...size }]),
	];
}
