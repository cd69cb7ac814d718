import { isSame } from '../length/length.ts';
import type { ColumnName } from '../show/columns.ts';
import { clear, clearEach, sizeColumns, typedOf } from './candidates.ts';
import type { Candidate, Finder, RowContext } from './found.ts';
import { sizeText } from './sizeText.ts';

/** `turned`: the picture lies one way and the mount the other. */
export const turned: Finder = (context) => {
	const { mountWidth, mountHeight, pictureWidth, pictureHeight } = context.solution.solved;
	if (!mountWidth || !mountHeight || !pictureWidth || !pictureHeight) return [];
	if (isSame(mountWidth, mountHeight) || isSame(pictureWidth, pictureHeight)) return [];
	if (mountWidth > mountHeight === pictureWidth > pictureHeight) return [];
	const [picture, mount] = pictureWidth > pictureHeight ? ['wide', 'tall'] : ['tall', 'wide'];
	return [
		{
			code: 'turned',
			level: 'look',
			cells: ['mountWidth', 'mountHeight', 'pictureWidth', 'pictureHeight'],
			message: () =>
				`The picture ${sizeText(context, pictureWidth, pictureHeight)} lies ${picture}, its mount ${sizeText(context, mountWidth, mountHeight)} ${mount}.`,
			candidates: () => [
				...swapped(context, 'mount width', 'mount height', 'Turn the mount'),
				...swapped(context, 'picture width', 'picture height', 'Turn the picture'),
				...clearEach(context, sizeColumns),
				clear('mount width', 'mount height'),
			],
		},
	];
};

/** Two typed cells with their texts changed over. */
function swapped(context: RowContext, width: ColumnName, height: ColumnName, label: string): Candidate[] {
	if (typedOf(context, [width, height]).length < 2) return [];
	const { typed } = context.row;
	return [{ label: () => label, change: { [width]: typed[height]!, [height]: typed[width]! } }];
}
