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

/** What is to check at one level, each cause once. */
export interface ToCheck {
	readonly level: Level;
	/** What is said of several prints in the same words, as of a board that none of them can be cut from. */
	readonly shared: readonly (readonly SaidOfPrint[])[];
	/** All else, print by print. */
	readonly alone: readonly { readonly row: Row; readonly index: number; readonly said: readonly Said[] }[];
}

/** A mend of several prints, in one step. */
export interface SharedMend {
	readonly label: string;
	readonly changes: readonly { readonly id: RowId; readonly cells: CellTexts }[];
}

const levels: readonly Level[] = ['stop', 'look', 'note'];

/** All that is to check in a show, the most serious first. @param results of the rows, in their order */
export function causesOf(rows: readonly Row[], results: readonly RowResult[], scale: Scale): readonly ToCheck[] {
	const all = rows.flatMap((row, index) =>
		saidTogether(results[index]?.findings ?? [], scale).map((said): SaidOfPrint => ({ row, index, said })),
	);
	return levels.flatMap((level): readonly ToCheck[] => {
		const ofLevel = all.filter(({ said }) => said.level === level);
		if (ofLevel.length === 0) return [];
		const byWords = groupBy(ofLevel, ({ said }) => `${said.code} ${said.message}`);
		const shared = [...byWords.values()].filter(isOfSeveral);
		const others = [...byWords.values()].filter((prints) => !isOfSeveral(prints)).flat();
		const alone = [...groupBy(others, ({ index }) => index)]
			.sort(([a], [b]) => a - b)
			.map(([index, ofPrint]) => ({ row: rows[index]!, index, said: ofPrint.map(({ said }) => said) }));
		return [{ level, shared, alone }];
	});
}

const isOfSeveral = (prints: readonly SaidOfPrint[]) => prints.some(({ index }) => index !== prints[0]!.index);

/** The mends that each of the prints is offered in the same words; one that changes a wall's gap is no one print's. */
export function mendsOfAll(prints: readonly SaidOfPrint[]): readonly SharedMend[] {
	const [first, ...others] = prints;
	// Frames that are too few are given out for all of them at once: another one for each would run short in its turn.
	if (first?.said.code === 'no-frame') return [];
	let common: readonly (readonly Mend[])[] = (first?.said.mends ?? [])
		.filter(({ wallGap }) => wallGap === undefined)
		.map((mend) => [mend]);
	for (const { said } of others) {
		if (common.length === 0) return [];
		common = common.flatMap((mends) => {
			const same = said.mends.find(({ label }) => label === mends[0]!.label);
			return same ? [[...mends, same]] : [];
		});
	}
	return common.map((mends) => ({
		label: mends[0]!.label,
		changes: mends.map(({ change }, place) => ({ id: prints[place]!.row.id, cells: change })),
	}));
}
