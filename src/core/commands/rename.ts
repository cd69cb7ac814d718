import type { Edit } from '../show/edit.ts';
import type { Show } from '../show/show.ts';

/** Gives the show another name. */
export const rename = (show: Show, name: string, label: string): Edit => ({
	label,
	rows: [],
	...(name !== show.name && { name: { before: show.name, after: name } }),
});
