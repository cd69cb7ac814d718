import { formatExact } from '../core/length/formatLength.ts';
import type { CatalogueLine } from '../core/lists/catalogue.ts';
import type { Settings } from '../core/settings/settings.ts';
import { csvText, headerIn } from './csvText.ts';

/** The columns of the catalogue; lengths are in the show's unit, which stands behind the name. */
export const catalogueColumns = [
	...(['wall', 'number', 'maker', 'title', 'year', 'medium'] as const),
	...(['height', 'width', 'edition', 'price', 'sold'] as const),
] as const;

const lengths: readonly string[] = ['height', 'width'];

/**
 * The catalogue as delimited text, a print each in the order in which they hang; the size is the picture's, height first.
 * @param hasPrices whether there is a column of prices at all
 */
export function writeCatalogue(
	lines: readonly CatalogueLine[],
	{ unit }: Settings,
	{ hasPrices }: { readonly hasPrices: boolean },
): string {
	const names = catalogueColumns.filter((name) => hasPrices || name !== 'price');
	const header = headerIn(unit, names, lengths);
	const records = lines.map(({ size, isSold, ...texts }) => {
		const cells: Record<(typeof catalogueColumns)[number], string> = {
			...texts,
			height: size ? formatExact(size.height, unit) : '',
			width: size ? formatExact(size.width, unit) : '',
			sold: isSold ? 'sold' : '',
		};
		return names.map((name) => cells[name]);
	});
	return csvText([header, ...records]);
}
