/** A figure along a wall: where its middle is and how wide it is, in one unit. */
export interface FigureAt {
	readonly middle: number;
	readonly wide: number;
}

/** How wide a figure is in letters of its height, with the room that it needs beside it. */
export const figureRoom = (text: string): number => text.length * 0.62 + 0.6;

/** Those of the figures that lie over none before them, nor over one of `taken`: the others wait until there is more room. */
export function clearFigures<Figure extends FigureAt>(
	figures: readonly Figure[],
	taken: readonly FigureAt[] = [],
): readonly Figure[] {
	const drawn: Figure[] = [];
	for (const figure of figures) {
		const { middle, wide } = figure;
		const isClear = [...taken, ...drawn].every((other) => Math.abs(middle - other.middle) >= (wide + other.wide) / 2);
		if (isClear) drawn.push(figure);
	}
	return drawn;
}
