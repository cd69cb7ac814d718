import { formatWithUnit, type Scale } from '../length/formatLength.ts';
import { type Length, plus } from '../length/length.ts';
import type { Bench } from '../settings/bench.ts';

/**
 * What a test cut is made by, in sentences: how deep the blade goes, what lies under the mount, what to look for.
 * @param thickness of the board that is cut; undefined where it is not known
 */
export function testCutWords(thickness: Length | undefined, { slipBoard }: Bench, scale: Scale): readonly string[] {
	const board = thickness === undefined ? 'this board' : `board of ${formatWithUnit(thickness, scale)}`;
	const measure = 'Then measure where the cut runs.';
	if (slipBoard === 0)
		return [
			`Nothing lies under the mount on this bench. Set the blade to come just through ${board}, no deeper.`,
			`Make one cut in an offcut. Its edge should be clean, and the bed not marked. ${measure}`,
		];
	const slip = slipBoard === undefined ? 'a waste strip' : `a waste strip of ${formatWithUnit(slipBoard, scale)}`;
	const limit =
		slipBoard === undefined || thickness === undefined
			? ''
			: ` Never set it to ${formatWithUnit(plus(thickness, slipBoard), scale)}, as that cuts through the strip.`;
	return [
		`Lay ${slip} under the mount. Set the blade to come through ${board} and mark the strip no more than a hair.${limit}`,
		`Make one cut in an offcut. Its edge should be clean. Move the strip a little before each cut, or the blade follows the old groove. ${measure}`,
	];
}
