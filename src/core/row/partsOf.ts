import { type Length, minus } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import type { BlankPart } from '../show/blank.ts';
import { boardNamed } from './boards.ts';
import type { WorkedRow } from './workedRow.ts';

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
	{ solved, read, boards }: Pick<WorkedRow, 'solved' | 'read' | 'boards'>,
	settings: Settings,
): readonly Part[] {
	const size = { width: solved.mountWidth!, height: solved.mountHeight! };
	const smaller = settings.innerBlankSmaller;
	const inward = (side: Length) => minus(side, smaller, smaller);
	const undermount = boardNamed(settings.undermount, settings)?.name ?? settings.undermount?.trim() ?? '';
	return [
		{ board: boards.mount.name, part: 'mount', ...size },
		...(read.cells.innerMount
			? [
					{
						board: boards['inner mount'].name,
						part: 'inner mount' as const,
						width: inward(size.width),
						height: inward(size.height),
					},
				]
			: []),
		...(undermount === '' ? [] : [{ board: undermount, part: 'undermount' as const, ...size }]),
	];
}
