/** What is measured of ours beside another: milliseconds, but for the memory. */
export const measures = [
	'first paint',
	'work of a key',
	'key to painted row',
	'default changed to painted',
	'p95 frame, scrolling',
	'memory, MB',
	'offline cold start to typing',
] as const;
export type Measure = (typeof measures)[number];

/** What ours may be at most: a share of the other's figure, a figure of its own, or both. */
export interface Goal {
	readonly share?: number;
	readonly most?: number;
}

/** What was measured, in a show of so many rows; the other is the library's grid, or for the cold start a page of text. */
export interface Measured {
	readonly measure: Measure;
	readonly rows: number;
	readonly ours: number;
	readonly other: number;
}

/** The goals, by how many rows there are; undefined where none is set. */
const goals: Readonly<Record<Measure, (rows: number) => Goal | undefined>> = {
	'first paint': (rows) => ({ share: rows >= 10_000 ? 0.5 : 1 }),
	'work of a key': (rows) => ({ share: 0.5, ...(rows <= 1000 && { most: 16 }) }),
	'key to painted row': () => ({ share: 0.7 }),
	'default changed to painted': () => ({ share: 0.4 }),
	'p95 frame, scrolling': (rows) => (rows >= 10_000 ? { most: 34 } : { share: 1 }),
	'memory, MB': () => ({ share: 1 }),
	'offline cold start to typing': () => ({ share: 1.5 }),
};

export const median = (values: readonly number[]): number => shareOf(values, 0.5);

/** The figure that so large a share of all does not pass: of 0.95, all but five in a hundred. */
export const shareOf = (values: readonly number[], share: number): number => {
	if (values.length === 0) throw new RangeError('nothing was measured');
	return [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))]!;
};

/** Whether a figure is as good as its goal, in a word; blank where no goal is set. */
export function reached({ measure, rows, ours, other }: Measured): 'yes' | 'no' | '' {
	const goal = goals[measure](rows);
	if (goal === undefined) return '';
	return ours <= other * (goal.share ?? Infinity) && ours <= (goal.most ?? Infinity) ? 'yes' : 'no';
}

/** One table of all that was measured, a line each, in the order of the measures. */
export function tableOf(measured: readonly Measured[]): readonly string[] {
	const sorted = measured.toSorted(
		(a, b) => measures.indexOf(a.measure) - measures.indexOf(b.measure) || a.rows - b.rows,
	);
	const lines = sorted.map((each) => [
		each.measure,
		each.rows.toLocaleString('en-GB'),
		each.ours.toFixed(1),
		each.other.toFixed(1),
		(each.ours / each.other).toFixed(2),
		goalWords(goals[each.measure](each.rows)),
		reached(each),
	]);
	const cells = [['measure', 'rows', 'ours', 'other', 'ratio', 'goal', 'reached'], ...lines];
	const widths = cells[0]!.map((_, place) => Math.max(...cells.map((line) => line[place]!.length)));
	return cells.map((line) =>
		line
			.map((cell, place) => (place >= 1 && place <= 4 ? cell.padStart(widths[place]!) : cell.padEnd(widths[place]!)))
			.join('  ')
			.trimEnd(),
	);
}

const goalWords = ({ share, most }: Goal = {}): string =>
	[share === undefined ? [] : `${share.toFixed(2)} ×`, most === undefined ? [] : `${most} ms`]
		.flat()
		.map((words) => `≤ ${words}`)
		.join(', ');
