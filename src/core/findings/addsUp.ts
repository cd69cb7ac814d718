import { type Length, length, minus, times, zero } from '../length/length.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import { isKnown } from '../row/equations.ts';
import type { ColumnName } from '../show/columns.ts';
import { clearEach, columnOf, coverColumns } from './candidates.ts';
import { axes, type AxisKeys, type Candidate, type Finder, type RowContext } from './found.ts';

/** `adds-up`: the typed cells of an axis cannot all be true. Says the sum and the excess, and which cell to clear. */
export const addsUp: Finder = (context) =>
	axes
		.filter(({ axis }) => context.solution[axis] === 'conflict')
		.map((keys) => ({
			code: 'adds-up',
			level: 'stop',
			cells: [keys.mount, ...keys.borders, keys.window, keys.picture].filter((key) =>
				isKnown(context.solution.typed[key]),
			),
			message: () => messageOf(context, keys),
			candidates: () => [...clearEach(context, columnsOf(keys)), ...overlapThatFits(context, keys)],
		}));

const columnsOf = (keys: AxisKeys): ColumnName[] => [
	...keys.borders.map(columnOf),
	columnOf(keys.window),
	columnOf(keys.mount),
	'mount',
	columnOf(keys.picture),
	...coverColumns,
];

function messageOf(context: RowContext, keys: AxisKeys): string {
	const { read, solution, figure, say } = context;
	const { cells } = read;
	const mount = cells[keys.mount];
	if (cells.mount.kind === 'size' && mount !== undefined) {
		const named = cells.mount.size[keys.axis];
		if (isKnown(solution.typed[keys.mount]) && !sumOf(context, keys))
			return `The mount ${keys.axis} ${say(mount)} is not a side of the size in the mount cell, ${figure(named)} as it lies.`;
	}
	const window = cells[keys.window];
	const picture = cells[keys.picture];
	if (window !== undefined && picture !== undefined && !solution.cover[keys.axis].isStated) {
		const asked = length(picture + solution.cover[keys.axis].added);
		if (Math.abs(asked - window) > 1)
			return `Picture ${keys.axis} ${figure(picture)} asks for a window of ${figure(asked)} (${coverWords(context, keys)}), but ${say(window)} is typed: ${excess(context, window, asked)}.`;
	}
	const sum = sumOf(context, keys);
	if (sum)
		return `${sum.words} = ${figure(sum.total)}, ${excess(context, sum.total, sum.mount)} the mount’s ${say(sum.mount)}.`;
	return `The typed ${keys.axis}s cannot all be true.`;
}

/** "70 + 310 + 84", where all parts of the mount and the mount itself are typed and do not agree. */
function sumOf({ read, solution, figure }: RowContext, keys: AxisKeys) {
	const { cells } = read;
	const mount = solution.typed[keys.mount];
	const window =
		cells[keys.window] ?? (cells[keys.picture] && length(cells[keys.picture]! + solution.cover[keys.axis].added));
	const borders = keys.axis === 'width' ? [cells.side, cells.side] : [cells.top, cells.bottom];
	if (!isKnown(mount) || window === undefined || borders.some((border) => border === undefined)) return undefined;
	const [first, last] = borders as [Length, Length];
	const total = length(first + window + last);
	return total === mount
		? undefined
		: { words: `${figure(first)} + ${figure(window)} + ${figure(last)}`, total, mount: length(mount) };
}

const excess = ({ figure }: RowContext, is: Length, should: Length) =>
	is > should ? `${figure(minus(is, should))} more than` : `${figure(minus(should, is))} less than`;

function coverWords({ solution, figure, say }: RowContext, { axis }: AxisKeys): string {
	const { reveal, overlap, signingSpace } = solution.cover;
	const sides = reveal === undefined ? `overlap ${figure(overlap)} a side` : `reveal ${figure(reveal)} a side`;
	return axis === 'height' && signingSpace > 0 ? `${sides}, signing space ${say(signingSpace)}` : sides;
}

/** The overlap that would make the axis true, where only one that the row inherits stands in the way. */
function overlapThatFits(context: RowContext, keys: AxisKeys): Candidate[] {
	const { solution, read, text, say } = context;
	const { cells } = read;
	const picture = cells[keys.picture];
	if (!solution.cover.isOverlapInherited || picture === undefined) return [];
	const sum = sumOf(context, keys);
	const window = cells[keys.window] ?? (sum && minus(sum.mount, ...bordersOf(context, keys)));
	if (window === undefined) return [];
	const covered = minus(picture, minus(window, innerWindowIsSmaller(cells)));
	const hasSpace = keys.axis === 'height' && solution.cover.signingSpace > 0;
	const overlap = hasSpace ? length(covered + solution.cover.signingSpace) : length(Math.round(covered / 2));
	if (overlap < zero || (!hasSpace && times(overlap, 2) !== covered)) return [];
	return [{ label: () => `Set the overlap to ${say(overlap)}`, change: { overlap: text(overlap) } }];
}

const bordersOf = ({ read }: RowContext, { axis }: AxisKeys): Length[] =>
	axis === 'width' ? [read.cells.side!, read.cells.side!] : [read.cells.top!, read.cells.bottom!];
