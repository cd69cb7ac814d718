import { parseEdition } from '../row/edition.ts';
import type { RowResult } from '../row/rowResult.ts';
import type { Row } from '../show/row.ts';
import type { Finding } from './finding.ts';

/**
 * The results of a show with `edition-clash` where the same number of one maker's title is there twice. Results without
 * a clash stay the same objects.
 */
export function withEditionClashes(rows: readonly Row[], results: readonly RowResult[]): readonly RowResult[] {
	const byNumber = new Map<string, number[]>();
	rows.forEach((row, i) => {
		const key = numberKey(row);
		if (key !== undefined) byNumber.set(key, [...(byNumber.get(key) ?? []), i]);
	});
	const clashing = [...byNumber.values()].filter((places) => places.length > 1);
	if (clashing.length === 0) return results;
	const all = [...results];
	for (const places of clashing)
		for (const place of places)
			all[place] = withClash(
				all[place]!,
				rows[place]!,
				places.filter((other) => other !== place),
			);
	return all;
}

/** One number of one title of one maker; undefined where the row has no title or no number. */
function numberKey({ typed }: Row): string | undefined {
	if (typed.edition === undefined) return undefined;
	const edition = parseEdition(typed.edition);
	const title = plain(typed.title);
	if (edition?.kind !== 'numbered' || title === '') return undefined;
	return JSON.stringify([plain(typed.maker), title, edition.series, edition.number, edition.size]);
}

const plain = (text = '') => text.trim().toLowerCase().replace(/\s+/g, ' ');

function withClash(result: RowResult, { typed }: Row, places: readonly number[]): RowResult {
	const where = places.map((place) => place + 1).join(' and ');
	const times = places.length === 1 ? 'twice' : `${places.length + 1} times`;
	const clash: Finding = {
		code: 'edition-clash',
		level: 'stop',
		cells: ['edition'],
		message: `Edition ${typed.edition?.trim()} of “${typed.title?.trim()}” is there ${times}: also in row${places.length === 1 ? '' : 's'} ${where}.`,
		mends: [],
	};
	// That the number is there twice says more than that the row asks for copies of it: one finding a code.
	const others = result.findings.filter(({ code, level }) => code !== clash.code || level === 'stop');
	return { ...result, findings: [clash, ...others], isStopped: true };
}
