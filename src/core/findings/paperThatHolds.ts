import { inches } from '../length/length.ts';
import { paperSizes } from '../length/paperSizes.ts';
import type { Size } from '../length/size.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import type { Candidate, RowContext } from './found.ts';
import { heldBy } from './heldBy.ts';

/** A paper by its size; a name that says more than the size is said too. */
interface Paper extends Size {
	readonly name?: string;
}

/** The papers that printers hold, upright. */
const metricPapers: readonly Paper[] = [...paperSizes.filter(({ name }) => /^A\d/.test(name))];
const inchPapers: readonly Paper[] = [
	{ name: 'Letter', width: inches(8.5), height: inches(11) },
	{ width: inches(11), height: inches(17) },
	{ width: inches(13), height: inches(19) },
	{ width: inches(17), height: inches(22) },
];

/** The smallest usual paper that the picture is on and the mount holds on every side. */
export function paperThatHolds(context: RowContext): Candidate[] {
	const { pictureWidth, pictureHeight, windowWidth, windowHeight, overlapTop, overlapBottom } = context.solution.solved;
	if (!pictureWidth || !pictureHeight || !windowWidth || !windowHeight) return [];
	const { settings } = context;
	const under = 2 * heldBy(settings.unit);
	const smaller = innerWindowIsSmaller(context.read.cells);
	const lower = Math.max(0, -2 * (overlapBottom ?? 0), -2 * (overlapTop ?? 0));
	const width = Math.max(pictureWidth, windowWidth - smaller + under);
	const height = Math.max(pictureHeight, windowHeight - smaller + under, pictureHeight + lower + under);
	const [short, long] = [Math.min(width, height), Math.max(width, height)];
	const holds = (settings.unit === 'in' ? inchPapers : metricPapers)
		.filter((paper) => paper.width >= short && paper.height >= long)
		.sort((a, b) => a.width * a.height - b.width * b.height)[0];
	if (!holds) return [];
	const [across, down] = width > height ? [holds.height, holds.width] : [holds.width, holds.height];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [
		{ offer: { kind: 'print on', paper: holds.name, size: { width: across, height: down } }, change: { paper: typed } },
	];
}
