import type { WorkedRow } from '../row/workedRow.ts';
import type { HungRow } from '../walls/hungPrint.ts';
import type { Finding } from './finding.ts';

/** A row worked out and judged: everything that it gives by itself, from its typed cells and the show's settings. */
export interface RowResult extends WorkedRow {
	/** Its place on a wall, among the others of the show; undefined where it hangs on none. */
	readonly hung?: HungRow | undefined;
	/** In the order of weight: `stop`, then `look`, then `note`; without what was accepted. */
	readonly findings: readonly Finding[];
	/** What was found and accepted as it is: `look`s whose figures have not changed since. */
	readonly accepted: readonly Finding[];
	/** Whether any finding is a `stop`: such a row is left out of bench and board plans. */
	readonly isStopped: boolean;
}

/** The result of a row that is worked out and not judged yet: nothing is found so far. */
export const unjudged = (worked: WorkedRow): RowResult => ({
	...worked,
	findings: none,
	accepted: none,
	isStopped: false,
});

const none: readonly Finding[] = [];
