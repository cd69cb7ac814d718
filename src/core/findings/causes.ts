import type { Scale } from '../length/formatLength.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
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
 * A step of it is a print, as it is looked at and as it is put among what is said.
 * @param results of the rows, in their order
 */
export function* checksOf(
	rows: readonly Row[],
	results: readonly RowResult[],
	scale: Scale,
	isListed: (result: RowResult) => boolean,
): Generator<void, readonly Check[]> {
	const all: SaidInWords[] = [];
	const byWords = new Map<string, SaidInWords[]>();
	for (const [index, row] of rows.entries()) {
		const result = results[index];
		if (!result || !isListed(result)) continue;
		for (const said of saidTogether(result.findings, scale)) {
			const each = { row, index, said, words: `${said.level} ${said.code} ${said.message}` };
			const same = byWords.get(each.words);
			if (same) same.push(each);
			else byWords.set(each.words, [each]);
			all.push(each);
		}
		yield;
	}
	const checks: Record<Level, Check[]> = { stop: [], look: [], note: [] };
	const sharedWords = new Set<string>();
	for (const [words, prints] of byWords) {
		yield;
		if (!isOfSeveral(prints)) continue;
		sharedWords.add(words);
		const { said } = prints[0]!;
		checks[said.level].push({ key: words, level: said.level, prints, said: [said] });
	}
	// Each print once, with the gravest first.
	const alone: SaidInWords[][] = [];
	for (const each of all) {
		yield;
		if (sharedWords.has(each.words)) continue;
		if (alone.at(-1)?.[0]!.index === each.index) alone.at(-1)!.push(each);
		else alone.push([each]);
	}
	for (const prints of alone) {
		yield;
		const said = levels.flatMap((level) => prints.filter((each) => each.said.level === level)).map((each) => each.said);
		const { level } = said[0]!;
		checks[level].push({ key: `${level} ${prints[0]!.row.id}`, level, prints: prints.slice(0, 1), said });
	}
	return levels.flatMap((level) => checks[level]);
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
	yield; // what is offered is worked out as it is asked for
	let common: readonly (readonly Mend[])[] = said[0]!.mends
		.filter(({ wallGap }) => wallGap === undefined)
		.map((mend) => [mend]);
	for (const { said: other } of prints.slice(1)) {
		if (common.length === 0) break;
		yield;
		const offered = other.mends; // each time it is asked for it is worked out
		common = common.flatMap((mends) => {
			const same = offered.find(({ label }) => label === mends[0]!.label);
			return same ? [[...mends, same]] : [];
		});
	}
	return [
		common.map((mends) => ({
			label: mends[0]!.label,
			changes: mends.map(({ change }, place) => ({ id: prints[place]!.row.id, cells: change })),
		})),
	];
}
