import type { CellTexts, Row } from '../show/row.ts';
import type { Finding } from './finding.ts';

/**
 * What a finding is accepted by: its code with every figure of its sentence, `uneven(149/70/79/113/15)`. It holds no
 * space, so that the cell `accepted` can hold several. With other figures it is another finding, and is told again.
 */
export function acceptanceOf({ code, message }: Pick<Finding, 'code' | 'message'>): string {
	const figures = message.match(/\d[\d.:/]*[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]/gu) ?? [];
	return `${code}(${figures.map((figure) => figure.replace(/[.:/]+$/, '')).join('/')})`;
}

/** Whether a finding is accepted: a `look` whose figures are as they were then. */
export const isAccepted = (finding: Finding, row: Row): boolean =>
	finding.level === 'look' && acceptancesOf(row).includes(acceptanceOf(finding));

/** The change that accepts a `look`. */
export const accept = (finding: Finding, row: Row): CellTexts => ({
	accepted: [...without(finding, row), acceptanceOf(finding)].join(' '),
});

/** The change that takes an acceptance back. */
export const takeBack = (finding: Finding, row: Row): CellTexts => ({ accepted: without(finding, row).join(' ') });

const without = (finding: Finding, row: Row) => acceptancesOf(row).filter((each) => each !== acceptanceOf(finding));

const acceptancesOf = ({ typed }: Row): readonly string[] =>
	(typed.accepted ?? '').split(/[\s;,]+/).filter((each) => each !== '');
