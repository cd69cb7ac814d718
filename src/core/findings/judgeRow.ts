import { workOut } from '../row/workOut.ts';
import type { Settings } from '../settings/settings.ts';
import { isUntyped } from '../show/blankRow.ts';
import type { Row } from '../show/row.ts';
import { isAccepted } from './accepted.ts';
import { findRow } from './findRow.ts';
import type { RowResult } from './rowResult.ts';
import type { WorkedRow } from '../row/workedRow.ts';

/** Works a row out and judges it: what is found in it, what of that was accepted, and whether it must not be cut. */
export const judgeRow = (row: Row, settings: Settings): RowResult => judgeWorked(row, settings, workOut(row, settings));

/** Judges a row that is worked out already. */
export function judgeWorked(row: Row, settings: Settings, worked: WorkedRow): RowResult {
	const all = isUntyped(row) ? [] : findRow(row, settings, worked);
	const accepted = all.filter((finding) => isAccepted(finding, row));
	const findings = accepted.length === 0 ? all : all.filter((finding) => !accepted.includes(finding));
	const { read, words, inherited, hasMount, solution, solved, boards, frame, copies } = worked;
	const { onPaper, place, hinges, hangs, materials, framed } = worked;
	// Written out, for a spread takes a good part of the time that a row does.
	return {
		read,
		words,
		inherited,
		hasMount,
		solution,
		solved,
		boards,
		frame,
		onPaper,
		place,
		hinges,
		hangs,
		materials,
		framed,
		copies,
		findings,
		accepted,
		isStopped: findings.some(({ level }) => level === 'stop'),
	};
}
