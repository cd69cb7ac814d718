import type { Pattern } from './cutTree.ts';
import type { LinearColumn, LinearSolver } from './linearSolver.ts';
import type { Problem } from './problem.ts';

/** What a master program is asked to make least. */
export interface MasterCosts {
	/** Of one piece of each entry of the stock. */
	readonly sheets: readonly number[];
	/** Of each blank, by type, that no pattern covers. */
	readonly uncovered: readonly number[];
}

/** A solved master program. */
export interface MasterOutcome {
	readonly cost: number;
	/** How often each pattern is cut, in the order in which they were added; not whole. */
	readonly times: readonly number[];
	/** What a blank of each type is worth, not negative. */
	readonly worth: readonly number[];
	/** What a further piece of each entry of the stock would save, not negative. */
	readonly sheetWorth: readonly number[];
}

/**
 * The linear program over patterns: every blank is covered or paid for, and no entry of the stock is cut more often than
 * it may be. Patterns may be cut a fraction of a time, so what it costs is less than any plan does.
 */
export interface Master {
	readonly patterns: readonly Pattern[];
	/** Adds a pattern, unless one with the same counts and entry is there. */
	add(pattern: Pattern): boolean;
	/** Sets how often each entry of the stock may be cut. */
	setMost(most: readonly number[]): void;
	/** @returns undefined where the time ran out */
	solve(seconds: number): MasterOutcome | undefined;
	close(): void;
}

/** Opens a master program with no patterns in it. */
export function openMaster({ types, sheets }: Problem, costs: MasterCosts, openProgram: LinearSolver): Master {
	const program = openProgram(false);
	for (const { blanks } of types) program.addRow(blanks.length, Infinity);
	for (const { most } of sheets) program.addRow(-Infinity, most);
	program.addColumns(
		types.map((_, type) => ({ cost: costs.uncovered[type]!, most: Infinity, rows: [type], values: [1] })),
	);
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
			waiting.push(columnOf(pattern, types.length, costs.sheets[pattern.sheet]!));
			return true;
		},
		setMost: (most) => {
			most.forEach((bound, sheet) => {
				program.setRow(types.length + sheet, -Infinity, bound);
			});
		},
		solve(seconds) {
			program.addColumns(waiting);
			waiting = [];
			const { status, cost, values, duals } = program.solve({ seconds });
			if (status !== 'optimal' || values === undefined || duals === undefined) return undefined;
			return {
				cost,
				times: [...values.subarray(types.length)],
				worth: types.map((_, type) => Math.max(0, duals[type]!)),
				sheetWorth: sheets.map((_, sheet) => Math.max(0, -duals[types.length + sheet]!)),
			};
		},
		close: () => {
			program.close();
		},
	};
}

/** The column of a pattern: the blanks it covers, and the piece of stock it takes. */
export function columnOf({ sheet, counts }: Pattern, typeCount: number, cost: number): LinearColumn {
	const given = [...counts.keys()].filter((type) => counts[type]! > 0);
	return {
		cost,
		most: Infinity,
		rows: [...given, typeCount + sheet],
		values: [...given.map((type) => counts[type]!), 1],
	};
}
