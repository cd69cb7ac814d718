import { formatLength, formatWithUnit } from '../length/formatLength.ts';
import { type Length, nearestLength } from '../length/length.ts';
import { hiddenByFrame } from '../row/frame.ts';
import { paperPlace } from '../row/paperPlace.ts';
import { boardThickness, faceOpening, mountLayers, thicknessOf } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';

/**
 * What else there is to know of a mount that comes out, in sentences: the opening and borders that one sees, the inner
 * mount's window and blank, where the paper lies for hinging, and how thick it all is. A fact that does not apply is not there.
 */
export function factsOf(worked: WorkedRow, settings: Settings): readonly string[] {
	const { read, solved, hasMount, boards } = worked;
	const { windowWidth, windowHeight, mountWidth, mountHeight, side, top, bottom } = solved;
	if (!hasMount || !windowWidth || !windowHeight || !mountWidth || !mountHeight) return [];
	if (side === undefined || top === undefined || bottom === undefined) return [];
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const say = (value: number) => formatWithUnit(nearestLength(value), settings);
	const size = (width: number, height: number) => `${n(width)} × ${say(height)}`;
	const { thickness } = boardThickness(boards.mount);
	const seen = (border: Length, hidden: number = thickness) => n(border - hidden);
	const facts = [
		`The bevel opens the face to ${size(faceOpening(windowWidth, thickness), faceOpening(windowHeight, thickness))}; one sees borders of ${seen(side)}, ${seen(top)} and ${seen(bottom)}.`,
	];
	const frame = hiddenByFrame(worked);
	if (frame)
		facts.push(
			`In the frame “${frame.frame.name}” one sees ${seen(side, frame.width)} at the sides, ${seen(top, frame.height)} above and ${seen(bottom, frame.height)} below.`,
		);
	const shows = read.cells.innerMount;
	if (shows)
		facts.push(
			`The inner mount’s window is ${size(windowWidth - 2 * shows, windowHeight - 2 * shows)}, its blank ${size(mountWidth - 2 * settings.innerBlankSmaller, mountHeight - 2 * settings.innerBlankSmaller)}.`,
		);
	const place = paperPlace(read.cells, solved);
	if (place)
		facts.push(
			`The paper ${size(place.paper.width, place.paper.height)} lies ${n(place.fromLeft)} from the mount’s left edge and ${say(place.fromTop)} from its top.`,
		);
	const layers = mountLayers(worked, settings);
	facts.push(
		`Mount${shows ? 's' : ''}${settings.undermount ? ', print and undermount' : ' and print'} are ${layers.map(({ thickness: each }) => n(each)).join(' + ')} = ${say(thicknessOf(layers))} thick.`,
	);
	return facts;
}
