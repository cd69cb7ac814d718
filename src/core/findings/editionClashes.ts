import { asTyped } from '../show/asTyped.ts';
import type { Row } from '../show/row.ts';
import type { Scale } from '../length/formatLength.ts';
import { titleKey } from '../values/titleKey.ts';
import type { RowResult } from './rowResult.ts';
import { findingOf } from './findingOf.ts';

/**
 * The results of a show with `edition-clash` where the same number of one maker's title is there twice. Results without
 * a clash stay the same objects.
 */
export function withEditionClashes(
	rows: readonly Row[],
	results: readonly RowResult[],
	scale: Scale,
): readonly RowResult[] {
	const byNumber = new Map<string, number[]>();
	rows.forEach((row, i) => {
		const key = numberKey(row, results[i]!);
		if (key === undefined) return;
		const places = byNumber.get(key);
		if (places) places.push(i);
		else byNumber.set(key, [i]);
	});
	const clashing = [...byNumber.values()].filter((places) => places.length > 1);
	if (clashing.length === 0) return results;
	const all = [...results];
	for (const places of clashing)
		for (const place of places) all[place] = withClash(all[place]!, rows[place]!, place, places, scale);
	return all;
}

/** One number of one title of one maker; undefined where the row has no title or no number, or no copy of it is made. */
export function numberKey({ typed }: Row, { words: { edition }, copies }: RowResult): string | undefined {
	if (edition?.kind !== 'numbered' || copies === 0) return undefined;
	const title = titleKey(typed);
	return title && JSON.stringify([title, edition.series, edition.number, edition.size]);
}

/** The most other rows that are named one by one. */
const mostNamed = 12;

function withClash(result: RowResult, row: Row, own: number, places: readonly number[], scale: Scale): RowResult {
	const clash = findingOf(
		{
			code: 'edition-clash',
			level: 'stop',
			cells: ['edition'],
			figures: () => ({
				kind: 'again',
				edition: asTyped(row, 'edition').trim(),
				title: row.typed.title!.trim(),
				times: { count: places.length },
				rows: places
					.slice(0, mostNamed + 1)
					.filter((place) => place !== own)
					.slice(0, mostNamed)
					.map((place) => ({ count: place + 1 })),
			}),
		},
		scale,
		() => [],
	);
	// That the number is there twice says more than that the row asks for copies of it: one finding a code.
	const others = result.findings.filter(({ code, level }) => code !== clash.code || level === 'stop');
	return { ...result, findings: [clash, ...others], isStopped: true };
}
