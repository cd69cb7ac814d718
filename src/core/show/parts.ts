import type { Reading } from '../length/reading.ts';
import type { TypedSettings } from '../settings/settings.ts';
import { isRecord } from '../values/isRecord.ts';
import { nestingProblem } from '../values/nesting.ts';
import type { CutSheet } from './cutSheet.ts';
import { cutSheetsJson, readCutSheets } from './cutSheetJson.ts';
import { hungJson, type HungTick, readHung } from './hungTick.ts';
import { itemOf, type ItemDiff, type KeyedItems, keyedList, replaceItem } from './keyedList.ts';
import { type MadeTick, readMade } from './madeTick.ts';
import { mergeRow } from './mergeRow.ts';
import { byOrder } from './orderNumbers.ts';
import type { PartShape } from './partShape.ts';
import { recordByKey } from './recordByKey.ts';
import type { Row } from './row.ts';
import { readRowsJson } from './rowJson.ts';
import { singleValue, type ValueDiff } from './singleValue.ts';
import { isCutTick, type Tick } from './tick.ts';
import { readTicks, ticksJson } from './tickJson.ts';

/** What of a part of a file is left where only the prints of the file are compared. */
export interface Left {
	/** What differs, in a sentence. */
	readonly sentence?: string;
	/** How much that is done differs, each in words: `3 cuts ticked off`. */
	readonly done?: readonly string[];
}

/** A part of a show: how it behaves in edits, and in which form it is written to files and kept on the device. */
export interface Part<Value, Diff> extends PartShape<Value, Diff> {
	/** What stands for it where a show, or an older form of one, has nothing of it. */
	readonly nothing: Value;
	/** Whether every show has it, were it only `nothing`; else it is absent where there is nothing of it. */
	readonly isInEvery: boolean;
	/** Whether a change of it is one that a copy should be given of. */
	readonly isToBackUp: boolean;
	/** Its form in a show file; undefined: the file has none. */
	write(value: Value): unknown;
	/** Reads its form in a show file. @returns a problem that names the place */
	read(stored: unknown): Reading<Value>;
	/**
	 * Where it is a list too long to be written again with each edit: its items, each of which is then kept by itself, in a
	 * store of the part's name. Undefined: it is kept in the show's record, as it is.
	 */
	readonly apart: KeyedItems<object> | undefined;
	/** What of it is left where only the prints of a file are compared. */
	left(diff: Diff): Left;
}

const nothingLeft: Left = {};
const asItIs = (value: unknown): unknown => value;

const counted = (count: number, what: string, how: string): readonly string[] =>
	count === 0 ? [] : [`${count} ${what}${count === 1 ? '' : 's'} ${how}`];

const rows: KeyedItems<Row> = { keyOf: ({ id }) => [id], merge: mergeRow, inOrder: byOrder };
const ticks: KeyedItems<Tick> = {
	keyOf: ({ row, copy, part, side }) => [row, copy, part, side],
	merge: replaceItem,
};
const hung: KeyedItems<HungTick> = { keyOf: ({ row }) => [row], merge: replaceItem };
const made: KeyedItems<MadeTick> = { keyOf: ({ row, copy, step }) => [row, copy, step], merge: replaceItem };
const cutSheets: KeyedItems<CutSheet> = { keyOf: ({ id }) => [id], merge: replaceItem };

/**
 * The parts of a show, in the sequence in which a show file has them. What is stored, undone, merged or written to files
 * is so because it stands here, and nowhere else.
 */
