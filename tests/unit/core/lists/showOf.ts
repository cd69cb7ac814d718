import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { rowOf } from '../findings/rowOf.ts';

/** A show of rows in a line each, worked out, with what its lists ask of it. */
export function showOf(lines: readonly string[], typed: TypedSettings) {
	const { settings } = readSettings(typed);
	const rows = lines.map((line, at): Row => ({ ...rowOf(line), id: `r${at}`, order: at + 1 }));
	const results = rows.map((row) => judgeRow(row, settings));
	return {
		...{ rows, results, settings },
		priceOf: (place: number) => rows[place]!.typed.price ?? '',
		isSold: () => false,
	};
}
