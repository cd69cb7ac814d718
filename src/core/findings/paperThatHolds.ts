import { inches } from '../length/length.ts';
import { paperSizes } from '../length/paperSizes.ts';
import type { Size } from '../length/size.ts';
import { innerWindowIsSmaller } from '../row/cover.ts';
import type { CellTexts } from '../show/row.ts';
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

/** The most papers of a list that are tried: each is worked out. */
const mostTried = 6;

/**
 * Papers that the picture is on and the mount holds on every side, the smallest first: those of the show's list, else the
 * smallest usual one.
 * @param wanted the picture that is to be printed; undefined: as it is
 */
export function paperThatHolds(context: RowContext, wanted?: Size): Candidate[] {
	const { windowWidth, windowHeight, overlapTop, overlapBottom, ...solved } = context.solution.solved;
	const [pictureWidth, pictureHeight] = wanted
		? [wanted.width, wanted.height]
		: [solved.pictureWidth, solved.pictureHeight];
	if (!pictureWidth || !pictureHeight) return [];
	const { settings } = context;
	const under = 2 * heldBy(settings.unit);
	const smaller = innerWindowIsSmaller(context.read.cells);
	const lower = Math.max(0, -2 * (overlapBottom ?? 0), -2 * (overlapTop ?? 0));
	const isWindowed = windowWidth !== undefined && windowHeight !== undefined && !wanted;
	const width = isWindowed ? Math.max(pictureWidth, windowWidth - smaller + under) : pictureWidth;
	const height = isWindowed
		? Math.max(pictureHeight, windowHeight - smaller + under, pictureHeight + lower + under)
		: pictureHeight;
	const [short, long] = [Math.min(width, height), Math.max(width, height)];
	if (settings.papers.length > 0) return listedPapers(context, short, long);
	if (!isWindowed && !wanted && !context.read.cells.isFloat) return [];
	const holds = (settings.unit === 'in' ? inchPapers : metricPapers)
		.filter((paper) => paper.width >= short && paper.height >= long)
		.sort((a, b) => a.width * a.height - b.width * b.height)[0];
	if (!holds) return [];
	const [across, down] = width > height ? [holds.height, holds.width] : [holds.width, holds.height];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [
		{
			offer: { kind: 'set size', of: 'paper', name: holds.name, size: { width: across, height: down } },
			change: { paper: typed },
		},
	];
}

/** The other papers of the show's list that have room, smallest first; a margin that is typed may stand in the way of one. */
function listedPapers({ settings, row, read }: RowContext, short: number, long: number): Candidate[] {
	const margins: CellTexts = { 'margin left': '', 'margin top': '' };
	const isMarginTyped = Object.keys(margins).some((column) => row.typed[column as 'margin left'] !== undefined);
	return settings.papers
		.filter(({ name, width, height, roll, margin }) => {
			if (name === read.cells.paper?.listed) return false;
			if (height === undefined) return width - 2 * margin >= short && (roll ?? 0) - 2 * margin >= long;
			return Math.min(width, height) >= short && Math.max(width, height) >= long;
		})
		.sort((a, b) => a.width * (a.height ?? a.roll ?? 0) - b.width * (b.height ?? b.roll ?? 0))
		.slice(0, mostTried)
		.flatMap(({ name, width, height }) => {
			const offer = { kind: 'set name', column: 'paper', name, size: { width, height } } as const;
			return [
				{ offer, change: { paper: name } },
				...(isMarginTyped ? [{ offer, change: { paper: name, ...margins } }] : []),
			];
		});
}
