import { axes, type Candidate, type Finder, type RowContext } from './found.ts';
import type { MountCell } from '../row/cells.ts';
import { columnOf } from '../row/columnOfSize.ts';
import type { Settings } from '../settings/settings.ts';
import { clear, clearEach } from './candidates.ts';

/**
 * `needs-size`: something stays open (`stop`); or neither the shape, both sides of the picture nor both of the window
 * are typed, so that the size is what the show's mount leaves (`look`).
 */
export const needsSize: Finder = (context) => {
	const { solution, read, hasMount, settings } = context;
	const { cells } = read;
	const isFrameless = isFrameMissing(cells.mount, settings);
	const isFree = cells.mount.kind === 'fit' || (cells.mount.kind === 'show' && settings.mountSize === undefined);
	const open = axes.filter(({ axis }) => solution[axis] === 'open');
	if (open.length > 0) {
		const otherwise =
			!hasMount || (cells.isFloat && cells.paper)
				? 'shape'
				: isFree
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
								...(isFrameless ? framesWithSizes(context) : []),
								...nameTheShows(context),
								...clearEach(context, [...open.flatMap(({ borders }) => borders.map(columnOf)), 'shape']),
							],
			},
		];
	}
	if (isFrameless)
		return [
			{
				code: 'needs-size',
				level: 'look',
				cells: ['mount'],
				figures: () => ({ kind: 'no frame', mount: settings.mountSize }),
				candidates: () => [...framesWithSizes(context), ...clearEach(context, ['mount'])],
			},
		];
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

/** Whether the mount is to be what its frame takes, and no frame with a size is named. */
const isFrameMissing = (mount: MountCell, { mountSize }: Settings): boolean =>
	mount.kind === 'show' && (mount.lacksFrame === true || mountSize === undefined);

/** Each frame of the list that has a size. */
const framesWithSizes = ({ settings }: RowContext): Candidate[] =>
	settings.frames
		.filter(({ size }) => size)
		.map(({ name }) => ({ offer: { kind: 'set name', column: 'frame', name }, change: { frame: name } }));

/** The show's mount by its sides, as it lies: then it counts as typed, and a shape gives way to it. */
function nameTheShows({ settings: { mountSize }, text }: RowContext): Candidate[] {
	if (!mountSize) return [];
	return [
		{
			offer: { kind: 'set size', of: 'mount', name: 'the show’s', size: mountSize },
			change: { mount: `${text(mountSize.width)} x ${text(mountSize.height)}` },
		},
	];
}
