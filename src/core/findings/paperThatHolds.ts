import { paperSizes } from '../length/paperSizes.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import type { NamedSize } from '../show/settings.ts';
import type { Candidate, RowContext } from './found.ts';
import { heldBy } from './heldBy.ts';
import { sizeText } from './sizeText.ts';

/** The smallest paper of a known name, ISO's in a metric show and ANSI's in an inch one, that the picture is on and the mount holds on every side. */
export function paperThatHolds(context: RowContext): Candidate[] {
	const { pictureWidth, pictureHeight, windowWidth, windowHeight, overlapTop, overlapBottom } = context.solution.solved;
	if (!pictureWidth || !pictureHeight || !windowWidth || !windowHeight) return [];
	const held = heldBy(context.settings.unit);
	const smaller = innerWindowIsSmaller(context.read.cells);
	const lower = Math.max(0, -2 * (overlapBottom ?? 0), -2 * (overlapTop ?? 0));
	const width = Math.max(pictureWidth, windowWidth - smaller + 2 * held);
	const height = Math.max(pictureHeight, windowHeight - smaller + 2 * held, pictureHeight + lower + 2 * held);
	const [short, long] = [Math.min(width, height), Math.max(width, height)];
	const isHabit = ({ name }: NamedSize) => name.startsWith('ANSI') === (context.settings.unit === 'in');
	const holds = paperSizes
		.filter((paper) => paper.width >= short && paper.height >= long)
		.sort((a, b) => Number(isHabit(b)) - Number(isHabit(a)) || a.width * a.height - b.width * b.height)[0];
	if (!holds) return [];
	const [across, down] = width > height ? [holds.height, holds.width] : [holds.width, holds.height];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [{ label: () => `Print on ${holds.name}, ${sizeText(context, across, down)}`, change: { paper: typed } }];
}
