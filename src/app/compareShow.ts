import { columns } from '../core/show/columns.ts';
import { pinRow } from '../core/commands/pinRow.ts';
import { readSettings } from '../core/settings/readSettings.ts';
import { leftOfShow, settingsOfShow } from '../core/imports/settingsOfShow.ts';
import type { Show } from '../core/show/show.ts';
import { settingsText } from '../files/resultTexts.ts';
import type { Session } from './session.svelte.ts';
import { compareWith, type ImportOptions, type ImportOutcome } from './importFile.ts';
import type { Origin } from './incoming.ts';

/** The settings of a show in a file that are not those of the open one; undefined where all are. */
export const differingSettings = (session: Session, show: Omit<Show, 'id'>) =>
	settingsOfShow(settingsText(readSettings(show.settings).settings), session.show.settings, show.settings);

/** Compares the prints of a whole show with those of the open one. What else differs is said, and settings are offered. */
export function compareShow(
	session: Session,
	show: Omit<Show, 'id'>,
	{ fileName, source, label }: Origin,
	options?: ImportOptions,
): Promise<ImportOutcome> {
	const { settings } = readSettings(show.settings);
	const rows = show.rows.map((row) => pinRow(row, settings.unit, session.settings.unit, settings.sizes));
	const read = {
		rows,
		columns: columns.map(({ name }) => name),
		unknown: [],
		unnamed: [],
		totals: [],
		lines: [],
		results: [],
		notes: leftOfShow(session.show, show),
	};
	const differing = differingSettings(session, show);
	return compareWith(session, { fileName, source, label, read, settings: differing }, options);
}
