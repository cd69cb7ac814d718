import type { Unit } from '../length/reading.ts';
import type { Row } from './row.ts';

/** Cells of a row while they are being changed, each by its column. */
export interface Cells {
	readonly typed: ReadonlyMap<string, string>;
	readonly units: ReadonlyMap<string, Unit>;
	readonly extra?: ReadonlyMap<string, string>;
}

/** A row with these cells in the place of those that it had; all else of it is as it was. */
export function rowWith(row: Row, cells: Cells): Row {
	const { units: _, extra: ownExtra, ...others } = row;
	const extra = cells.extra ? Object.fromEntries(cells.extra) : ownExtra;
	return {
		...others,
		typed: Object.fromEntries(cells.typed),
		...(cells.units.size > 0 && { units: Object.fromEntries(cells.units) }),
		...(extra && Object.keys(extra).length > 0 && { extra }),
	};
}
