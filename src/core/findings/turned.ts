import { isSame } from '../length/length.ts';
import { clear, clearEach, sizeColumns, typedOf } from './candidates.ts';
import type { Candidate, Finder, RowContext } from './found.ts';

/** `turned`: the picture lies one way and the mount the other. */
export const turned: Finder = (context) => {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = context.solution.solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return [];
	if (isSame(mountWidth, mountHeight) || isSame(pictureWidth, pictureHeight)) return [];
	if (mountWidth > mountHeight === pictureWidth > pictureHeight) return [];
	return [
		{
			code: 'turned',
			level: 'look',
			cells: ['mountWidth', 'mountHeight', 'pictureWidth', 'pictureHeight'],
			figures: () => ({
				picture: { width: pictureWidth, height: pictureHeight },
				mount: { width: mountWidth, height: mountHeight },
			}),
			candidates: () => [
				...swapped(context, 'mount'),
				...swapped(context, 'picture'),
				...clearEach(context, sizeColumns),
				clear('mount width', 'mount height'),
			],
		},
	];
};

/** Two typed cells with their texts changed over. */
function swapped(context: RowContext, what: 'mount' | 'picture'): Candidate[] {
	const [width, height] = [`${what} width`, `${what} height`] as const;
	if (typedOf(context, [width, height]).length < 2) return [];
	const { typed } = context.row;
	return [{ offer: { kind: 'swap', of: what }, change: { [width]: typed[height]!, [height]: typed[width]! } }];
}
