import { shownText } from '../../values/shownText.ts';
import type { FiguresOfOffers } from '../offers.ts';
import type { Say } from './say.ts';
import { slipWords } from './slipWords.ts';

/** The label of each mend: what the tap does, in a few words. */
export const labels: {
	readonly [Kind in keyof FiguresOfOffers]: (offer: FiguresOfOffers[Kind], say: Say) => string;
} = {
	clear: ({ columns, becomes }, { say }) =>
		`Clear ${columns.join(' and ')}${becomes === undefined ? '' : `: it becomes ${say(becomes)}`}`,
	'cut to fit': ({ mount }, { size }) => `Cut the mount to fit${mount ? `: ${size(mount)}` : ''}`,
	'make the mount': (offer, { size }) => `Make the mount ${size(offer.size)}`,
	'use the show’s mount': (offer, { size }) => `Use the show’s mount, ${size(offer.size)}`,
	'make a side': ({ column, length }, { say }) => `Make the ${column} ${say(length)}`,
	'print at': (offer, { size }) => `Print it at ${size(offer.size)}`,
	'turn over': ({ what }) => `Turn the ${what}`,
	'set the overlap': ({ overlap }, { say }) => `Set the overlap to ${say(overlap)}`,
	cover: ({ overlap }, { say }) => `Cover the picture by ${say(overlap)} a side`,
	'ask for a reveal': ({ reveal }, { say }) => `Set a reveal of ${say(reveal)}`,
	'leave a signing space': ({ space }, { say }) => `Set a signing space of ${say(space)}`,
	'print on': ({ paper, size: sides }, { size }) => `Print on ${paper === undefined ? '' : `${paper}, `}${size(sides)}`,
	'use the paper': ({ paper }) => `Print on “${shownText(paper)}”`,
	'move on paper': ({ edge, to }, { say }) => `Move the picture to ${say(to)} from the paper’s ${edge} edge`,
	'mount it in a window': () => 'Mount it behind a window',
	'use the board': ({ board }) => `Use “${shownText(board)}”`,
	'use the frame': ({ frame }) => `Use the frame “${shownText(frame)}”`,
	'use the material': ({ what, name }) => `Use the ${what} “${shownText(name)}”`,
	'put in a spacer': ({ spacer }, { say }) => `Add a spacer of ${say(spacer)}`,
	'no glazing': () => 'Leave the glazing out',
	'give a mount': () => 'Add a mount',
	'one copy': () => 'Make it one copy',
	'sign the print': ({ on }) => (on === 'back' ? 'Sign the back of the print' : 'Sign the picture'),
	'is signed': ({ on }) => `It is signed on the ${on}`,
	'move to the wall': ({ wall }) => `Move it to “${shownText(wall)}”`,
	'set the gap': ({ wall, gap }, { say }) => `Set the gap on “${shownText(wall)}” to ${say(gap)}`,
	'read as text': ({ text }) => `Read as ${text}`,
	'read in a unit': ({ as, lengths }, say) => `Read as ${slipWords[as]}: ${lengthsInARow(lengths, say)}`,
};

/** "65, 65, 70 mm", "500 × 400 mm": the unit once, at the end. */
export function lengthsInARow(lengths: readonly (readonly number[])[], { figure, unit }: Say): string {
	return `${lengths.map((sides) => sides.map(figure).join(' × ')).join(', ')} ${unit}`;
}
