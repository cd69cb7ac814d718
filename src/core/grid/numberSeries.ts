/**
 * How catalogue numbers go on: 3, 4 is followed by 5, 6; 10, 20 by 30; `A-08` by `A-09`. From one number it goes on by
 * one. What stands before the figures has to be the same in all.
 * @param numbers those that there are, at least one; the last two say by how much it goes on
 * @returns the next ones; undefined where they do not end in figures, or would fall below zero
 */
export function numberSeries(numbers: readonly string[], count: number): readonly string[] | undefined {
	const read = numbers.slice(-2).map((text) => /^(.*?)(\d{1,15})$/.exec(text.trim()));
	const last = read.at(-1);
	const former = read.length > 1 ? read[0] : undefined;
	if (!last || (read.length > 1 && former?.[1] !== last[1])) return undefined;
	const [, before, figures] = last as unknown as readonly [string, string, string];
	const step = former ? Number(figures) - Number(former[2]) : 1;
	const next = Array.from({ length: count }, (_, place) => Number(figures) + step * (place + 1));
	if (next.some((number) => number < 0)) return undefined;
	const width = figures.startsWith('0') ? figures.length : 1;
	return next.map((number) => before + `${number}`.padStart(width, '0'));
}
