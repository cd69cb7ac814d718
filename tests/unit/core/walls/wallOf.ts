import { toMm } from '../../../../src/core/length/length.ts';
import { workOut } from '../../../../src/core/row/workOut.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';
import { hangWalls } from '../../../../src/core/walls/hangWalls.ts';

/** A print of a size on the wall, in mm: a mount without a frame. */
export const print = (size: string, typed: Typed = {}): Typed => {
	const [width, height] = size.split('x');
	return { 'mount width': `${width} mm`, 'mount height': `${height} mm`, ...typed };
};

export const rowsOf = (prints: readonly Typed[]): readonly Row[] =>
	prints.map((typed, place) => ({ id: `r${place}`, order: place + 1, typed }));

/** Hangs prints in a show. */
export function hang(prints: readonly Typed[], typed: TypedSettings) {
	const { settings, problems } = readSettings(typed);
	if (problems.length > 0) throw new TypeError(JSON.stringify(problems));
	const results = rowsOf(prints).map((row) => workOut(row, settings));
	const hanging = hangWalls(results, settings);
	return { settings, results, hanging, walls: hanging.walls };
}

/** The places on the first wall: `number of the print: left, centre`, in mm, from the left. */
export const placesOn = (prints: readonly Typed[], typed: TypedSettings): readonly string[] =>
	hang(prints, typed).walls[0]!.prints.map(
		({ place, left, centre, past }) =>
			`${place + 1}: ${toMm(left)}, ${toMm(centre)}${past === undefined ? '' : ` past ${toMm(past)}`}`,
	);
