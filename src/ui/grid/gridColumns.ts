import { capital } from '../../core/values/capital.ts';
import type { ViewColumn } from '../../core/grid/columnView.ts';
import { pictureColumn, resolutionColumn } from '../../core/grid/resolutionColumn.ts';
import { isFramingColumn } from '../../core/grid/framingColumns.ts';
import { sizeKeyOf } from '../../core/row/columnOfSize.ts';
import type { SolvedKey } from '../../core/row/solvedRow.ts';
import { type WordColumn, wordColumns } from '../../core/row/wordColumns.ts';
import { type ColumnName, hasUnit, kindOf } from '../../core/show/columns.ts';

/** A column of the grid: a typed column, or one that can only be worked out. */
export interface GridColumn {
	/** Names the column in the grid: the typed column's name, `steps`, `cost` or `findings`. */
	readonly key: ViewColumn;
	/** The typed column; undefined where nothing can be typed. */
	readonly column: ColumnName | undefined;
	/** The result that the column shows where nothing was typed. */
	readonly solved: SolvedKey | undefined;
	/** What stands over the column and its neighbours, once. */
	readonly group: string;
	/** What stands over the column, under the group. */
	readonly head: string;
	/** What the column is called by itself. */
	readonly label: string;
	/** Whether lengths in it are in the show's unit, which then stands in the group's head. */
	readonly hasUnit: boolean;
	/** In pixels at the usual size of type. Inches with their fractions need more. */
	readonly width: number;
	/** Whether figures stand in it, to the right. */
	readonly isFigure: boolean;
	/** Whether it stays where it is while the others are scrolled. */
	readonly isFrozen: boolean;
	/** What it may say, in a column of words: a list opens there. */
	readonly words: WordColumn | undefined;
}

interface Plan {
	readonly group: string;
	readonly columns: readonly (readonly [key: GridColumn['key'], head: string, width: number])[];
}

/**
 * Those up to the bottom border, with the grip of a finger, are in view beside the drawing of a tablet held landscape, and
 * with the mount's size on one held upright; a part of the next shows there too, as a sign that there are more.
 */
const plan: readonly Plan[] = [
	{
		group: 'Print',
		columns: [
			['number', 'no.', 44],
			['title', 'title', 172],
		],
	},
	{
		group: 'Picture',
		columns: [
			['shape', 'shape', 50],
			['picture width', 'width', 52],
			['picture height', 'height', 65],
		],
	},
	{
		group: 'Window',
		columns: [
			['window width', 'width', 46],
			['window height', 'height', 48],
		],
	},
	{
		group: 'Borders',
		columns: [
			['side', 'side', 45],
			['top', 'top', 44],
			['bottom', 'bottom', 52],
		],
	},
	{
		group: 'Mount',
		columns: [
			['mount', 'size', 80],
			['mount width', 'width', 66],
			['mount height', 'height', 66],
		],
	},
	{ group: 'Bench', columns: [['steps', 'steps', 104]] },
	{ group: 'Checks', columns: [['findings', 'in words', 320]] },
	{
		group: 'Overlap and reveal',
		columns: [
			['overlap', 'overlap', 76],
			['reveal', 'reveal', 72],
			['signing space', 'signing space', 104],
			['bottom weight', 'bottom +', 92],
			['inner mount', 'inner shows', 92],
		],
	},
	{
		group: 'Materials',
		columns: [
			['paper', 'paper', 116],
			['margin left', 'margin left', 84],
			['margin top', 'margin top', 84],
			['surface', 'surface', 116],
			['board', 'board', 128],
			['inner board', 'inner', 128],
		],
	},
	{
		group: 'Frame',
		columns: [
			['mounting', 'mounting', 92],
			['frame', 'frame', 116],
			['glazing', 'glazing', 84],
			['spacer', 'spacer', 68],
			['backing', 'backing', 84],
			['framed width', 'framed width', 84],
			['framed height', 'framed height', 84],
			['play', 'play', 64],
			['seen border', 'seen', 116],
			['stack', 'stack', 64],
			['weight', 'weight', 104],
			['hinges', 'hinges', 64],
		],
	},
	{
		group: 'File',
		columns: [
			[pictureColumn, 'picture', 72],
			['picture file', 'picture file', 150],
			['pixels', 'pixels', 104],
			[resolutionColumn, 'pixels an inch', 104],
		],
	},
	{
		group: 'Wall',
		columns: [
			['wall', 'wall', 104],
			['hang order', 'order', 68],
			['hang left', 'left', 76],
			['hang centre', 'centre', 76],
			['drop', 'drop', 68],
			['hook height', 'hook', 76],
		],
	},
	{
		group: 'Record',
		columns: [
			['maker', 'maker', 164],
			['edition', 'edition', 84],
			['medium', 'medium', 128],
			['year', 'year', 68],
			['signed on', 'signed where', 100],
			['copies', 'copies', 68],
			['cost', 'cost', 84],
			['net', 'net', 84],
			['price', 'price', 84],
			['value', 'value', 84],
			['stage', 'stage', 104],
			['buyer', 'buyer', 150],
			['accepted', 'accepted', 148],
			['note', 'note', 224],
		],
	},
];

