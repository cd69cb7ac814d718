import { isAccepted } from '../findings/accepted.ts';
import { findRow } from '../findings/findRow.ts';
import type { Row } from '../show/row.ts';
import type { Settings } from '../show/settings.ts';
import { readCells } from './readCells.ts';
import type { RowResult } from './rowResult.ts';
import { solveRow } from './solveRow.ts';

/** Works a row out from its typed cells and the show's settings: the sizes, and what the row is told. */
export function workOut(row: Row, settings: Settings): RowResult {
	const read = readCells(row, settings);
	const solution = solveRow(read.cells, settings);
	const isEmpty = Object.keys(row.typed).length === 0;
	const all = isEmpty ? [] : findRow(row, settings, read, solution);
	const accepted = all.filter((finding) => isAccepted(finding, row));
	const findings = accepted.length === 0 ? all : all.filter((finding) => !accepted.includes(finding));
	return {
		solved: solution.solved,
		findings,
		accepted,
		isStopped: findings.some(({ level }) => level === 'stop'),
		// A row in which nothing is typed yet is no print: nothing is cut for it.
		copies: isEmpty ? 0 : read.copies,
		innerMount: read.cells.innerMount,
	};
}
