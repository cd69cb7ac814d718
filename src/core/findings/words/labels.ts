import type { ColumnName } from '../../show/columns.ts';
import { shownText } from '../../values/shownText.ts';
import type { FiguresOfOffers } from '../offers.ts';
import type { Say } from './say.ts';
import { slipWords } from './slipWords.ts';

/** What stands over a column on the screen, where that is another word. */
const headOf = (column: ColumnName) => (column === 'signed on' ? 'signed where' : column);

/** The label of each mend: what the tap does to which cell, in a few words. */
export const labels: {
	readonly [Kind in keyof FiguresOfOffers]: (offer: FiguresOfOffers[Kind], say: Say) => string;
} = {
	clear: ({ columns, becomes }, { say }) =>
		`Clear ${columns.map(headOf).join(' and ')}${becomes === undefined ? '' : `: it becomes ${say(becomes)}`}`,
	'cut to fit': ({ mount }, { size }) => `Set mount to fit${mount ? `: ${size(mount)}` : ''}`,
	'mount it in a window': () => 'Clear mounting: it gets a window',
	'give a mount': () => 'Clear mount: it gets the show’s',
	set: ({ column, to }, { say }) => `Set ${column} to ${say(to)}`,
	'set size': ({ of, name, size: sides }, { size }) =>
		`Set ${of} to ${name === undefined ? '' : `${name}, `}${size(sides)}`,
	'set name': ({ column, name }) => `Set ${column} to “${shownText(name)}”`,
	'set text': ({ column, text }) => `Set ${headOf(column)} to ${text}`,
	swap: ({ of }) => `Swap ${of} width and height`,
	'set the gap': ({ wall, gap }, { say }) => `Set the gap on “${shownText(wall)}” to ${say(gap)}`,
	'read in a unit': ({ as, lengths }, say) => `Read as ${slipWords[as]}: ${lengthsInARow(lengths, say)}`,
};

/** "65, 65, 70 mm", "500 × 400 mm": the unit once, at the end. */
export function lengthsInARow(lengths: readonly (readonly number[])[], { figure, unit }: Say): string {
	return `${lengths.map((sides) => sides.map(figure).join(' × ')).join(', ')} ${unit}`;
}
