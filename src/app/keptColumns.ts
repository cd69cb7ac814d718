import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { columnsMatched, type FileReport } from '../core/imports/fileReports.ts';
import { difference } from '../core/show/edit.ts';
import { keptColumnsOf, withKept } from '../files/keptColumns.ts';
import type { ColumnsOfFile } from '../files/readColumns.ts';
import type { Session } from './session.svelte.ts';

/** The columns of other programs that are kept with the prints of the show. */
export const keptColumns = ({ show }: Pick<Session, 'show'>): ColumnsOfFile['columns'] => keptColumnsOf(show.rows);

/** Makes cells of ours of kept columns, as one step to undo. */
export function matchKept(session: Session, matching: ColumnMatching): FileReport {
	const before = session.show;
	session.do((show) =>
		difference(show, { ...show, rows: withKept(show.rows, matching, session.settings) }, 'Match columns'),
	);
	const changed = session.show.rows.filter((row, place) => row !== before.rows[place]).length;
	return columnsMatched(changed);
}
