import loadHighs, { type Highs, type InitOptions, type Model } from 'highs';
import type {
	LinearColumn,
	LinearLimits,
	LinearOutcome,
	LinearProgram,
	LinearSolver,
} from '../core/values/linearSolver.ts';

/**
 * Loads HiGHS, which solves linear programs. It is WebAssembly and works where it is called, so call it in a worker or
 * on the command line.
 * @param options where the WebAssembly lies; under Node it is found by itself
 */
export async function openHighs(options?: InitOptions): Promise<LinearSolver> {
	const highs = await loadHighs(options);
	return (isWhole) => openProgram(highs, isWhole);
}

function openProgram(highs: Highs, isWhole: boolean): LinearProgram {
	const model = highs.createModel();
	// Left alone, it calls the best of whole numbers what is within a ten-thousandth of it.
	model.options.set({ output_flag: false, random_seed: 1, mip_rel_gap: 0 });
	return {
		addRow: (lower, upper) => {
			model.addRow(lower, upper, { indices: [], values: [] });
		},
		addColumns: (columns) => {
			addColumns(model, columns, isWhole, highs);
		},
		solve: (limits) => solve(model, limits, highs),
		close: () => {
			model.dispose();
		},
	};
}

function addColumns(model: Model, columns: readonly LinearColumn[], isWhole: boolean, { constants }: Highs): void {
	if (columns.length === 0) return;
	const { numRows, numCols } = model.getDimensions();
	const starts = [0];
	for (const { rows } of columns) starts.push(starts.at(-1)! + rows.length);
	model.addCols({
		cost: Float64Array.from(columns, ({ cost }) => cost),
		lower: new Float64Array(columns.length),
		upper: Float64Array.from(columns, ({ most }) => most),
		matrix: {
			format: 'csc',
			numRows,
			numCols: columns.length,
			starts: Int32Array.from(starts),
			indices: Int32Array.from(columns.flatMap(({ rows }) => rows)),
			values: Float64Array.from(columns.flatMap(({ values }) => values)),
		},
	});
	if (!isWhole) return;
	const { integer } = constants.variableType;
	const added = { kind: 'range' as const, from: numCols, to: numCols + columns.length - 1 };
	model.changeColsIntegrality(added, new Array<typeof integer>(columns.length).fill(integer));
}

function solve(
	model: Model,
	{ seconds, target = -1e300, gap = 1e-6 }: LinearLimits,
	{ constants }: Highs,
): LinearOutcome {
	model.zeroAllClocks();
	model.options.set({ time_limit: Math.max(0, seconds), objective_target: target, mip_abs_gap: gap });
	model.run();
	const { optimal, infeasible, objectiveTarget, empty } = constants.modelStatus;
	const status = model.getModelStatus();
	if (status === infeasible) return { status: 'infeasible', cost: Infinity, values: undefined, duals: undefined };
	const isFound = model.info.get('primal_solution_status') === 2;
	const { colValue, rowDual } = model.getSolution();
	return {
		status: status === optimal || status === empty ? 'optimal' : 'stopped',
		cost: isFound || status === objectiveTarget ? model.getObjectiveValue() : Infinity,
		values: isFound ? colValue : undefined,
		duals: isFound ? rowDual : undefined,
	};
}
