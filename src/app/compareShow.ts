import { columns } from '../core/show/columns.ts';
import { pinRow } from '../core/show/pinRow.ts';
import { readSettings } from '../core/show/readSettings.ts';
import { settingsOfRows } from '../core/show/settingsOfRows.ts';
import type { Show } from '../core/show/show.ts';
import { settingsText } from '../files/resultTexts.ts';
import type { Session } from './session.svelte.ts';
import { compareWith, type Incoming, type Taken, type TakeOptions } from './takeFile.ts';

/** Compares the prints of a whole show with those of the open one. Of its settings only what sizes hang on is said. */
export function compareShow(
	session: Session,
	show: Omit<Show, 'id'>,
	{ fileName, source, label }: Incoming,
	options?: TakeOptions,
): Promise<Taken> {
	const { settings } = readSettings(show.settings);
	const rows = show.rows.map((row) => pinRow(row, settings.unit, session.settings.unit, settings.sizes));
	const read = {
		rows,
		columns: columns.map(({ name }) => name),
		unknown: [],
		unnamed: [],
		lines: [],
		results: [],
		notes: [],
	};
	const differing = settingsOfRows([settingsText(settings)], session.show.settings);
	return compareWith(session, { fileName, source, label, read, settings: differing }, options);
}