const labels: Partial<Record<GridColumn['key'], string>> = {
	mount: 'Mount size',
	'bottom weight': 'Bottom +',
	'inner mount': 'Inner shows',
	'signed on': 'Signed where',
	findings: 'Checks in words',
	'margin left': 'Margin left of the picture',
	'margin top': 'Margin above the picture',
	side: 'Side border',
	top: 'Top border',
	bottom: 'Bottom border',
	'seen border': 'Borders seen in the frame',
	stack: 'Stack depth in the frame',
	picture: 'Small picture',
	play: 'Play in the rebate',
	'hang left': 'Distance from the wall’s left',
	'hang centre': 'Height of its middle',
	drop: 'Drop, from the frame’s top to the hook',
	'hook height': 'Height of its hook',
	steps: 'Bench steps',
	cost: 'Cost of the print',
	net: 'Net, what the maker wants',
	value: 'Insurance value',
};

/** The columns of the grid, in the order that they have by themselves. */
export const gridColumns: readonly GridColumn[] = plan.flatMap(({ group, columns }) =>
	columns.map(([key, head, width]) => {
		const column =
			key === 'steps' ||
			key === 'findings' ||
			key === 'cost' ||
			key === resolutionColumn ||
			key === pictureColumn ||
			isFramingColumn(key)
				? undefined
				: (key satisfies ColumnName);
		const kind = column === undefined ? 'text' : kindOf(column);
		return {
			key,
			column,
			solved: column === undefined ? undefined : sizeKeyOf(column),
			group,
			head,
			label: labels[key] ?? capital(key),
			hasUnit: column !== undefined && hasUnit(column) && key !== 'bottom weight' && key !== 'mount',
			width,
			isFigure:
				key === 'cost' ||
				key === resolutionColumn ||
				isFramingColumn(key) ||
				kind === 'length' ||
				kind === 'space' ||
				kind === 'weight' ||
				kind === 'count',
			isFrozen: key === 'number' || key === 'title',
			words: column && wordColumns[column],
		};
	}),
);

/** A head that stands over neighbouring columns. */
export interface ColumnGroup {
	readonly group: string;
	/** Place of its first column among those shown, from 0. */
	readonly start: number;
	readonly count: number;
	/** Whether its lengths are in the show's unit. */
	readonly hasUnit: boolean;
	readonly isFrozen: boolean;
}

/** The heads over columns, from the left: one over each run of neighbours that belong together. */
export function groupsOf(columns: readonly GridColumn[]): readonly ColumnGroup[] {
	const starts = columns.flatMap(({ group }, place) => (columns[place - 1]?.group === group ? [] : place));
	return starts.map((start, place) => {
		const own = columns.slice(start, starts[place + 1]);
		return {
			group: own[0]!.group,
			start,
			count: own.length,
			hasUnit: own.some((column) => column.hasUnit),
			isFrozen: own.every((column) => column.isFrozen),
		};
	});
}

/** Place of a column in the order that columns have by themselves, from 0; -1 where the grid has no such column. */
export const columnIndexOf = (key: string): number => gridColumns.findIndex((column) => column.key === key);

/** The columns of the grid that a finding's cell stands in: its key of the results, or a column's name. */
export function columnOfFindingCell(cell: string): GridColumn['key'] | undefined {
	if (cell.startsWith('overlap') && cell !== 'overlap') return 'overlap';
	return gridColumns.find(({ key, solved }) => solved === cell || key === cell)?.key;
}
