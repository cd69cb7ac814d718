import type { RowResult } from '../findings/rowResult.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import type { CostOfRow } from './priceOf.ts';

/** What prices and sales of a show are made from. */
export interface RecordSource {
	readonly rows: readonly Row[];
	/** In the order of the rows. */
	readonly results: readonly RowResult[];
	readonly settings: Settings;
	/** What a row costs, all its copies together; undefined where that is not known. */
	readonly costOf: (row: Row) => CostOfRow | undefined;
}
