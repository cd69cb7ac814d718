import { isConflict } from './choices.ts';
import type { Merge, RowDifference } from './mergeRows.ts';

/** The prints that differ, by what has become of them. */
export interface DifferenceGroup {
	readonly title: string;
	readonly about: string;
	readonly rows: readonly RowDifference[];
}

const prints = (count: number) => (count === 1 ? '1 print' : `${count} prints`);

/** The prints that differ in groups, those that somebody has to decide first. */
export function differenceGroups({ rows, isComplete }: Merge): readonly DifferenceGroup[] {
	const alone = (kind: RowDifference['kind']) => rows.filter((row) => row.kind === kind && !isConflict(row));
	const groups: readonly DifferenceGroup[] = [
		{
			title: 'Changed in both',
			about: 'Yours stay unless you take theirs; a print that one side removed and the other changed is kept.',
			rows: rows.filter(isConflict),
		},
		{ title: 'Changed in the file', about: 'Theirs are taken unless you keep yours.', rows: alone('changed') },
		{ title: 'New in the file', about: 'They are added unless you leave them out.', rows: alone('added') },
		{
			title: 'No longer in the file',
			about: isComplete
				? 'They are removed unless you keep them.'
				: 'The file has not all columns, so it may be a list of some prints only: they are kept unless you remove them.',
			rows: alone('removed there'),
		},
	];
	return groups.filter((group) => group.rows.length > 0);
}

/** What of the comparison needs no answer, in sentences. */
export function restSentences(
	{ same, changedHere, stayRemoved, base }: Merge,
	givenOn: string | undefined,
): readonly string[] {
	const compared =
		base === undefined
			? 'No file of this show was exchanged before, so it cannot be told who changed what: all that differs is shown.'
			: `Compared with “${base.fileName || 'what was pasted'}”, ${base.direction === 'given' ? 'given' : 'taken in'} ${givenOn ?? 'before'}.`;
	return [
		compared,
		changedHere > 0 ? `What you changed in ${prints(changedHere)} stays.` : '',
		stayRemoved > 0 ? `${prints(stayRemoved)} that you removed ${stayRemoved === 1 ? 'stays' : 'stay'} removed.` : '',
		same > 0 ? `${prints(same)} ${same === 1 ? 'is' : 'are'} the same on both sides.` : '',
	].filter((sentence) => sentence !== '');
}
