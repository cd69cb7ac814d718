import { formatLength, formatSize, type Scale } from '../length/formatLength.ts';
import { type Length, mmPerMetre, toMm } from '../length/length.ts';
import { capital } from '../values/capital.ts';
import { countOf } from '../values/countOf.ts';
import type { GetKind, GetLine } from './getLine.ts';

/** What each kind of thing is called above its lines. */
export const kindWords: Readonly<Record<GetKind, string>> = {
	board: 'Boards',
	glazing: 'Glazing',
	backing: 'Backing',
	frame: 'Frames',
	stick: 'Moulding',
	paper: 'Papers',
	spacer: 'Spacer',
	tape: 'Sealing tape',
	cord: 'Cord',
	rings: 'Rings',
	bumpers: 'Bumpers',
	hinges: 'Hinges',
	labels: 'Labels',
};

/**
 * An amount that is wanted: pieces, or metres, up. A roll of paper is said to a centimetre, as its pieces add up and nothing
 * is added to them; the others to a tenth: nobody buys tape by the centimetre.
 */
export function amountWords(value: number, { kind, isByLength }: Pick<GetLine, 'kind' | 'isByLength'>): string {
	if (!isByLength) return `${value}`;
	const decimals = kind === 'paper' ? 2 : 1;
	const parts = 10 ** decimals;
	return `${(Math.ceil((toMm(value as Length) / mmPerMetre) * parts - 1e-9) / parts).toFixed(decimals)} m`;
}

/** An amount that is there: pieces, or metres as they were counted, to a centimetre, never more than there is; or none. */
export const thereWords = ({ there, isByLength }: Pick<GetLine, 'there' | 'isByLength'>): string =>
	there <= 0
		? 'none'
		: isByLength
			? `${Math.floor((toMm(there as Length) / mmPerMetre) * 100 + 1e-9) / 100} m`
			: `${there}`;

/** What a line is called: a paper that is only typed as a size has no name, and what is bought as its kind has the kind's. */
export const lineName = ({ kind, name }: Pick<GetLine, 'kind' | 'name'>): string =>
	kind === 'paper' && /^[\d.,/ ]+ ?[x×] ?[\d.,/ ]+$/.test(name) ? 'Paper without a name' : capital(name);

/** How large one of it is; nothing where that is not said. */
export function sizeWords({ size }: Pick<GetLine, 'size'>, scale: Scale): string {
	if (!size?.width) return '';
	return size.height ? formatSize(size.width, size.height, scale) : `${formatLength(size.width, scale)} ${scale.unit}`;
}

/** What a piece of it is called, where that is not the name of its kind. */
const pieceWords: Partial<Record<GetKind, string>> = {
	...{ board: 'sheet', glazing: 'sheet', backing: 'sheet', paper: 'sheet', stick: 'length' },
};

/** What has to be bought, in packs: `2 packs of 5`, `1 roll of 15 m`, `3 sheets`, or that nothing has. */
export function packsWords(line: GetLine): string {
	const { kind, packs, pack, isByLength } = line;
	if (packs === 0) return 'none';
	const metres = toMm(pack as Length) / mmPerMetre;
	if (isByLength && metres === 1) return `${packs} m`;
	const piece = pieceWords[kind];
	if (!isByLength && pack === 1) return piece ? countOf(packs, piece) : `${packs}`;
	const word = isByLength && kind === 'paper' ? 'roll' : 'pack';
	return `${packs} ${packs === 1 ? word : `${word}s`} of ${isByLength ? `${Number(metres.toFixed(2))} m` : pack}`;
}