export const parts = {
	/** What the show is called. */
	name: {
		...singleValue<string>(),
		...{ nothing: 'Show', isInEvery: true, isToBackUp: true, apart: undefined },
		write: asItIs,
		read: (stored) => (typeof stored === 'string' ? { value: stored } : { problem: 'name is not a text' }),
		left: ({ after }: ValueDiff<string>) => ({
			sentence: `The file calls the show “${after}”; it keeps its name here.`,
		}),
	},
	/** The settings as typed; see `readSettings`. */
	settings: {
		...recordByKey(),
		...{ nothing: {}, isInEvery: true, isToBackUp: true, apart: undefined },
		write: asItIs,
		read: (stored): Reading<TypedSettings> => {
			if (!isRecord(stored)) return { problem: 'settings is not a record' };
			const problem = nestingProblem(stored);
			return problem === undefined ? { value: stored } : { problem: `settings${problem}` };
		},
		left: () => nothingLeft, // `settingsOfShow` compares them
	},
	/** How the rows and columns are looked at, as it is kept: no size and no cut follows from it. Absent: as it begins. */
	views: {
		...singleValue<unknown>(),
		...{ nothing: undefined, isInEvery: false, isToBackUp: false, apart: undefined },
		write: asItIs,
		read: (stored): Reading<unknown> => {
			if (typeof stored === 'number') return { value: undefined }; // one past all numbers would be written as none
			const problem = nestingProblem(stored);
			return problem === undefined ? { value: stored } : { problem: `views${problem}` };
		},
		left: () => nothingLeft, // each side looks at the prints in its own way
	},
	/** What is chosen to be printed, and on which paper, as it is kept; see `readPrinting`. Absent: nothing is chosen yet. */
	printing: {
		...singleValue<unknown>(),
		...{ nothing: undefined, isInEvery: false, isToBackUp: false, apart: undefined },
		write: asItIs,
		read: (stored): Reading<unknown> => {
			if (typeof stored === 'number') return { value: undefined }; // as with views
			const problem = nestingProblem(stored);
			return problem === undefined ? { value: stored } : { problem: `printing${problem}` };
		},
		left: () => nothingLeft, // nobody misses what was ticked to be printed elsewhere
	},
	/** The prints, in order. */
	rows: {
		...keyedList(rows),
		...{ nothing: [], isInEvery: true, isToBackUp: true, apart: rows },
		write: asItIs,
		read: readRowsJson,
		left: () => nothingLeft, // `core/merge` compares them cell by cell
	},
	/** What is ticked off at the bench; absent where nothing is. */
	ticks: {
		...keyedList(ticks),
		...{ nothing: [], isInEvery: false, isToBackUp: true, apart: ticks },
		write: ticksJson,
		read: readTicks,
		left: (diffs: readonly ItemDiff<Tick>[]) => {
			const cuts = diffs.filter((diff) => isCutTick(itemOf(diff))).length;
			return {
				done: [...counted(cuts, 'cut', 'ticked off'), ...counted(diffs.length - cuts, 'board', 'counted as spoilt')],
			};
		},
	},
	/** The sheets of board that the knife has begun: few; absent where there is none. */
	cutSheets: {
		...keyedList(cutSheets),
		...{ nothing: [], isInEvery: false, isToBackUp: true, apart: undefined },
		write: cutSheetsJson,
		read: readCutSheets,
		left: (diffs: readonly ItemDiff<CutSheet>[]) => ({ done: counted(diffs.length, 'sheet', 'started') }),
	},
	/** The prints that are ticked off as hung; absent where none is. */
	hung: {
		...keyedList(hung),
		...{ nothing: [], isInEvery: false, isToBackUp: true, apart: undefined },
		write: hungJson,
		read: readHung,
		left: (diffs: readonly ItemDiff<HungTick>[]) => ({ done: counted(diffs.length, 'print', 'hung') }),
	},
	/** The steps of making that each copy of a print has behind it; absent where none has. */
	made: {
		...keyedList(made),
		...{ nothing: [], isInEvery: false, isToBackUp: true, apart: made },
		write: asItIs,
		read: readMade,
		left: (diffs: readonly ItemDiff<MadeTick>[]) => ({
			done: counted(diffs.length, 'step', 'of finishing ticked off'),
		}),
	},
} as const satisfies Readonly<Record<string, Part<unknown, unknown>>>;

type Parts = typeof parts;

/** The name of a part of a show. */
export type PartName = keyof Parts;

/** What a show holds of a part. */
export type ValueOf<Name extends PartName> = Parts[Name] extends PartShape<infer Value, infer _> ? Value : never;

/** What an edit does to a part. */
export type DiffOf<Name extends PartName> = Parts[Name] extends PartShape<infer _, infer Diff> ? Diff : never;

/** The parts that every show has. */
export type PartInEvery = { [Name in PartName]: Parts[Name]['isInEvery'] extends true ? Name : never }[PartName];

/** The parts whose items are kept each by itself. */
export type PartApart = { [Name in PartName]: Parts[Name]['apart'] extends undefined ? never : Name }[PartName];
