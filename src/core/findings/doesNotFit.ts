import { isKnown } from '../row/equations.ts';
import { greatestWorkedOut } from '../row/solveRow.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clearEach, coverColumns, cutToSuit, typedOf } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
import { axes, type AxisKeys, type Finder, type RowContext } from './found.ts';

/** `does-not-fit`: a size or border of an axis comes out at zero or less. */
export const doesNotFit: Finder = (context) =>
	axes
		.filter(({ axis }) => context.solution[axis] === 'does not fit')
		.map((keys) => ({
			code: 'does-not-fit',
			level: 'stop',
			cells: [keys.mount, ...keys.borders, keys.window, keys.picture],
			figures: () => figuresOf(context, keys),
			candidates: () => {
				const columns = [...keys.borders, keys.window, keys.mount, keys.picture].map(columnOf);
				const clears = clearEach(context, [...columns, 'mount', 'shape', 'bottom weight', ...coverColumns]);
				return typedOf(context, ['mount']).length > 0 ? clears : [...clears, cutToSuit];
			},
		}));

function figuresOf({ solution: { exact }, read, settings }: RowContext, keys: AxisKeys): FiguresByCode['does-not-fit'] {
	const { axis } = keys;
	const of = read.cells.isFloat ? 'paper' : 'window';
	const [mount, window, picture] = [exact[keys.mount], exact[keys.window], exact[keys.picture]];
	const [first, last] = axis === 'width' ? [exact.side, exact.side] : [exact.top, exact.bottom];
	if ([mount, window, picture, first, last].some((value) => value > greatestWorkedOut))
		return { kind: 'too large', axis, most: greatestWorkedOut };
	const typed = read.cells[keys.picture];
	if (typed !== undefined && window <= 0) return { kind: 'all covered', axis, picture: typed, covered: typed - window };
	if (isKnown(mount) && isKnown(window) && window >= mount)
		return { kind: 'window too large', axis, of, window, larger: window - mount < 1 ? 0 : window - mount, mount };
	if (isKnown(window) && isKnown(mount) && window <= 0)
		return { kind: 'no window', axis, of, borders: [first, last], left: window, mount };
	if (isKnown(first) && isKnown(last) && (first <= 0 || last <= 0)) {
		const border = first <= 0 ? last : first;
		return { kind: 'no border', axis, of, border, window, both: border + window, mount, left: Math.min(first, last) };
	}
	if (isKnown(picture) && picture <= 0) return { kind: 'all reveal', axis, picture, window };
	if (isKnown(window) && window <= 0) return { kind: 'window below nothing', axis, window };
	// What is more than a graduation or two is not lost to the ruler: no border of the other axis has room.
	if (Math.min(...[window, first, last].filter(isKnown)) > 2 * settings.ruler)
		return { kind: 'other axis', axis, other: axis === 'width' ? 'height' : 'width' };
	return { kind: 'ruler', axis, ruler: settings.ruler, mount };
}
