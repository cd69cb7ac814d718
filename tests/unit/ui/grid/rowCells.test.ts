import { expect, test } from 'vitest';
import type { CellView } from '../../../../src/ui/grid/cellView.ts';
import { columnIndexOf, gridColumns } from '../../../../src/ui/grid/gridColumns.ts';
import { rowCells } from '../../../../src/ui/grid/rowCells.ts';
import type { RowView } from '../../../../src/ui/grid/rowViews.ts';

const columns = gridColumns.map((column, place) => ({
	...column,
	truePlace: place + 1,
	isFirst: false,
	shownWidth: column.width,
}));
const places = [0, 1, columnIndexOf('picture width'), columnIndexOf('mount')];
const [, title, width] = places as [number, number, number, number];
const none = { selectedFrom: -1, selectedTo: -1, drawnFrom: -1, drawnTo: -1, activeColumn: -1, isEditing: false };
const view = (more: Partial<RowView> = {}) => ({ ...none, places, ...more }) as RowView;
const shown = (text: string, state: CellView['state'], more: Partial<CellView> = {}): CellView => ({
	text,
	state,
	level: undefined,
	isUnread: false,
	...more,
});
const texts = [
	shown('', 'blank', { level: 'stop' }),
	shown('Low water', 'typed'),
	shown('300', 'worked out'),
	shown('Large', 'inherited', { level: 'look' }),
];

test('what is heard of a cell: what is missing, where its figure comes from, and what is said of it', () => {
	const cells = rowCells([], view(), columns, texts);
	expect(cells.map(({ heard }) => heard)).toEqual(['no number, can’t cut', '', 'worked out', 'from the show, check']);
	expect(cells.map(({ column, place }) => [column.key, place])).toEqual(
		places.map((place) => [gridColumns[place]!.key, place]),
	);
});

test('the active, edited, selected and drawn cells by their places among all columns', () => {
	const at = {
		activeColumn: width,
		isEditing: true,
		selectedFrom: title,
		selectedTo: width,
		drawnFrom: 0,
		drawnTo: title,
	};
	const cells = rowCells([], view(at), columns, texts);
	const of = (which: 'isActive' | 'isEdited' | 'isSelected' | 'isDrawn') => cells.map((cell) => Number(cell[which]));
	expect([of('isActive'), of('isEdited'), of('isSelected'), of('isDrawn')]).toEqual([
		[0, 0, 1, 0],
		[0, 0, 1, 0],
		[0, 1, 1, 0],
		[1, 1, 0, 0],
	]);
	expect(rowCells([], view({ ...at, isEditing: false }), columns, texts).some(({ isEdited }) => isEdited)).toBe(false);
});

test('a cell that shows what it showed is the same object; one that differs in anything is not', () => {
	const before = rowCells([], view(), columns, texts);
	const isKept = (after: ReturnType<typeof rowCells>) => after.map((cell) => before.includes(cell));
	expect(isKept(rowCells(before, view(), columns, [...texts]))).toEqual([true, true, true, true]);
	expect(isKept(rowCells(before, view({ activeColumn: width }), columns, texts))).toEqual([true, true, false, true]);
	const unread = texts.map((text, at) => (at === 1 ? { ...text, isUnread: true } : text));
	expect(isKept(rowCells(before, view(), columns, unread))).toEqual([true, false, true, true]);
	const fewer = view({ places: places.slice(1) });
	expect(isKept(rowCells(before, fewer, columns, texts.slice(1))), 'by its column').toEqual([true, true, true]);
});
