import { pictureColumn } from './resolutionColumn.ts';
import { framingColumns } from './framingColumns.ts';
import { type ColumnView, frozenColumns, type ViewColumn, viewColumns, wholeOrder } from './columnView.ts';

/** The view that shows every column, in which a show begins. */
export const everyColumn = 'Every column';

function viewOf(name: string, shown: readonly ViewColumn[]): ColumnView {
	const isShown = new Set<ViewColumn>([...frozenColumns, ...shown]);
	const hidden = new Set(viewColumns.filter((column) => !isShown.has(column)));
	return { name, order: wholeOrder(shown), hidden, widths: new Map() };
}

/** What views for a purpose are called now, by what they were called in shows that were kept before. */
export const namesNow: ReadonlyMap<string, string> = new Map([
	['Allowances', 'Overlap and reveal'],
	['Stock', 'Materials'],
	['Sales', 'Prices'],
]);

/** The views that every show has, each for a purpose. Changed, they are kept under the same name. */
export const purposeViews: readonly ColumnView[] = [
	viewOf(everyColumn, viewColumns),
	viewOf('Sizing', [
		...([
			'shape',
			'picture width',
			'picture height',
			'window width',
			'window height',
			'side',
			'top',
			'bottom',
		] as const),
		...(['mount', 'findings'] as const),
	]),
	viewOf('Overlap and reveal', [
		...(['picture width', 'picture height', 'paper', 'signed on', 'overlap', 'reveal', 'signing space'] as const),
		...(['bottom weight', 'inner mount', 'findings'] as const),
	]),
	viewOf('Cutting', [
		...([
			'board',
			'inner board',
			'copies',
			'mount width',
			'mount height',
			'side',
			'top',
			'bottom',
			'steps',
			'inner mount',
		] as const),
		...(['findings'] as const),
	]),
	viewOf('Materials', [
		...(['copies', 'mount width', 'mount height', 'board', 'paper', 'surface', 'frame', 'glazing', 'spacer'] as const),
		'cost' as const,
		...(['findings'] as const),
	]),
	viewOf('Framing', [
		...(['copies', 'mount', 'frame', 'mounting', 'paper', 'margin left', 'margin top'] as const),
		...(['glazing', 'spacer', 'backing', ...framingColumns, 'findings'] as const),
	]),
	viewOf('Hanging', [
		...([pictureColumn, 'wall', 'hang order', 'hang left', 'hang centre', 'drop', 'hook height', 'frame'] as const),
		...(['framed width', 'framed height', 'weight', 'findings', 'maker', 'price', 'note'] as const),
	]),
	viewOf('Labels', [
		pictureColumn,
		'maker',
		'edition',
		'medium',
		'year',
		'signed on',
		'picture width',
		'picture height',
		'price',
		'note',
	]),
	viewOf('Prices', ['maker', 'edition', 'net', 'price', 'value', 'stage', 'buyer', 'note']),
];
