import { type Length, minus, zero } from '../length/length.ts';
import type { FrameMaterial } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { BlankPart, BoardPart } from '../show/blank.ts';
import { boardNamed } from './boards.ts';
import type { WorkedRow } from './workedRow.ts';

/** A blank of board that each copy of a row wants. */
export interface PartOfBoard extends Part {
	readonly part: BoardPart;
}

/** A blank that each copy of a row wants. */
export interface Part {
	/** What it is of; undefined: board. */
	readonly material?: FrameMaterial;
	/** The board's name as it stands in the settings, else as typed; empty where none is named and the show has none. */
	readonly board: string;
	readonly part: BlankPart;
	/** As the mount hangs. */
	readonly width: Length;
	readonly height: Length;
}

/** The blanks of a row whose mount has a size: the mount, the inner mount, the undermount; of a float its one board. */
export function partsOf(
	{ solved, read, boards }: Pick<WorkedRow, 'solved' | 'read' | 'boards'>,
	settings: Settings,
): readonly PartOfBoard[] {
	const size = { width: solved.mountWidth!, height: solved.mountHeight! };
	if (read.cells.isFloat) return [{ board: boards.mount.name, part: 'undermount', ...size }];
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

/** What of a row is asked for its glazing and backing. */
type Framed = Pick<WorkedRow, 'frame' | 'materials' | 'words'>;

/** Whether a row's glazing or backing comes with its frame: it is not cut then, nor got. */
const comesWithFrame = ({ frame, words }: Framed, material: FrameMaterial): boolean =>
	words.texts[material] === '' && frame.frame?.includes?.includes(material) === true;

/**
 * The glazing and the backing of a row, where they are not part of its frame: as large as what goes into it, the backing
 * smaller on each side by as much as the show says. Nothing where that size is not known yet.
 */
export function frameParts(row: Framed, settings: Settings): readonly (Part & { readonly isListed: boolean })[] {
	const { inside } = row.frame;
	if (!inside) return [];
	const part = (material: FrameMaterial, smaller: Length) => {
		const found = row.materials[material];
		if (!found || comesWithFrame(row, material)) return [];
		const [width, height] = [minus(inside.width, smaller, smaller), minus(inside.height, smaller, smaller)];
		if (width <= 0 || height <= 0) return [];
		return [
			{ board: found.name ?? found.usual, material, part: material, width, height, isListed: found.name !== undefined },
		];
	};
	return [...part('glazing', zero), ...part('backing', settings.backingSmaller)];
}
