import type { Edit } from '../show/edit.ts';
import { parts } from '../show/parts.ts';
import { type Printing, readPrinting } from '../show/printing.ts';
import type { Show } from '../show/show.ts';

/** Chooses what is printed of a show, or how; what is not named stays as it is. */
export function choosePrinting(show: Show, choice: Partial<Printing>, label: string): Edit {
	const printing: Printing = { ...readPrinting(show.printing), ...choice };
	const diff = parts.printing.compare(show.printing, printing);
	return { label, rows: [], ...(diff && { printing: diff }) };
}
