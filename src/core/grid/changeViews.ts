import type { Edit } from '../show/edit.ts';
import { parts } from '../show/parts.ts';
import type { Show } from '../show/show.ts';
import { type Views, writeViews } from './views.ts';

/** Changes how a show is looked at. */
export function changeViews(show: Show, views: Views, label: string): Edit {
	const diff = parts.views.compare(show.views, writeViews(views));
	return { label, rows: [], ...(diff && { views: diff }) };
}
