import { listed } from '../values/listed.ts';
import { isConflict, isOnlyHere, parted } from './choices.ts';
import type { CellDifference, Merge, RowDifference } from './mergeRows.ts';
import { countOf } from '../values/countOf.ts';

/** The prints that differ, by what has become of them. */
export interface DifferenceGroup {
	readonly title: string;
	readonly about: string;
	/** The prints, each with the cells that belong into the group. */
	readonly rows: readonly RowDifference[];
	/** Whether nothing in it has to be looked at. */
	readonly isAside: boolean;
}

const prints = (count: number) => countOf(count, 'print');

/** What is said of a cell, or of a print that is there or not, on which only a person can decide; undefined of others. */
export function conflictWord(difference: RowDifference | CellDifference): string | undefined {
	if ('kind' in difference && difference.kind === 'added') return doubtWord(difference.doubt);
	if (!isConflict(difference)) return undefined;
	if ('column' in difference) return difference.changedBy === 'both' ? 'changed in both' : 'differs';
	if (difference.kind === 'removed there') return 'changed here, removed there';
	return difference.kind === 'removed here' ? 'removed here, changed there' : undefined;
}

const doubtWord = (doubt: (RowDifference & { readonly kind: 'added' })['doubt']): string | undefined =>
	doubt &&
	{
		'title is here': 'a print of this title is here',
		'twice in the file': 'twice in the file',
		total: 'reads like a total',
	}[doubt];

/** The prints that differ in groups: first those of which something would go, then those that somebody has to decide. */
export function differenceGroups({ rows, isComplete, base }: Merge): readonly DifferenceGroup[] {
	const theirs = parted(rows, 'theirs or both');
	const open = theirs.filter(isConflict);
	const isUnknown = (row: RowDifference) =>
		row.kind === 'changed' && row.cells.every(({ changedBy }) => changedBy !== 'both');
	const alone = (kind: RowDifference['kind']) => theirs.filter((row) => row.kind === kind && !isConflict(row));
	const groups: readonly Omit<DifferenceGroup, 'isAside'>[] = [
		{
			title: 'No longer in the file',
			about: isComplete
				? 'They are removed unless you keep them.'
				: 'The file lacks some columns, so it may be a list of some prints only. They stay unless you remove them one by one.',
			rows: alone('removed there'),
		},
		{
			title: 'Changed in both',
			about: 'Yours stay unless you choose theirs. A print that one side removed and the other changed is kept.',
			rows: open.filter((row) => !isUnknown(row)),
		},
		{
			title: base ? 'Changed in the file' : 'Blank here, filled in the file',
			about: base ? 'Theirs replace yours unless you keep yours.' : 'Theirs fill the blanks unless you keep yours.',
			rows: alone('changed'),
		},
		{
			title: 'Not the same',
			about: 'Either side may have changed. Yours stay unless you choose theirs; blanks are filled.',
			rows: open.filter(isUnknown),
		},
		{ title: 'New in the file', about: 'Added unless left out.', rows: alone('added') },
		{
			title: 'Perhaps not new',
			about: 'Duplicates and totals. Left out unless you add them.',
			rows: parted(rows, 'in doubt'),
		},
	];
	const aside = {
		title: 'Changed only here',
		about:
			'Yours stay, and “Use all of theirs” leaves them. The file still has what was there before; choose it to go back.',
		rows: parted(rows, 'only here'),
		isAside: true,
	};
	return [...groups.map((group) => ({ ...group, isAside: false })), aside].filter((group) => group.rows.length > 0);
}

/** Cells that nobody may have meant to change, decided on together. */
export interface AsideLine {
	readonly kind: NonNullable<CellDifference['aside']>;
	readonly sentence: string;
	/** The prints, each with those of its cells. */
	readonly rows: readonly RowDifference[];
}

