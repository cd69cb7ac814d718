import { solvedKeys } from '../row/solvedRow.ts';
import type { Row } from '../show/row.ts';
import type { ColumnName } from '../show/columns.ts';
import type { HarmonisedRow } from './harmonise.ts';

/** Whether applying it gives the row other sizes or borders; where it does not, there is nothing to apply. */
export const changesFigures = ({ size, before, after }: HarmonisedRow): boolean =>
	size !== undefined && solvedKeys.some((key) => !key.startsWith('overlap') && before[key] !== after[key]);

/** The cells of a row in which something is typed that applying it clears. */
export const clearedCells = ({ change }: HarmonisedRow, { typed }: Row): readonly ColumnName[] =>
	(Object.entries(change) as [ColumnName, string][]).flatMap(([column, text]) =>
		text === '' && typed[column] !== undefined ? [column] : [],
	);
