import { isSame, times } from '../length/length.ts';
import { downToRuler, isOnRuler } from '../length/ruler.ts';
import type { SizeKey } from '../row/cells.ts';
import { axes, type AxisKeys, type Candidate, type Finder, type RowContext } from './found.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { bordersIn } from './candidates.ts';

/** `off-ruler`: a worked-out border that the ruler cannot set. */
export const offRuler: Finder = (context) => {
	const { solution, read, settings } = context;
	return axes.flatMap((keys) => {
		const off = keys.borders.filter((key) => {
			const border = solution.solved[key];
			return border !== undefined && read.cells[key] === undefined && !isOnRuler(border, settings.ruler);
		});
		if (off.length === 0) return [];
		return [
			{
				code: 'off-ruler',
				level: 'note',
				cells: off,
				figures: () => ({ borders: bordersIn(solution, off), ruler: settings.ruler }),
				candidates: () => windowOnRuler(context, keys, off),
			},
		];
	});
};

/** The typed window, made so much smaller that the borders come out on the ruler. */
function windowOnRuler(context: RowContext, keys: AxisKeys, off: readonly SizeKey[]): Candidate[] {
	const { solution, read, settings, text } = context;
	const window = read.cells[keys.window];
	const mount = solution.solved[keys.mount];
	if (window === undefined || mount === undefined || !isOnRuler(mount, settings.ruler)) return [];
	const step = off.includes('side') ? times(settings.ruler, 2) : settings.ruler;
	const spareUp = mount - downToRuler(window, settings.ruler);
	const smaller = mount - Math.ceil(spareUp / step) * step;
	if (smaller <= 0 || isSame(smaller, window)) return [];
	const column = columnOf(keys.window);
	return [{ offer: { kind: 'set', column, to: smaller }, change: { [column]: text(smaller) } }];
}
