import type { ColumnName } from '../show/columns.ts';
import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import { clear, clearEach, columnOf } from './candidates.ts';
import { sizeText } from './sizeText.ts';

/**
 * `needs-size`: something stays open (`stop`); or neither the shape, both sides of the picture nor both of the window
 * are typed, so that the size is what the show's mount leaves (`look`).
 */
export const needsSize: Finder = (context) => {
	const { solution, read } = context;
	const { cells } = read;
	const open = axes.filter(({ axis }) => solution[axis] === 'open');
	if (open.length > 0) {
		const isAlone = cells.mount.kind === 'none';
		const missing = open.map(({ axis }) => `picture ${axis}`).join(' and ');
		const otherwise = isAlone
			? 'or one of them and the shape'
			: cells.mount.kind === 'fit'
				? cells.shape
					? 'the window, or the mount'
					: 'or the shape with one of them, the window, or the mount'
				: 'or the window';
		return [
			{
				code: 'needs-size',
				level: 'stop',
				cells: open.flatMap(({ mount, window, picture }) => (isAlone ? [picture] : [mount, window, picture])),
				message: () =>
					`The ${open.length > 1 ? 'size' : open[0]!.axis} cannot be worked out yet: type ${missing}, ${otherwise}.`,
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
	if (cells.shape || hasPicture || hasWindow || cells.mount.kind === 'none') return [];
	const { pictureWidth, pictureHeight } = solution.solved;
	const blank = axes.filter(({ picture }) => cells[picture] === undefined).map(({ picture }) => picture);
	/** What the mount leaves, of what is not typed. */
	const leaves = () => {
		if (!pictureWidth || !pictureHeight) return '';
		if (blank.length > 1) return `: ${sizeText(context, pictureWidth, pictureHeight)} is what the mount leaves`;
		const left = solution.solved[blank[0] ?? 'pictureWidth'];
		return left === undefined ? '' : `: a ${columnOf(blank[0]!)} of ${context.say(left)} is what the mount leaves`;
	};
	return [
		{
			code: 'needs-size',
			level: 'look',
			cells: blank,
			message: () =>
				`No shape is typed, nor both sides of the picture or of the window${leaves()}. Type ${listOf(blank.map(columnOf))}, or the shape.`,
		},
	];
};

/** The show's mount by its sides, as it lies: then it counts as typed, and a shape gives way to it. */
function nameTheShows(context: RowContext): Candidate {
	const { width, height } = context.settings.mountSize;
	return {
		label: () => `Use the show’s mount, ${sizeText(context, width, height)}`,
		change: { mount: `${context.text(width)} x ${context.text(height)}` },
	};
}

const listOf = (columns: readonly ColumnName[]) => columns.join(' and ');
