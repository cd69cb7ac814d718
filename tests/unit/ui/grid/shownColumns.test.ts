import { expect, test } from 'vitest';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { firstViews } from '../../../../src/core/grid/views.ts';
import { ShownColumns } from '../../../../src/ui/grid/shownColumns.svelte.ts';

/** What a tablet held landscape has for columns beside the drawing, and a grip for fingers; in pixels. */
const [room, grip] = [674, 44];

test.each(['mm', 'in'] as const)(
	'all borders are in view beside the drawing in a show in %s, and that more follows',
	(unit) => {
		const { settings } = readSettings({ unit });
		const columns = new ShownColumns({ views: firstViews, settings, do: () => undefined });
		const end = columns.list.findIndex(({ key }) => key === 'bottom');
		const wide = columns.list.slice(0, end + 1).reduce((sum, { shownWidth }) => sum + shownWidth, grip);
		expect(end).toBe(9);
		expect(room - wide).toBeGreaterThanOrEqual(10);
	},
);
