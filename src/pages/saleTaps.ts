import type { Session } from '../app/session.svelte.ts';
import { typeCells } from '../core/commands/typeCells.ts';
import type { Sale } from '../core/record/sales.ts';
import { afterCollected, afterSold, type FormerStages, type StageChange } from '../core/record/stageAfter.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';
import type { RowId } from '../core/show/row.ts';

/** What prints were before they were sold here, as long as the show is open. */
const known = new WeakMap<Session, Map<RowId, FormerStages>>();

function formerOf(session: Session, { row: { id } }: Sale): FormerStages {
	const hangs = session.show.hung?.some(({ row }) => row === id) ?? false;
	return known.get(session)?.get(id) ?? (hangs ? { unsold: 'hung' } : {});
}

function setStage(session: Session, { row, place }: Sale, { stage, former }: StageChange, label: string): void {
	const all = known.get(session) ?? new Map<RowId, FormerStages>();
	known.set(session, all.set(row.id, former));
	const name = nameOfPrint(row, place);
	session.do((show, settings) => typeCells(show, [{ id: row.id, cells: { stage } }], settings, `${label}: ${name}`));
}

/** Says that a print is sold, or, where it is said, takes that back. One step of undo. */
export function tapSold(session: Session, sale: Sale): void {
	const change = afterSold(sale.row.typed.stage ?? '', sale.isSold, formerOf(session, sale));
	setStage(session, sale, change, sale.isSold ? 'Mark not sold' : 'Mark sold');
}

/** Says that a print is collected, or, where it is said, takes that back. One step of undo. */
export function tapCollected(session: Session, sale: Sale): void {
	const change = afterCollected(sale.row.typed.stage ?? '', sale, formerOf(session, sale));
	setStage(session, sale, change, sale.isCollected ? 'Mark not collected' : 'Mark collected');
}
