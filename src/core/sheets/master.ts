import type { Pattern } from './cutTree.ts';
import type { LinearColumn, LinearSolver } from '../values/linearSolver.ts';
import type { Problem } from './problem.ts';

/** What a master program is asked. */
export type MasterAim =
	/** The least cost, where a piece of each entry of the stock costs so much. */
	| { readonly kind: 'cost'; readonly sheets: readonly number[] }
	/** The least share of a mix that holds all blanks: over 1, the mix is not enough. */
	| { readonly kind: 'share'; readonly mix: readonly number[] };

/** A solved master program. */
export interface MasterOutcome {
	readonly cost: number;
	/** What a blank of each type is worth, not negative. */
	readonly worth: readonly number[];
}

/**
 * The linear program over patterns: every blank is covered, and no entry of the stock is cut more often than it may be.
 * Patterns may be cut a fraction of a time, so what it costs is less than any plan does.
 */
export interface Master {
	readonly patterns: readonly Pattern[];
	/** Adds a pattern, unless one with the same counts and entry is there. */
	add(pattern: Pattern): boolean;
	/** @returns undefined where the time ran out */
	solve(seconds: number): MasterOutcome | undefined;
	close(): void;
}

/** What a blank costs that no pattern covers: much, in blanks and in shares of a mix alike. */
const uncovered = 10;

/** Opens a master program with no patterns in it. */
export function openMaster({ types, sheets }: Problem, aim: MasterAim, openProgram: LinearSolver): Master {
	const program = openProgram(false);
	for (const { blanks } of types) program.addRow(blanks.length, Infinity);
	for (const { most } of sheets) program.addRow(-Infinity, aim.kind === 'cost' ? most : 0);
	program.addColumns(types.map((_, type) => ({ cost: uncovered, most: Infinity, rows: [type], values: [1] })));
	if (aim.kind === 'share') {
		const used = [...sheets.keys()].filter((sheet) => aim.mix[sheet]! > 0);
		const rows = used.map((sheet) => types.length + sheet);
		program.addColumns([{ cost: 1, most: Infinity, rows, values: used.map((sheet) => -aim.mix[sheet]!) }]);
	}
	const patterns: Pattern[] = [];
	const known = new Set<string>();
	let waiting: LinearColumn[] = [];
	return {
		patterns,
		add(pattern) {
			const key = `${pattern.sheet}: ${pattern.counts.join(' ')}`;
			if (known.has(key)) return false;
			known.add(key);
			patterns.push(pattern);
			waiting.push(columnOf(pattern, types.length, aim.kind === 'cost' ? aim.sheets[pattern.sheet]! : 0));
			return true;
		},
		solve(seconds) {
			program.addColumns(waiting);
			waiting = [];
			const { status, cost, duals } = program.solve({ seconds });
			if (status !== 'optimal' || duals === undefined) return undefined;
			return { cost, worth: types.map((_, type) => Math.max(0, duals[type]!)) };
		},
		close: () => {
			program.close();
		},
	};
}

/** The column of a pattern: the blanks it covers, and the piece of stock it takes. */
function columnOf({ sheet, counts }: Pattern, typeCount: number, cost: number): LinearColumn {
	const given = [...counts.keys()].filter((type) => counts[type]! > 0);
	return {
		cost,
		most: Infinity,
		rows: [...given, typeCount + sheet],
		values: [...given.map((type) => counts[type]!), 1],
	};
}