const asideKinds: Readonly<Record<AsideLine['kind'], (what: string, isOne: boolean) => string>> = {
	date: (what, isOne) =>
		`${what} ${isOne ? 'looks' : 'look'} as if a spreadsheet had turned ${isOne ? 'it into a date' : 'them into dates'}.`,
	time: (what, isOne) =>
		`${what} ${isOne ? 'looks' : 'look'} as if a spreadsheet had turned ${isOne ? 'it into a time' : 'them into times'}.`,
	number: (what, isOne) =>
		`${what} ${isOne ? 'looks' : 'look'} as if a spreadsheet had rewritten ${isOne ? 'it as a number' : 'them as numbers'}: zeros, signs, decimals.`,
	letters: (what, isOne) => `${what} ${isOne ? 'has' : 'have'} lost letters on the way.`,
	lines: (what, isOne) => `${what} ${isOne ? 'has' : 'have'} lost line breaks on the way.`,
	error: (what, isOne) => `${what} ${isOne ? 'shows' : 'show'} only an error of the spreadsheet.`,
	numbering: (what, isOne) => `${what} only ${isOne ? 'counts' : 'count'} the lines of the file, in order.`,
	'new column': (what, isOne) => `${what} ${isOne ? 'comes' : 'come'} with a column that is not here yet.`,
	'print id': (what, isOne) =>
		`${what} ${isOne ? 'is' : 'are'} not the one${isOne ? '' : 's'} here. The ${isOne ? 'print was' : 'prints were'} found by what else the file says.`,
};

/** What nobody may have meant to change, one line for each thing that a spreadsheet does. */
export function asideLines({ rows }: Pick<Merge, 'rows'>): readonly AsideLine[] {
	const all = parted(rows, 'aside');
	const kinds = Object.keys(asideKinds) as AsideLine['kind'][];
	return kinds.flatMap((kind): AsideLine[] => {
		const counts = new Map<string, number>();
		const those = all.flatMap((row): RowDifference[] => {
			const cells = row.kind === 'changed' ? row.cells.filter(({ aside }) => aside === kind) : [];
			for (const { column } of cells) counts.set(column.name, (counts.get(column.name) ?? 0) + 1);
			return row.kind === 'changed' && cells.length > 0 ? [{ ...row, cells }] : [];
		});
		if (those.length === 0) return [];
		const total = [...counts.values()].reduce((sum, count) => sum + count, 0);
		const what = listed([...counts].map(([name, count]) => counted(count, name)));
		return [{ kind, sentence: asideKinds[kind](what, total === 1), rows: those }];
	});
}

/** Columns whose cells are called by the column's own name: 28 editions. */
const nouns = new Set([
	'edition',
	'shape',
	'title',
	'number',
	'price',
	'note',
	'maker',
	'side',
	'top',
	'bottom',
	'print id',
]);

const counted = (count: number, column: string): string =>
	nouns.has(column)
		? `${count} ${column}${count === 1 ? '' : 's'}`
		: `${count} ${count === 1 ? 'cell' : 'cells'} of ${column}`;

/** What of the comparison needs no answer, in sentences. */
export function restSentences(
	{ rows, order, same, onlyHere, base }: Merge,
	givenOn: string | undefined,
): readonly string[] {
	const changedHere = parted(rows, 'only here').filter(({ kind }) => kind === 'changed').length;
	const stayRemoved = rows.filter((row) => row.kind !== 'changed' && isOnlyHere(row)).length;
	const compared =
		base === undefined
			? 'First exchange of this show, so every difference is listed.'
			: `Compared with “${base.fileName || 'what was pasted'}”, ${base.direction === 'given' ? 'exported' : 'imported'} ${givenOn ?? 'before'}.`;
	return [
		compared,
		changedHere > 0 ? `What you changed in ${prints(changedHere)} stays.` : '',
		stayRemoved > 0 ? `${prints(stayRemoved)} that you removed ${stayRemoved === 1 ? 'stays' : 'stay'} removed.` : '',
		onlyHere > 0
			? `${prints(onlyHere)} ${onlyHere === 1 ? 'is only in your show and stays' : 'are only in your show and stay'}.`
			: '',
		order.changedBy === 'here' ? 'The order that you have put the prints in stays.' : '',
		same > 0 ? `${prints(same)} ${same === 1 ? 'is' : 'are'} the same on both sides.` : '',
	].filter((sentence) => sentence !== '');
}
