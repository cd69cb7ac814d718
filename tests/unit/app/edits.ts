import type { Session } from '../../../src/app/session.svelte.ts';
import { spoilBoard, tickCuts } from '../../../src/core/bench/tickCuts.ts';
import type { CutSheet } from '../../../src/core/show/cutSheet.ts';
import { handBack, markCut, spoilSheet, tickKnife } from '../../../src/core/sheets/markSheets.ts';
import type { NewRow } from '../../../src/core/commands/addRows.ts';
import { changeSettings } from '../../../src/core/commands/changeSettings.ts';
import { duplicateRows } from '../../../src/core/commands/duplicateRows.ts';
import type { Command, Edit, FocusOfEdit } from '../../../src/core/show/edit.ts';
import { moveRows } from '../../../src/core/commands/moveRows.ts';
import { removeRows } from '../../../src/core/commands/removeRows.ts';
import { rename } from '../../../src/core/commands/rename.ts';
import { replaceShow } from '../../../src/core/commands/replaceShow.ts';
import type { RowId } from '../../../src/core/show/row.ts';
import type { Show } from '../../../src/core/show/show.ts';
import { typeAndAdd } from '../../../src/core/commands/typeAndAdd.ts';
import { type CellChange, typeCells } from '../../../src/core/commands/typeCells.ts';

/** The edits of a session, as the screens make them. */
export function on(session: Session) {
	const make = (command: Command, focus?: FocusOfEdit) => session.do(command, focus);
	const newIds = ({ length }: { readonly length: number }) => Array.from({ length }, session.makeId);
	return {
		typeCells: (changes: readonly CellChange[], label: string, focus?: FocusOfEdit) =>
			make((show, settings) => typeCells(show, changes, settings, label), focus),
		addRows: (rows: readonly NewRow[], at: number, label: string, focus?: FocusOfEdit): readonly RowId[] => {
			const ids = newIds(rows);
			make((show, settings) => typeAndAdd(show, [], { rows, at, ids }, settings, label), focus);
			return ids;
		},
		removeRows: (ids: readonly RowId[], label = 'Remove row') => make((show) => removeRows(show, ids, label)),
		moveRows: (ids: readonly RowId[], to: number, label = 'Move row') => make((show) => moveRows(show, ids, to, label)),
		duplicateRows: (ids: readonly RowId[]): readonly RowId[] => {
			const copies = newIds(ids);
			make((show) => duplicateRows(show, ids, copies, 'Duplicate row'));
			return copies;
		},
		changeSettings: (changes: Readonly<Record<string, unknown>>, label = 'Change settings') =>
			make((show) => changeSettings(show, changes, label)),
		rename: (name: string) => make((show) => rename(show, name, 'Rename show')),
		replaceShow: (next: Omit<Show, 'id'>, label: string) =>
			make((show) => replaceShow(show, next, session.makeId, label)),
		take: (edit: Edit) => make(() => edit),
		tickCuts: (...[cuts, isMade, label]: Tail<typeof tickCuts>) => make((show) => tickCuts(show, cuts, isMade, label)),
		spoilBoard: (...[mount, label]: Tail<typeof spoilBoard>) => make((show) => spoilBoard(show, mount, label)),
		tickKnife: (...[cuts, isMade, label]: Tail<typeof tickKnife>) =>
			make((show) => tickKnife(show, cuts, isMade, label)),
		markCut: (sheets: readonly CutSheet[], label: string) => make((show) => markCut(show, sheets, label)),
		handBack: (sheets: readonly CutSheet[], label: string) => make((show) => handBack(show, sheets, label)),
		spoilSheet: (sheet: CutSheet, label: string) => make((show) => spoilSheet(show, sheet, label)),
	};
}

type Tail<Make> = Make extends (show: Show, ...rest: infer Rest) => Edit ? Rest : never;
