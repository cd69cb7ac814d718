import { formatSize } from '../length/formatLength.ts';
import type { Settings } from '../settings/settings.ts';
import type { PackedBox, PackingPlan } from './packPrints.ts';
import type { ToPack } from './toPack.ts';
import { countOf } from '../values/countOf.ts';

/** The usual cautions of packing glass and lifting. Common practice; who lends or insures may ask for more. */
export const packingCautions = [
	'Pairs stand face to face, a sheet of card between the two, corners padded. Strips of tape across the glass, edge to edge, hold splinters should it break. That is usual for glass, never for acrylic or coated glass.',
	'Boxes stand upright, glass upright in them. Two people lift what is over 20 kg, or too wide for one. Gloves for glass.',
	'Whoever insures, lends or carries the prints may ask for more. Their rules and your local rules come first.',
] as const;

/** The caution at the foot of each page. */
export const packingCare =
	'Upright and dry, never flat under others. Two people lift what is heavy. Local rules first.';

const kg = (grams: number): string => `${(grams / 1000).toFixed(1)} kg`;

/** What a framed print weighs; "not known" where nobody can say. */
export const weightOfPrint = ({ grams, isAbout }: Pick<ToPack, 'grams' | 'isAbout'>): string =>
	grams === undefined ? 'not known' : `${isAbout ? 'about ' : ''}${kg(grams)}`;

/** What the prints of a box weigh, without the box: "about 12.4 kg", "at least 3.0 kg: 2 weights not known". */
export function weightOfBox({ grams, unweighed, isAbout, pairs }: PackedBox): string {
	const unknown = unweighed.length;
	if (unknown === pairs.flat().length) return 'weight not known';
	if (unknown > 0) return `at least ${kg(grams)}, ${countOf(unknown, 'weight')} not known`;
	return `${isAbout ? 'about ' : ''}${kg(grams)}`;
}

/** A box in a line: "Box 1: inside 828 × 628 mm, about 12.4 kg". */
export const boxWords = (box: PackedBox, settings: Settings): string =>
	`Box ${box.number}: inside ${formatSize(box.inside.long, box.inside.short, settings)}, ${weightOfBox(box)}${box.isHeavy ? ', two people to lift' : ''}`;

/** How many boxes there are, and whether there could be fewer, in a sentence; empty where there is none. */
export function boxesWords({ boxes, least }: PackingPlan): string {
	if (boxes.length === 0) return '';
	const prints = boxes.reduce((sum, { pairs }) => sum + pairs.flat().length, 0);
	const words = `${countOf(prints, 'framed print')} in ${countOf(boxes.length, 'box', 'boxes')}.`;
	if (boxes.length === 1) return words;
	return `${words} ${least === boxes.length ? 'No fewer are possible with these pairs.' : `These pairs need at least ${least}.`}`;
}
