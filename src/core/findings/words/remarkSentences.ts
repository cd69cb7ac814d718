import { formatSize, type Scale } from '../../length/formatLength.ts';
import type { Size } from '../../length/size.ts';
import { countOf } from '../../values/countOf.ts';
import { shownText } from '../../values/shownText.ts';

/** A title and who made it, as typed. */
export interface NamedEdition {
	readonly title: string;
	readonly maker: string | undefined;
}

/** “Untitled” by Ann. */
const nameOf = ({ title, maker }: NamedEdition): string =>
	`“${shownText(title.trim())}”${maker === undefined ? '' : ` by ${shownText(maker.trim())}`}`;

/** Of prints of one edition that have different sizes. @param sizes two or more */
export const editionSizes = (edition: NamedEdition, sizes: readonly Size[], scale: Scale): string =>
	`${nameOf(edition)} is printed at ${sizes.map(({ width, height }) => formatSize(width, height, scale)).join(' and ')} in one edition. An edition has one size.`;

/** Of an edition with too many artist's proofs. */
export const manyProofs = (edition: NamedEdition, proofs: number, size: number): string =>
	`${nameOf(edition)}: ${countOf(proofs, 'artist’s proof is', 'artist’s proofs are')} over a tenth of its edition of ${size}.`;
