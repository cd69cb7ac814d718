import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { BoardPlan } from '../../../../src/core/sheets/boardPlan.ts';
import { jobsOf } from '../../../../src/core/sheets/jobsOf.ts';
import { layoutOf } from '../../../../src/core/sheets/layout.ts';
import { beginSheet } from '../../../../src/core/sheets/markSheets.ts';
import { packBoards } from '../../../../src/core/sheets/packBoards.ts';
import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';
import type { Show } from '../../../../src/core/show/show.ts';

/** A show of mounts of 600 × 450 mm, two to a sheet of 600 × 900 mm. */
export const showOf = (prints: number, settings: Readonly<Record<string, unknown>> = {}): Show => ({
	id: 'show',
	name: 'Salt',
	settings: {
		mountSize: '600 x 450 mm',
		boards: [{ name: 'Chalk', width: 600, height: 900, price: 900 }],
		...settings,
	},
	rows: Array.from({ length: prints }, (_, place) => ({
		id: `r${place + 1}`,
		order: place + 1,
		typed: { shape: '3:2' },
	})),
});

/** The jobs of a show with all that is ticked and cut in it. */
export function jobsOfShow(show: Show): readonly PackingJob[] {
	const { settings } = readSettings(show.settings);
	const results = show.rows.map((row) => judgeRow(row, settings));
	const cutSheets = (show.cutSheets ?? []).map(layoutOf);
	return jobsOf(show.rows, results, settings, { cutSheets, ticks: show.ticks ?? [] }).jobs;
}

/** The plans of a show's boards, found at once. */
export const plansOf = (show: Show): readonly BoardPlan[] => packBoards(jobsOfShow(show), { secondsLeft: () => 0 });

/** A sheet of the plan of the first board, by its place in it. */
export const plannedSheet = (show: Show, place = 0) =>
	beginSheet(plansOf(show)[0]!.layouts.filter(({ isCut }) => !isCut)[place]!, `s${place}`);
