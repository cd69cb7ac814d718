import type { ColumnName } from '../../show/columns.ts';
import { shownText } from '../../values/shownText.ts';
import { listed } from '../../values/listed.ts';
import type { Sides } from '../measure.ts';
import type { FiguresOfOffers } from '../offers.ts';
import type { Say } from './say.ts';

/** What stands over a column on the screen, where that is another word. */
const headOf = (column: ColumnName) => (column === 'signed on' ? 'signed where' : column);

/** The label of each mend: what the tap types into which cell, in a few words; a bare figure is in the show’s unit, as in a cell. */
export const labels: {
	readonly [Kind in keyof FiguresOfOffers]: (offer: FiguresOfOffers[Kind], say: Say) => string;
} = {
	// A cell that is cleared is worked out: what comes of it says more than that it was cleared.
	clear: ({ columns, becomes, window }, say) => {
		const cells = columns.map(headOf).join(' and ');
		if (becomes !== undefined) return `Set ${cells} to ${say.figure(becomes)}`;
		if (cells === 'paper') return 'Clear paper and don’t check it';
		return `Clear ${cells}${window === undefined ? '' : `, window ${sidesIn(window, say)}`}`;
	},
	'cut to fit': ({ mount }, say) => `Set mount to fit${mount ? `, ${sidesIn(mount, say)}` : ''}`,
	'mount it in a window': () => 'Mount it in a window',
	'give a mount': () => 'Set mount to the show’s',
	set: ({ column, to }, { figure }) => `Set ${column} to ${figure(to)}`,
	'set size': ({ of, name, size }, say) => `Set ${of} to ${name === undefined ? '' : `${name}, `}${sidesIn(size, say)}`,
	'set name': ({ column, name, size }, say) =>
		`Set ${column} to “${shownText(name)}”${size === undefined ? '' : `, ${size.height === undefined ? `${say.figure(size.width)} wide` : sidesIn({ ...size, height: size.height }, say)}`}`,
	'set text': ({ column, text }) => `Set ${headOf(column)} to ${text}`,
	swap: ({ of }) => `Swap ${of} width and height`,
	'set the gap': ({ wall, gap }, { figure }) => `Set the gap on “${shownText(wall)}” to ${figure(gap)}`,
	'read in a unit': ({ lengths }, say) => `Set to ${listed(lengths.map((sides) => sidesInARow(sides, say)))}`,
};

/** "65, 65, 70 mm", "500 × 400 mm": the unit once, at the end. */
export const lengthsInARow = (lengths: readonly (readonly number[])[], say: Say): string =>
	`${lengths.map((sides) => sidesInARow(sides, say)).join(', ')} ${say.unit}`;

const sidesInARow = (sides: readonly number[], { figure }: Say) => sides.map(figure).join(' × ');

const sidesIn = ({ width, height }: Sides, { figure }: Say) => `${figure(width)} × ${figure(height)}`;
