// The same cells, worked out by the same core, shown by a general-purpose grid: what `npm run bench` measures ours
// against. `?rows=` says how many.
import { AllCommunityModule, createGrid, ModuleRegistry } from 'ag-grid-community';
import type { RowResult } from '../../../src/core/findings/rowResult.ts';
import { judgeRow } from '../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../src/core/show/row.ts';
import type { Settings } from '../../../src/core/settings/settings.ts';
import { withCells } from '../../../src/core/show/withCells.ts';
import { type CellView, cellViews } from '../../../src/ui/grid/cellView.ts';
import { gridColumns } from '../../../src/ui/grid/gridColumns.ts';
import { rowHeight } from '../../../src/ui/grid/slots.ts';
import { printCells } from '../printCells.ts';

const count = Number(new URLSearchParams(location.search).get('rows'));
let settings: Settings = readSettings({}).settings;

/** A row of the library's grid: the record and what it shows, made again when either changes. */
class Shown {
	row: Row;
	result: RowResult;
	views: readonly CellView[];

	constructor(row: Row) {
		this.row = row;
		this.result = judgeRow(row, settings);
		this.views = this.#made();
	}

	type(name: string, text: string): void {
		this.row = withCells(this.row, { [name]: text }, settings);
		this.follow();
	}

	follow(): void {
		this.result = judgeRow(this.row, settings);
		this.views = this.#made();
	}

	#made(): readonly CellView[] {
		return cellViews({ row: this.row, result: this.result, steps: [], settings }, gridColumns);
	}
}

const rows = Array.from({ length: count }, (_, order) => {
	return new Shown(withCells({ id: `r${order}`, order, typed: {} }, printCells(order), settings));
});

const element = document.getElementById('grid')!;
element.style.height = '640px';
ModuleRegistry.registerModules([AllCommunityModule]);
const grid = createGrid<Shown>(element, {
	rowData: rows,
	rowHeight,
	columnDefs: gridColumns.map(({ key, head, column, width, isFrozen }, place) => ({
		colId: key,
		headerName: head,
		width,
		...(isFrozen && { pinned: 'left' as const }),
		editable: column !== undefined,
		valueGetter: ({ data }) => data?.views[place]?.text,
		valueSetter: ({ data, newValue }) => {
			data.type(key, `${newValue ?? ''}`);
			return true;
		},
		cellClassRules: {
			worked: ({ data }) => data?.views[place]?.state === 'worked out',
			marked: ({ data }) => data?.views[place]?.level !== undefined,
		},
	})),
});

Object.assign(window, {
	/** Another overlap for the show: every row follows. */
	changeDefault(overlap: string) {
		settings = readSettings({ overlap }).settings;
		for (const row of rows) row.follow();
		grid.refreshCells({ force: true });
	},
});
