import { isKnown } from '../row/equations.ts';
import { greatestWorkedOut } from '../row/solveRow.ts';
import { clearEach, columnOf, coverColumns, cutToSuit, typedOf } from './candidates.ts';
import { axes, type AxisKeys, type Finder, type RowContext } from './found.ts';

/** `does-not-fit`: a size or border of an axis comes out at zero or less. */
export const doesNotFit: Finder = (context) =>
	axes
		.filter(({ axis }) => context.solution[axis] === 'does not fit')
		.map((keys) => ({
			code: 'does-not-fit',
			level: 'stop',
			cells: [keys.mount, ...keys.borders, keys.window, keys.picture],
			message: () => messageOf(context, keys),
			candidates: () => {
				const columns = [...keys.borders, keys.window, keys.mount, keys.picture].map(columnOf);
				const clears = clearEach(context, [...columns, 'mount', 'shape', 'bottom weight', ...coverColumns]);
				return typedOf(context, ['mount']).length > 0 ? clears : [...clears, cutToSuit];
			},
		}));

function messageOf(context: RowContext, keys: AxisKeys): string {
	const { exact } = context.solution;
	const { figure, say } = context;
	const [mount, window, picture] = [exact[keys.mount], exact[keys.window], exact[keys.picture]];
	const borders = keys.axis === 'width' ? [exact.side, exact.side] : [exact.top, exact.bottom];
	const [first, last] = borders as [number, number];
	if ([mount, window, picture, first, last].some((value) => value > greatestWorkedOut))
		return `The ${keys.axis} comes out at more than ${say(greatestWorkedOut)}.`;
	const typed = context.read.cells[keys.picture];
	if (typed !== undefined && exact[keys.window] <= 0)
		return `The picture’s ${keys.axis} ${say(typed)} is all covered: the overlap takes ${figure(typed - exact[keys.window])} of it.`;
	if (isKnown(mount) && isKnown(window) && window >= mount)
		return `The window’s ${keys.axis} ${figure(window)} is ${window - mount < 1 ? 'as large as' : `${figure(window - mount)} larger than`} the mount’s ${say(mount)}.`;
	if (isKnown(window) && isKnown(mount) && window <= 0)
		return `Borders of ${figure(first)} and ${figure(last)} leave ${window === 0 ? 'nothing' : figure(window)} of the mount’s ${keys.axis} ${say(mount)} for the window.`;
	if (isKnown(first) && isKnown(last) && (first <= 0 || last <= 0)) {
		const other = first <= 0 ? last : first;
		return `A border of ${figure(other)} and the window’s ${figure(window)} make ${figure(other + window)} of the mount’s ${keys.axis} ${say(mount)}: ${figure(Math.min(first, last))} is left for the other border.`;
	}
	if (isKnown(picture) && picture <= 0)
		return `The picture’s ${keys.axis} comes out at ${say(picture)}: the window’s ${figure(window)} is all reveal.`;
	if (isKnown(window) && window <= 0) return `The window’s ${keys.axis} comes out at ${say(window)}.`;
	return `On the ruler of ${say(context.settings.ruler)}, a border or the window comes out at nothing in the mount’s ${keys.axis} ${say(mount)}.`;
}
