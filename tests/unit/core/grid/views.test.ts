import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	columnsOf,
	type ColumnView,
	hideColumns,
	moveColumns,
	showColumn,
	sizeColumn,
	viewColumns,
	wholeOrder,
} from '../../../../src/core/grid/columnView.ts';
import { everyColumn, purposeViews } from '../../../../src/core/grid/purposeViews.ts';
import {
	allViews,
	firstViews,
	readViews,
	activeView,
	type Views,
	withoutView,
	withView,
	writeViews,
} from '../../../../src/core/grid/views.ts';
import { changeViews } from '../../../../src/core/grid/changeViews.ts';
import { apply, invert, isEmpty } from '../../../../src/core/show/edit.ts';
import { readSettings, unknownSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Show } from '../../../../src/core/show/show.ts';

const every = purposeViews[0]!;
const firstOf = (view: ColumnView, count: number) => columnsOf(view).slice(0, count);
const read = (value: unknown) => {
	const problems: string[] = [];
	const views = readViews(value, { report: (key, problem) => void problems.push(`${key}: ${problem}`) });
	return { views, problems };
};

test('columns are hidden and shown again in their place; number and title stay', () => {
	const hidden = hideColumns(every, ['number', 'shape', 'picture height']);
	expect(firstOf(hidden, 4)).toEqual(['number', 'title', 'picture width', 'window width']);
	expect(firstOf(showColumn(hidden, 'shape'), 4)).toEqual(['number', 'title', 'shape', 'picture width']);
});

test('columns move among those that are shown; number and title stay first', () => {
	expect(firstOf(moveColumns(every, ['shape'], 4), 5)).toEqual([
		'number',
		'title',
		'picture width',
		'shape',
		'picture height',
	]);
	expect(firstOf(moveColumns(every, ['side', 'top'], 0), 5)).toEqual(['number', 'title', 'side', 'top', 'shape']);
	expect(moveColumns(every, ['title'], 5)).toEqual(every);
	expect(columnsOf(moveColumns(every, ['shape'], 99)).at(-1)).toBe('shape');
});

test('widths are whole pixels within bounds', () => {
	const width = (asked: number) => sizeColumn(every, 'title', asked).widths.get('title');
	expect([width(12), width(180.4), width(5000)]).toEqual([44, 180, 640]);
});

test('columns that a view does not name stand where they stand by themselves', () => {
	expect(wholeOrder(['note', 'shape']).slice(0, 4)).toEqual(['number', 'title', 'note', 'shape']);
	expect([...wholeOrder(['top', 'side'])].sort()).toEqual([...viewColumns].sort());
});

test('a view for a purpose that is changed is the show’s own, and put back it is none of it', () => {
	const changed = withView(firstViews, hideColumns(activeView(firstViews), ['shape']));
	expect(changed.own.map(({ name }) => name)).toEqual([everyColumn]);
	expect(columnsOf(activeView(changed))).not.toContain('shape');
	expect(withView(changed, showColumn(activeView(changed), 'shape')).own).toEqual([]);
	expect(withoutView(changed, everyColumn)).toEqual(firstViews);
	const kept = withView(changed, { ...activeView(changed), name: 'My wall' });
	expect(allViews(kept).map(({ name }) => name)).toEqual([...purposeViews.map(({ name }) => name), 'My wall']);
	expect(withoutView(kept, 'My wall').active).toBe(everyColumn);
});

