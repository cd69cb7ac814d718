import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { columnOf } from '../row/columnOfSize.ts';
import { clear, clearEach } from './candidates.ts';

/**
 * `needs-size`: something stays open (`stop`); or neither the shape, both sides of the picture nor both of the window
 * are typed, so that the size is what the show's mount leaves (`look`).
 */
export const needsSize: Finder = (context) => {
	const { solution, read, hasMount } = context;
	const { cells } = read;
	const open = axes.filter(({ axis }) => solution[axis] === 'open');
	if (open.length > 0) {
		const otherwise = !hasMount
			? 'shape'
			: cells.mount.kind === 'fit'
				? cells.shape
					? 'window or mount'
					: 'any'
				: 'window';
		return [
			{
				code: 'needs-size',
				level: 'stop',
				cells: open.flatMap(({ mount, window, picture }) => (hasMount ? [mount, window, picture] : [picture])),
				figures: () => ({ kind: 'open', open: open.map(({ axis }) => axis), or: otherwise }),
				candidates: () =>
					cells.mount.kind === 'fit'
						? [clear('mount')]
						: [
								nameTheShows(context),
								...clearEach(context, [...open.flatMap(({ borders }) => borders.map(columnOf)), 'shape']),
							],
			},
		];
	}
	const hasPicture = cells.pictureWidth !== undefined && cells.pictureHeight !== undefined;
	const hasWindow = cells.windowWidth !== undefined && cells.windowHeight !== undefined;
	if (cells.shape || hasPicture || hasWindow || !hasMount) return [];
	const { pictureWidth, pictureHeight } = solution.solved;
	const blank = axes.filter(({ picture }) => cells[picture] === undefined).map(({ picture }) => picture);
	/** What the mount leaves, of what is not typed. */
	const leaves = () => {
		if (!pictureWidth || !pictureHeight) return {};
		if (blank.length > 1) return { size: { width: pictureWidth, height: pictureHeight } };
		return { side: solution.solved[blank[0] ?? 'pictureWidth'] };
	};
	return [
		{
			code: 'needs-size',
			level: 'look',
			cells: blank,
			figures: () => ({ kind: 'left by the mount', ...leaves(), blank: { columns: blank.map(columnOf) } }),
		},
	];
};

/** The show's mount by its sides, as it lies: then it counts as typed, and a shape gives way to it. */
function nameTheShows(context: RowContext): Candidate {
	const { width, height } = context.settings.mountSize;
	return {
		offer: { kind: 'use the show’s mount', size: { width, height } },
		change: { mount: `${context.text(width)} x ${context.text(height)}` },
	};
}
