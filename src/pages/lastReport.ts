import type { Step } from '../app/history.svelte.ts';
import { mayBeMatched } from '../app/importFile.ts';
import type { IncomingList } from '../app/incoming.ts';
import type { FileReport } from '../core/imports/fileReports.ts';
import type { Show } from '../core/show/show.ts';

/** What was said of the last file or text, and what it hangs on. */
export interface LastReport {
	readonly report: FileReport;
	readonly show: Show;
	/** What came in, where one may say anew what its columns hold. */
	readonly incoming: IncomingList | undefined;
	/** The step that brought it; undefined where nothing has changed. */
	readonly step: Step | undefined;
}

/**
 * A report on the show as it is now.
 * @param incoming what came in, where the report is of that
 * @param step the step that brought it
 */
export function lastReport(report: FileReport, show: Show, incoming?: IncomingList, step?: Step): LastReport {
	const isMatched = incoming !== undefined && !report.isProblem && mayBeMatched(incoming);
	return { report, show, incoming: isMatched ? incoming : undefined, step };
}

/**
 * Whether a report still holds: once the show is another, after the next edit, it would speak of what is no more. What
 * could not be read is said until it is closed.
 */
export const isStillSaid = ({ report, show }: LastReport, now: Show): boolean => report.isProblem || show === now;
