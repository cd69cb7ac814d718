import { mm } from '../../core/length/length.ts';

/** What is free along a wall, in units of length. */
interface Gap {
	readonly from: number;
	readonly to: number;
}

/** Gaps beside each other that are alike, with the one figure that is said of them. */
export interface GapRun<Own extends Gap> {
	readonly gaps: readonly Own[];
	/** `237`, or of several `6 gaps 299`, `6 gaps 298–299`. */
	readonly words: string;
	/** The middle of what they lie in, along the wall. */
	readonly middle: number;
}

/** Rounded to the ruler one gap is a millimetre more than the next: they are said as one. */
const alike = mm(1);

/**
 * Joins gaps that follow each other and are alike, so that each length is said once.
 * @param gaps in the order in which they lie on the wall
 * @param wordsOf a length as it is marked there
 */
export function gapRuns<Own extends Gap>(
	gaps: readonly Own[],
	wordsOf: (length: number) => string,
): readonly GapRun<Own>[] {
	const runs: Own[][] = [];
	for (const gap of gaps) {
		const run = runs.at(-1);
		const lengths = [...(run ?? []), gap].map(({ from, to }) => to - from);
		if (run && Math.max(...lengths) - Math.min(...lengths) <= 1.5 * alike) run.push(gap);
		else runs.push([gap]);
	}
	return runs.map((run) => {
		const lengths = run.map(({ from, to }) => to - from);
		const [least, most] = [wordsOf(Math.min(...lengths)), wordsOf(Math.max(...lengths))];
		const figure = least === most ? least : `${least}–${most}`;
		return {
			gaps: run,
			words: run.length === 1 ? figure : `${run.length} gaps ${figure}`,
			middle: (run[0]!.from + run.at(-1)!.to) / 2,
		};
	});
}
