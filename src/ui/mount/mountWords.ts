import type { Finding } from '../../core/findings/finding.ts';
import { formatLength, formatWithUnit, type Scale } from '../../core/length/formatLength.ts';
import { type Length, length } from '../../core/length/length.ts';
import type { SolvedRow } from '../../core/row/solvedRow.ts';
import type { PaperEdge } from '../../core/settings/paper.ts';
import { listed } from '../../core/values/listed.ts';

/** Which axes of a print cannot be cut as they stand, in words; empty where both can. */
export function clashWords(findings: readonly Finding[]): string {
	const words = (['adds-up', 'does-not-fit'] as const).flatMap((clash) => {
		const axes = findings
			.filter(({ code }) => code === clash)
			.map(({ cells }) => (cells.some((cell) => cell === 'side' || cell.endsWith('Width')) ? 'width' : 'height'));
		if (axes.length === 0) return [];
		return `the ${listed(axes)} ${axes.length > 1 ? 'do' : 'does'} not ${clash === 'adds-up' ? 'add up' : 'fit'}`;
	});
	return words.join('; ');
}

/** A width and a height in words: `600 × 450 mm`; a side that is not known is a question mark. */
export function sizeWords(width: Length | undefined, height: Length | undefined, scale: Scale): string {
	const side = (value: Length | undefined) => (value === undefined ? '?' : formatLength(value, scale));
	return `${side(width)} × ${side(height)} ${scale.unit}`;
}

/**
 * What a drawing of the front shows, for those who hear it.
 * @param floatEdge of the paper, where the print floats on a board
 */
export function frontWords(solved: SolvedRow, scale: Scale, floatEdge?: PaperEdge): string {
	const { mountWidth, mountHeight, windowWidth, windowHeight, pictureWidth, pictureHeight } = solved;
	const picture = `Picture ${sizeWords(pictureWidth, pictureHeight, scale)}.`;
	const sizes = floatEdge
		? `Float on a board ${sizeWords(mountWidth, mountHeight, scale)}, paper ${sizeWords(windowWidth, windowHeight, scale)} with a ${floatEdge} edge.`
		: mountWords(solved, scale);
	return [sizes, borderWords(solved, scale), picture, floatEdge ? '' : coverWords(solved, scale)]
		.filter((words) => words !== '')
		.join(' ');
}

/** The sizes of a mount and its window: `Mount 700 × 550 mm, window 540 × 357 mm.` */
export const mountWords = ({ mountWidth, mountHeight, windowWidth, windowHeight }: SolvedRow, scale: Scale): string =>
	`Mount ${sizeWords(mountWidth, mountHeight, scale)}, window ${sizeWords(windowWidth, windowHeight, scale)}.`;

/** The three borders in words; empty where none is known. */
export function borderWords({ side, top, bottom }: SolvedRow, scale: Scale): string {
	const words = [
		side !== undefined && `sides ${formatLength(side, scale)}`,
		top !== undefined && `top ${formatLength(top, scale)}`,
		bottom !== undefined && `bottom ${formatLength(bottom, scale)}`,
	].filter((word) => word !== false);
	return words.length === 0 ? '' : `Borders: ${words.join(', ')} ${scale.unit}.`;
}

/** What the mount covers of the picture, or leaves round it; empty where that is not known. */
export function coverWords({ overlapSide, overlapTop, overlapBottom }: SolvedRow, scale: Scale): string {
	if (overlapSide === undefined || overlapTop === undefined || overlapBottom === undefined) return '';
	const places = [
		{ where: 'at the sides', cover: overlapSide },
		{ where: 'at the top', cover: overlapTop },
		{ where: 'at the bottom', cover: overlapBottom },
	];
	if (places.every(({ cover }) => cover === overlapSide)) {
		const where = overlapSide < 0 ? 'round the picture' : 'of the picture on each side';
		return `The mount ${verb(overlapSide)} ${figure(overlapSide, scale)} ${where}.`;
	}
	const together =
		overlapTop === overlapBottom ? [places[0]!, { where: 'at top and bottom', cover: overlapTop }] : places;
	let said = '';
	const parts = together.map(({ where, cover }) => {
		const words = verb(cover) === said ? '' : `${verb(cover)} `;
		said = verb(cover);
		return `${words}${figure(cover, scale)} ${where}`;
	});
	return `The mount ${listed(parts)}.`;
}

const verb = (cover: Length) => (cover < 0 ? 'leaves' : 'covers');
const figure = (cover: Length, scale: Scale) => formatWithUnit(length(Math.abs(cover)), scale);
