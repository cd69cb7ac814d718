import { isConflict, isOnlyHere, parted } from './choices.ts';
import type { CellDifference, Merge, RowDifference } from './mergeRows.ts';

/** The prints that differ, by what has become of them. */
export interface DifferenceGroup {
	readonly title: string;
	readonly about: string;
	/** The prints, each with the cells that belong into the group. */
	readonly rows: readonly RowDifference[];
	/** Whether nothing in it has to be looked at. */
	readonly isAside: boolean;
}

const prints = (count: number) => (count === 1 ? '1 print' : `${count} prints`);

/** What is said of a cell, or of a print that is there or not, on which only a person can decide; undefined of others. */
export function conflictWord(difference: RowDifference | CellDifference): string | undefined {
	if (!isConflict(difference)) return undefined;
	if ('column' in difference) return difference.changedBy === 'both' ? 'changed in both' : 'differs';
	if (difference.kind === 'removed there') return 'changed here, removed there';
	return difference.kind === 'removed here' ? 'removed here, changed there' : undefined;
}

/** The prints that differ in groups, those that somebody has to decide first. */
export function differenceGroups({ rows, isComplete, base }: Merge): readonly DifferenceGroup[] {
	const theirs = parted(rows, 'theirs or both');
	const open = theirs.filter(isConflict);
	const isUnknown = (row: RowDifference) =>
		row.kind === 'changed' && row.cells.every(({ changedBy }) => changedBy !== 'both');
	const alone = (kind: RowDifference['kind']) => theirs.filter((row) => row.kind === kind && !isConflict(row));
	const groups: readonly Omit<DifferenceGroup, 'isAside'>[] = [
		{
			title: 'Changed in both',
			about: 'Yours stay unless you take theirs; a print that one side removed and the other changed is kept.',
			rows: open.filter((row) => !isUnknown(row)),
		},
		{
			title: 'Not the same',
			about: 'It cannot be told who changed what: yours stay unless you take theirs, and blanks are filled.',
			rows: open.filter(isUnknown),
		},
		{
			title: base ? 'Changed in the file' : 'Blank here, filled in the file',
			about: 'Theirs are taken unless you keep yours.',
			rows: alone('changed'),
		},
		{ title: 'New in the file', about: 'They are added unless you leave them out.', rows: alone('added') },
		{
			title: 'No longer in the file',
			about: isComplete
				? 'They are removed unless you keep them.'
				: 'The file has not all columns, so it may be a list of some prints only: they are kept unless you remove them, print by print.',
			rows: alone('removed there'),
		},
	];
	const aside = {
		title: 'Changed only here',
		about:
			'Yours stay, and “Take all of theirs” leaves them: here you can take back what the file has, which is what was there before.',
		rows: parted(rows, 'only here'),
		isAside: true,
	};
	return [...groups.map((group) => ({ ...group, isAside: false })), aside].filter((group) => group.rows.length > 0);
}

/** What of the comparison needs no answer, in sentences. */
export function restSentences(
	{ rows, order, same, onlyHere, base }: Merge,
	givenOn: string | undefined,
): readonly string[] {
	const changedHere = parted(rows, 'only here').filter(({ kind }) => kind === 'changed').length;
	const stayRemoved = rows.filter((row) => row.kind !== 'changed' && isOnlyHere(row)).length;
	const compared =
		base === undefined
			? 'No file of this show was exchanged before, so it cannot be told who changed what: all that differs is shown.'
			: `Compared with “${base.fileName || 'what was pasted'}”, ${base.direction === 'given' ? 'given' : 'taken in'} ${givenOn ?? 'before'}.`;
	return [
		compared,
		changedHere > 0 ? `What you changed in ${prints(changedHere)} stays.` : '',
		stayRemoved > 0 ? `${prints(stayRemoved)} that you removed ${stayRemoved === 1 ? 'stays' : 'stay'} removed.` : '',
		onlyHere > 0 ? `${prints(onlyHere)} that only you have ${onlyHere === 1 ? 'stays' : 'stay'}.` : '',
		order.changedBy === 'here' ? 'The order that you have put the prints in stays.' : '',
		same > 0 ? `${prints(same)} ${same === 1 ? 'is' : 'are'} the same on both sides.` : '',
	].filter((sentence) => sentence !== '');
}