test('what is written is read again the same, whatever was done to the columns', () => {
	const column = fc.constantFrom(...viewColumns);
	const step = fc.oneof(
		column.map((key) => (view: ColumnView) => hideColumns(view, [key])),
		column.map((key) => (view: ColumnView) => showColumn(view, key)),
		fc.tuple(column, fc.nat(40)).map(
			([key, to]) =>
				(view: ColumnView) =>
					moveColumns(view, [key], to),
		),
		fc.tuple(column, fc.nat(900)).map(
			([key, width]) =>
				(view: ColumnView) =>
					sizeColumn(view, key, width),
		),
	);
	fc.assert(
		fc.property(fc.array(step, { maxLength: 8 }), fc.constantFrom('Sizing', 'My wall'), (steps, name) => {
			const begun = { ...(purposeViews.find((view) => view.name === name) ?? every), name };
			const views = withView(
				{ ...firstViews, sort: { column: 'title', way: 'down' } },
				steps.reduce<ColumnView>((view, next) => next(view), begun),
			);
			const again = read(JSON.parse(JSON.stringify(writeViews(views) ?? null)));
			expect(again.problems).toEqual([]);
			expect(again.views).toEqual(views);
		}),
	);
});

test.each([
	{ value: undefined, problems: [] },
	{ value: 'Sizing', problems: ['views: Sizing is not a record of views'] },
	{ value: { inHand: 'Nowhere' }, problems: ['views.inHand: Nowhere is none of the views'] },
	{ value: { sort: { column: 'weather', way: 'up' } }, problems: ['views.sort: a record names no column of the grid'] },
	{ value: { sort: { column: 'title', way: 'round' } }, problems: ['views.sort.way: round is none of: up, down'] },
	{ value: { list: [{ order: [] }] }, problems: ['views.list[0].name: the name is missing'] },
	{
		value: { list: [{ name: 'Mine', order: ['title', 'weather'], hidden: 'shape', widths: { title: 3 } }] },
		problems: [
			'views.list[0].order: weather is no column of the grid',
			'views.list[0].hidden: shape is not a list',
			'views.list[0].widths.title: 3 is not a column’s width in pixels, 44 to 640',
		],
	},
])('$value: $problems', ({ value, problems }) => {
	expect(read(value).problems).toEqual(problems);
});

test('how a show is looked at is no part of what its rows are worked out by', () => {
	const shown: Show = { id: 'show', name: 'Spring', settings: { border: '70' }, rows: [] };
	const sorted: Views = { ...firstViews, active: 'Sizing', sort: { column: 'title', way: 'up' } };
	const edit = changeViews(shown, sorted, 'Sort');
	const after = apply(shown, edit);
	expect(after.settings).toBe(shown.settings);
	expect(after.rows).toBe(shown.rows);
	expect(read(after.views).views).toEqual(sorted);
	expect(apply(after, invert(edit))).toStrictEqual(shown);
	expect(isEmpty(changeViews(after, sorted, 'Sort'))).toBe(true);
});

test('views that a file of settings gives are known, and change none of them', () => {
	const typed = { views: { inHand: 'Sizing' } };
	expect(readSettings(typed)).toEqual(readSettings({}));
	expect(unknownSettings(typed)).toEqual([]);
});

test('a view whose name another before it has is reported and left out', () => {
	const problems: string[] = [];
	const report = (key: string, problem: string) => void problems.push(`${key}: ${problem}`);
	const { own } = readViews(
		{ list: [{ name: 'Mine' }, { name: 'Mine ', hidden: ['title'] }, { name: 'Yours' }] },
		{ report },
	);
	expect(own.map(({ name, hidden }) => [name, hidden.size])).toEqual([
		['Mine', 0],
		['Yours', 0],
	]);
	expect(problems).toEqual([
		'views.list[1].name: “Mine” is the name of a view before it too, and only that one is shown',
	]);
});

test('a view for a purpose is known by the name that it had when the show was kept', () => {
	const problems: string[] = [];
	const read = readViews(
		{ inHand: 'Stock', list: [{ name: 'Sales', hidden: ['note'] }] },
		{ report: (key, problem) => problems.push(`${key}: ${problem}`) },
	);
	expect([read.active, ...read.own.map(({ name }) => name), ...problems]).toEqual(['Materials', 'Prices']);
	expect(allViews(read)).toHaveLength(purposeViews.length);
});
