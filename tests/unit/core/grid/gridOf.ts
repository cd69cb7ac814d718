import type { GridShape } from '../../../../src/core/grid/move.ts';
import type { Selection } from '../../../../src/core/grid/selection.ts';

/**
 * A grid in lines: `.` a blank cell, `x` a filled one. `a` anchor, `h` head, `*` both in one cell; the active cell is
 * the anchor.
 */
export function gridOf(lines: string): { grid: GridShape; selection: Selection } {
	const rows = lines.trim().split(/\s+/);
	const find = (marks: string) => {
		const row = rows.findIndex((line) => [...marks].some((mark) => line.includes(mark)));
		return { row, column: [...rows[row]!].findIndex((mark) => marks.includes(mark)) };
	};
	const anchor = find('a*AB');
	const grid: GridShape = {
		rows: rows.length,
		columns: rows[0]!.length,
		pageRows: 2,
		hasHead: true,
		isFilled: ({ row, column }) => 'xABH'.includes(rows[row]![column]!),
	};
	return { grid, selection: { active: anchor, anchor, head: find('h*HB') } };
}
