import { type Length, mm, plus } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';
import { boardNamed, type FoundBoard, type RowBoards } from './boards.ts';
import type { Cells } from './cells.ts';
import { type Material, type RowMaterials, usualDensity } from './materials.ts';

/** A print on fine-art paper: about 0.3 mm. Common practice. */
export const printThickness = mm(0.3);
/** Mount board of which no thickness is known: 4-ply, 1.27 to 1.52 mm (S. Saitzyk, Art Hardware, 1987). */
export const usualBoardThickness = mm(1.4);

/** The thickness of a board, and whether it is known. */
export const boardThickness = ({ board }: FoundBoard): { readonly thickness: Length; readonly isKnown: boolean } => ({
	thickness: board?.thickness ?? usualBoardThickness,
	isKnown: board?.thickness !== undefined,
});

/** One thing that lies in a frame. */
export interface Layer {
	readonly what: 'glazing' | 'spacer' | 'mount' | 'inner mount' | 'print' | 'undermount' | 'backing';
	readonly thickness: Length;
	/** Weight of a square metre 1 mm thick, in kg. A spacer lies at the edge only: it has none. */
	readonly density: number;
	/** Whether the show says how thick it is: else it is as thick as is usual. */
	readonly isKnown: boolean;
}

/** What of a row its stack is of. */
export interface Stacked {
	readonly boards: RowBoards;
	readonly read: { readonly cells: Pick<Cells, 'innerMount' | 'spacer' | 'isFloat'> };
	readonly hasMount: boolean;
	readonly materials: RowMaterials;
}

const printLayer: Layer = { what: 'print', thickness: printThickness, density: usualDensity, isKnown: false };

/** All that lies in a row's frame, from the front. */
export function layersOf({ boards, read, hasMount, materials }: Stacked, settings: Settings): readonly Layer[] {
	const { glazing, backing } = materials;
	const { spacer, innerMount, isFloat } = read.cells;
	const isWindowed = hasMount && !isFloat;
	const layers: Layer[] = [];
	if (glazing) layers.push(materialLayer('glazing', glazing));
	if (spacer) layers.push({ what: 'spacer', thickness: spacer, density: 0, isKnown: true });
	if (isWindowed) layers.push(boardLayer('mount', boards.mount.board));
	if (isWindowed && innerMount) layers.push(boardLayer('inner mount', boards['inner mount'].board));
	layers.push(printLayer);
	if (hasMount && isFloat) layers.push(boardLayer('undermount', boards.mount.board));
	else if (isWindowed && settings.undermount?.trim())
		layers.push(boardLayer('undermount', boardNamed(settings.undermount, settings)));
	if (backing) layers.push(materialLayer('backing', backing));
	return [...layers]; // a list that was pushed to keeps spare room; there is one of these for each of thousands of rows
}

const materialLayer = (what: Layer['what'], { thickness, density, isKnown }: Material): Layer => ({
	what,
	thickness,
	density,
	isKnown,
});

const boardLayer = (what: Layer['what'], board: FoundBoard['board']): Layer => ({
	what,
	thickness: board?.thickness ?? usualBoardThickness,
	density: board?.density ?? usualDensity,
	isKnown: board?.thickness !== undefined,
});

/** How thick layers are together. */
export const thicknessOf = (layers: readonly Layer[]): Length => plus(...layers.map(({ thickness }) => thickness));

const ofMount: readonly Layer['what'][] = ['mount', 'inner mount', 'print', 'undermount'];

/** The parts of a row's stack that the show's rules count: mounts, print and undermount. */
export const mountLayers = (stacked: Stacked, settings: Settings): readonly Layer[] =>
	layersOf(stacked, settings).filter(({ what }) => ofMount.includes(what));

/** The thickness of mounts, print and undermount together. */
export const stackThickness = (stacked: Stacked, settings: Settings): Length =>
	thicknessOf(mountLayers(stacked, settings));

/** The face opening of a window with a 45° bevel: larger than the sight edge by twice the board's thickness. */
export const faceOpening = (window: Length, thickness: Length): Length => plus(window, thickness, thickness);
