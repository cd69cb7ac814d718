import { formatLength } from '../length/formatLength.ts';
import type { Size } from '../length/size.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { shownText } from '../values/shownText.ts';
import { showOrder } from './showOrder.ts';

/** A print of the catalogue. What it says is for visitors: of who bought it, nothing. */
export interface CatalogueLine {
	/** The place of its row, from 0. */
	readonly place: number;
	/** The wall that it hangs on; blank where it hangs on none. */
	readonly wall: string;
	readonly number: string;
	readonly maker: string;
	readonly title: string;
	readonly year: string;
	readonly medium: string;
	/** Of the picture; undefined where that is not known. */
	readonly size: Size | undefined;
	readonly edition: string;
	/** Blank where it has none, or prices are left out. */
	readonly price: string;
	/** Whether none of it is left to be had. */
	readonly isSold: boolean;
}

/** A show as its catalogue is made from it. */
export interface CatalogueSource {
	readonly rows: readonly Row[];
	/** In the order of the rows. */
	readonly results: readonly (Pick<WorkedRow, 'read' | 'hangs' | 'framed' | 'frame' | 'copies'> &
		Pick<WorkedRow, 'solved'>)[];
	readonly settings: Settings;
	/** The price of a print in words, by its place; blank where it has none. */
	readonly priceOf: (place: number) => string;
	/** Whether all of a print is sold, by its place. */
	readonly isSold: (place: number) => boolean;
}

/** The prints of a show in the order in which they hang, as a catalogue names them. */
export function catalogueOf(
	{ rows, results, settings, priceOf, isSold }: CatalogueSource,
	{ hasPrices }: { readonly hasPrices: boolean },
): readonly CatalogueLine[] {
	return showOrder(rows, results, settings).flatMap(({ wall, places }) =>
		places.map((place): CatalogueLine => {
			const text = (column: ColumnName) => rows[place]!.typed[column]?.trim() ?? '';
			const { pictureWidth: width, pictureHeight: height } = results[place]!.solved;
			return {
				...{ place, wall },
				...{ number: text('number'), maker: text('maker'), title: text('title') },
				...{ year: text('year'), medium: text('medium'), edition: text('edition') },
				size: width === undefined || height === undefined ? undefined : { width, height },
				price: hasPrices ? priceOf(place) : '',
				isSold: isSold(place),
			};
		}),
	);
}

/** A size as catalogues have it, height first, without its unit: `305 × 456`; blank where it is not known. */
export const heightFirst = (size: Size | undefined, settings: Settings): string =>
	size === undefined ? '' : `${formatLength(size.height, settings)} × ${formatLength(size.width, settings)}`;

/** What stands in a line after another, where there is anything: `Ebb, 2024`. */
export const joined = (...texts: readonly string[]): string => texts.filter((text) => text !== '').join(', ');

/** Title and year of a line; a print without a title is untitled. */
export const titleWords = ({ title, year }: Pick<CatalogueLine, 'title' | 'year'>): string =>
	joined(title === '' ? 'Untitled' : title, year);

/** What stands in the price's place: the price, and that it is sold, in a word. */
export const priceWords = ({ price, isSold }: Pick<CatalogueLine, 'price' | 'isSold'>): string =>
	isSold ? joined(price, 'sold') : price;

/** The most signs of a maker, a medium and the like on paper; of a title there may be as many as are shown anywhere. */
const mostOnPaper = 120;

const onPaper = (text: string): string => (text.length > mostOnPaper ? `${text.slice(0, mostOnPaper)}…` : text);

/** A line as it stands on paper: texts that are far too long are cut short there, and whole in the file. */
export const lineOnPaper = (line: CatalogueLine): CatalogueLine => ({
	...line,
	...{ number: onPaper(line.number), maker: onPaper(line.maker), year: onPaper(line.year) },
	...{ medium: onPaper(line.medium), edition: onPaper(line.edition), price: onPaper(line.price) },
	...{ wall: onPaper(line.wall), title: shownText(line.title) },
});
