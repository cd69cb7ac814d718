import { formatExact } from '../length/formatLength.ts';
import { length, nearestLength } from '../length/length.ts';
import type { CellTexts, Row } from '../show/row.ts';
import type { Finding } from './finding.ts';
import { isFormerAcceptance } from './formerAcceptance.ts';

/**
 * What a finding is accepted by: its code with every figure that was found, lengths in millimetres under every unit:
 * `uneven(side:149mm/top:70mm/difference:79mm/share:112.857%/allowed:15%)`. It holds no space, so that the cell `accepted`
 * can hold several. With other figures it is another finding, and is shown again.
 */
export const acceptanceOf = ({ code, figures }: Pick<Finding, 'code' | 'figures'>): string =>
	`${code}(${named(figures).join('/')})`;

/** Whether a finding is accepted: a `look` whose figures are as they were then. */
export const isAccepted = (finding: Finding, row: Row): boolean =>
	finding.level === 'look' && acceptancesOf(row).some((text) => isFor(text, finding));

/** The change that accepts `look`s, each of those that are said at once. */
export const accept = (findings: readonly Finding[], row: Row): CellTexts => ({
	accepted: [...without(findings, row), ...findings.map(acceptanceOf)].join(' '),
});

/** The change that withdraws acceptances. */
export const withdraw = (findings: readonly Finding[], row: Row): CellTexts => ({
	accepted: without(findings, row).join(' '),
});

const without = (findings: readonly Finding[], row: Row) =>
	acceptancesOf(row).filter((text) => !findings.some((finding) => isFor(text, finding)));

const isFor = (text: string, finding: Finding): boolean =>
	text === acceptanceOf(finding) || isFormerAcceptance(text, finding.code, finding.figures);

const acceptancesOf = ({ typed }: Row): readonly string[] =>
	(typed.accepted ?? '').split(/[\s;,]+/).filter((each) => each !== '');

/** The figures in an order that is theirs, each with its name. A number is a length; what is none says what it counts. */
function named(figures: object): readonly string[] {
	return Object.entries(figures).flatMap(([name, figure]: [string, unknown]) => textsOf(figure, name));
}

function textsOf(figure: unknown, name: string): readonly string[] {
	if (typeof figure === 'number') return [`${name}:${inMm(figure)}mm`];
	if (typeof figure === 'string') return [`${name}:${figure.replace(/[\s;,/()]+/g, '_')}`];
	if (Array.isArray(figure)) return figure.flatMap((each: unknown) => textsOf(each, name));
	if (typeof figure !== 'object' || figure === null) return [];
	if ('percent' in figure) return [`${name}:${rounded(figure.percent)}%`];
	if ('count' in figure) return [`${name}:${rounded(figure.count)}`];
	if ('mm2' in figure) return [`${name}:${rounded(figure.mm2)}mm2`];
	if ('kg' in figure) return [`${name}:${rounded(figure.kg)}kg`];
	if ('said' in figure) return 'id' in figure ? textsOf(figure.id, name) : [];
	if ('usual' in figure || 'columns' in figure) return [];
	return named(figure);
}

/** Lengths within 1 µm count as equal: no finer is kept. */
const unitsKept = 10_000;

const inMm = (units: number): string =>
	formatExact(length(Math.round(nearestLength(units) / unitsKept) * unitsKept), 'mm');

const rounded = (value: unknown): number => Number(Number(value).toFixed(3));
