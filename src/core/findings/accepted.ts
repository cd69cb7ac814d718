import { formatExact } from '../length/formatLength.ts';
import { type SolvedKey, type SolvedRow, solvedKeys } from '../row/solvedRow.ts';
import { isColumnName } from '../show/columns.ts';
import type { CellTexts, Row } from '../show/row.ts';
import type { Finding } from './finding.ts';

/**
 * What a finding is accepted by: its code with the figures of its cells in mm, `uneven(149/70)`. It holds no space, so
 * that the cell `accepted` can hold several. With other figures it is another finding, and is told again.
 */
export function acceptanceOf(
	{ code, cells }: Pick<Finding, 'code' | 'cells'>,
	solved: SolvedRow,
	{ typed }: Row,
): string {
	const figures = cells.map((cell) => {
		if (isSolvedKey(cell)) return solved[cell] === undefined ? '-' : formatExact(solved[cell], 'mm');
		return isColumnName(cell) ? (typed[cell]?.trim().replace(/[\s()/]+/g, '_') ?? '') : '';
	});
	return `${code}(${figures.join('/')})`;
}

const isSolvedKey = (cell: string): cell is SolvedKey => (solvedKeys as readonly string[]).includes(cell);

/** Whether a finding is accepted: a `look` whose figures are as they were then, or whose bare code was typed. */
export function isAccepted(finding: Finding, solved: SolvedRow, row: Row): boolean {
	const accepted = row.typed.accepted?.trim();
	if (!accepted || finding.level !== 'look') return false;
	const tokens = accepted.split(/[\s;,]+/);
	return tokens.includes(finding.code) || tokens.includes(acceptanceOf(finding, solved, row));
}

/** The change that accepts a `look`; what the same code and cells were accepted by before goes. */
export function accept(finding: Finding, solved: SolvedRow, row: Row): CellTexts {
	const kept = without(finding, solved, row);
	return { accepted: [...kept, acceptanceOf(finding, solved, row)].join(' ') };
}

/** The change that takes an acceptance back. */
export function takeBack(finding: Finding, solved: SolvedRow, row: Row): CellTexts {
	return { accepted: without(finding, solved, row).join(' ') };
}

function without(finding: Finding, solved: SolvedRow, row: Row): string[] {
	const own = acceptanceOf(finding, solved, row);
	const tokens = (row.typed.accepted ?? '').split(/[\s;,]+/).filter((token) => token !== '');
	return tokens.filter((token) => token !== own && token !== finding.code);
}
