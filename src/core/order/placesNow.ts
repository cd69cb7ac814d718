import type { BoardPlan } from '../sheets/boardPlan.ts';
import type { Row, RowId } from '../show/row.ts';
import type { StickPlan } from '../sticks/stickPlan.ts';

/** Plans of boards and sticks, with the places at which their prints stand now. */
export interface PlansNow {
	readonly plans: readonly BoardPlan[];
	readonly sticks: readonly StickPlan[];
}

/**
 * Plans whose rows are counted as they stand now: a plan is older than the rows until the next one comes, and prints may
 * have moved or gone since. What is of a print that is gone is of place 0.
 */
export function placesNow({ plans, sticks }: PlansNow, rows: readonly Row[]): PlansNow {
	const places = new Map(rows.map(({ id }, place) => [id, place + 1]));
	const now = <Own extends { readonly row: number; readonly rowId?: RowId | undefined }>(own: Own): Own => {
		const row = own.rowId === undefined ? 0 : (places.get(own.rowId) ?? 0);
		return row === own.row ? own : { ...own, row };
	};
	return {
		plans: plans.map((plan) => ({
			...plan,
			layouts: plan.layouts.map((layout) => ({ ...layout, blanks: layout.blanks.map(now) })),
			unplaced: plan.unplaced.map((each) => ({ ...each, blank: now(each.blank) })),
		})),
		sticks: sticks.map((plan) => ({
			...plan,
			sticks: plan.sticks.map((stick) => ({ ...stick, legs: stick.legs.map(now) })),
			tooLong: plan.tooLong.map(now),
		})),
	};
}
