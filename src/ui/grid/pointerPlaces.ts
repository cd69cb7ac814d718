/** What is under the pointer: a cell, a column's head or its edge, the grip of a row or of all, a selection's handle. */
export interface PointerPlace {
	readonly kind: 'cell' | 'head' | 'edge' | 'grip' | 'all' | 'start' | 'end' | 'fill';
	readonly row: number;
	readonly column: number;
}

/** Whether it is a handle of the selection, which lies over the cells. */
export const isHandle = ({ kind }: PointerPlace): boolean => kind === 'start' || kind === 'end' || kind === 'fill';

/** The cell under a point, below the handles that lie over it. */
export const placeBelow = ({ clientX, clientY }: Pick<MouseEvent, 'clientX' | 'clientY'>): PointerPlace | undefined =>
	document
		.elementsFromPoint(clientX, clientY)
		.map(placeOf)
		.find((place) => place !== undefined && !isHandle(place));

/** What an element of the grid is; undefined for what can neither be pressed nor dragged, and for what an editor opens. */
export function placeOf(target: EventTarget | null): PointerPlace | undefined {
	const isApart = target instanceof Element && target.closest('[data-apart]') !== null;
	const element =
		target instanceof Element && !isApart
			? target.closest<HTMLElement>('[data-handle], [data-edge], [data-grip], [data-row]')
			: null;
	if (element === null) return undefined;
	const { grip, handle, edge } = element.dataset;
	if (handle !== undefined) return { kind: handle as 'start' | 'end' | 'fill', row: -1, column: -1 };
	if (grip !== undefined) return { kind: Number(grip) < 0 ? 'all' : 'grip', row: Number(grip), column: 0 };
	const cell = element.closest<HTMLElement>('[data-row]')!;
	const [row, column] = [Number(cell.dataset['row']), Number(cell.dataset['column'])];
	return { kind: edge !== undefined ? 'edge' : row < 0 ? 'head' : 'cell', row, column };
}
