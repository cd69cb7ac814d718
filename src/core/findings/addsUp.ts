import { type Length, length, minus, times, zero } from '../length/length.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import { isKnown } from '../row/equations.ts';
import type { ColumnName } from '../show/columns.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clearEach, coverColumns } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
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
			figures: () => figuresOf(context, keys),
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

function figuresOf(context: RowContext, keys: AxisKeys): FiguresByCode['adds-up'] {
	const { read, solution } = context;
	const { cells } = read;
	const { axis } = keys;
	const mount = cells[keys.mount];
	const sum = sumOf(context, keys);
	if (cells.mount.kind === 'size' && mount !== undefined && isKnown(solution.typed[keys.mount]) && !sum)
		return { kind: 'mount cell', axis, mount, named: cells.mount.size[axis] };
	const window = cells[keys.window];
	const picture = cells[keys.picture];
	const { cover } = solution;
	if (window !== undefined && picture !== undefined && !cover[axis].isStated) {
		const asked = length(picture + cover[axis].added);
		if (Math.abs(asked - window) > 1)
			return {
				kind: 'cover',
				axis,
				picture,
				asked,
				...(cover.reveal === undefined ? { overlap: cover.overlap } : { reveal: cover.reveal }),
				signingSpace: axis === 'height' && cover.signingSpace > 0 ? cover.signingSpace : undefined,
				window,
				more: minus(window, asked),
			};
	}
	return sum ? { kind: 'sum', ...sum, more: minus(sum.total, sum.mount) } : { kind: 'all typed', axis };
}

/** The parts "70 + 310 + 84" and their total, where all of them and the mount itself are typed and do not agree. */
function sumOf({ read, solution }: RowContext, keys: AxisKeys) {
	const { cells } = read;
	const mount = solution.typed[keys.mount];
	const window =
		cells[keys.window] ?? (cells[keys.picture] && length(cells[keys.picture]! + solution.cover[keys.axis].added));
	const borders = keys.axis === 'width' ? [cells.side, cells.side] : [cells.top, cells.bottom];
	if (!isKnown(mount) || window === undefined || borders.some((border) => border === undefined)) return undefined;
	const [first, last] = borders as [Length, Length];
	const total = length(first + window + last);
	return total === mount ? undefined : { parts: [first, window, last], total, mount: length(mount) };
}

/** The overlap that would make the axis true, where only one that the row inherits stands in the way. */
function overlapThatFits(context: RowContext, keys: AxisKeys): Candidate[] {
	const { solution, read, text } = context;
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
	return [{ offer: { kind: 'set', column: 'overlap', to: overlap }, change: { overlap: text(overlap) } }];
}

const bordersOf = ({ read }: RowContext, { axis }: AxisKeys): Length[] =>
	axis === 'width' ? [read.cells.side!, read.cells.side!] : [read.cells.top!, read.cells.bottom!];
