import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { isAccepted } from './accepted.ts';
import { withEditionClashes } from './editionClashes.ts';
import { withHanging } from './onWalls.ts';
import type { RowResult } from './rowResult.ts';
import { withTooFewFrames } from './tooFewFrames.ts';

/**
 * The results of a show with what only shows between its rows: numbers that are there twice, frames that are
 * too few, places on the walls.
 */
export function withFindingsAcross(
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
): readonly RowResult[] {
	const numbered = withEditionClashes(rows, results, settings);
	const framed = withHanging(rows, withTooFewFrames(rows, numbered, settings), settings);
	if (framed === results) return results;
	return framed.map((result, place) => (result === results[place] ? result : acceptedApart(result, rows[place]!)));
}

/** What was accepted of the findings that came to a row from the others. */
function acceptedApart(result: RowResult, row: Row): RowResult {
	const accepted = result.findings.filter((finding) => isAccepted(finding, row));
	if (accepted.length === 0) return result;
	return {
		...result,
		findings: result.findings.filter((finding) => !accepted.includes(finding)),
		accepted: [...result.accepted, ...accepted],
	};
}
