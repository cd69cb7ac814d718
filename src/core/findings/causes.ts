import type { Scale } from '../length/formatLength.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import type { Level, Mend } from './finding.ts';
import type { RowResult } from './rowResult.ts';
import { type Said, saidTogether } from './together.ts';

/** What is said of a print. */
export interface SaidOfPrint {
	readonly row: Row;
	/** Place of the row in the show, from 0. */
	readonly index: number;
	readonly said: Said;
}

/**
 * What is to check: what is said of several prints in the same words, as of a board that none of them can be cut from, or all
 * that is said of one alone, at its gravest level.
 */
export interface Check {
	/** Stays the same while prints that it says nothing of change. */
	readonly key: string;
	readonly level: Level;
	readonly prints: readonly SaidOfPrint[];
	readonly said: readonly Said[];
}

/** A mend of several prints, in one step; or of one, which may change the gap of a wall. */
export interface SharedMend extends Pick<Mend, 'label' | 'wallGap'> {
	readonly changes: readonly { readonly id: RowId; readonly cells: CellTexts }[];
}

interface SaidInWords extends SaidOfPrint {
	readonly words: string;
}

const levels: readonly Level[] = ['stop', 'look', 'note'];

/**
 * All that is to check in a show, the most serious first, at each level what several prints have in common before all else.
 * A step of it is a print.
 * @param results of the rows, in their order
 */
export function* checksOf(
	rows: readonly Row[],
	results: readonly RowResult[],
	scale: Scale,
	isListed: (result: RowResult) => boolean,
): Generator<void, readonly Check[]> {
	const all: SaidInWords[] = [];
	for (const [index, row] of rows.entries()) {
		const result = results[index];
		if (!result || !isListed(result)) continue;
		for (const said of saidTogether(result.findings, scale))
			all.push({ row, index, said, words: `${said.code} ${said.message}` });
		yield;
	}
	const [shared, others]: SaidInWords[][][] = [[], []];
	const byWords = groupBy(all, ({ said, words }) => `${said.level} ${words}`);
	for (const prints of byWords.values()) (isOfSeveral(prints) ? shared : others)!.push(prints);
	// Each print once, with the gravest first.
	const alone = [...groupBy(others!.flat(), ({ index }) => index)]
		.sort(([a], [b]) => a - b)
		.map(([, prints]) => prints.sort((a, b) => levels.indexOf(a.said.level) - levels.indexOf(b.said.level)));
	const isOf = (level: Level) => (prints: readonly SaidInWords[]) => prints[0]!.said.level === level;
	return levels.flatMap((level): readonly Check[] => [
		...shared!
			.filter(isOf(level))
			.map((prints) => ({ key: `${level} ${prints[0]!.words}`, level, prints, said: [prints[0]!.said] })),
		...alone.filter(isOf(level)).map((prints) => ({
			key: `${level} ${prints[0]!.row.id}`,
			level,
			prints: prints.slice(0, 1),
			said: prints.map(({ said }) => said),
		})),
	]);
}

const isOfSeveral = (prints: readonly SaidOfPrint[]) => prints.some(({ index }) => index !== prints[0]!.index);

/**
 * The mends of each of what is said: of several prints those that each is offered in the same words; one that changes a
 * wall's gap is no one print's. A step of it is a print.
 */
export function* mendsOfCheck({ prints, said }: Check): Generator<void, readonly (readonly SharedMend[])[]> {
	if (prints.length === 1)
		return said.map(({ mends }) =>
			mends.map(({ change, ...mend }) => ({ ...mend, changes: [{ id: prints[0]!.row.id, cells: change }] })),
		);
	// Frames that are too few are given out for all of them at once: another one for each would run short in its turn.
	if (said[0]!.code === 'no-frame') return [[]];
	let common: readonly (readonly Mend[])[] = said[0]!.mends
		.filter(({ wallGap }) => wallGap === undefined)
		.map((mend) => [mend]);
	for (const { said: other } of prints.slice(1)) {
		if (common.length === 0) break;
		common = common.flatMap((mends) => {
			const same = other.mends.find(({ label }) => label === mends[0]!.label);
			return same ? [[...mends, same]] : [];
		});
		yield;
	}
	return [
		common.map((mends) => ({
			label: mends[0]!.label,
			changes: mends.map(({ change }, place) => ({ id: prints[place]!.row.id, cells: change })),
		})),
	];
}
