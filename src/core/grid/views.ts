import { isAbsent, recordsOf, type SettingContext } from '../settings/settingValue.ts';
import { shown } from '../values/shownText.ts';
import { isRecord } from '../values/isRecord.ts';
import { type ColumnView, isSameView, isViewColumn, type ViewColumn, widthBounds, wholeOrder } from './columnView.ts';
import { everyColumn, namesNow, purposeViews } from './purposeViews.ts';
import type { Sort } from './sortRows.ts';

/** How the rows and columns of a show are looked at. No size and no cut follows from it. */
export interface Views {
	/** The name of the active view. */
	readonly active: string;
	/** The views that are the show's own: others than those for a purpose, and those that were changed. */
	readonly own: readonly ColumnView[];
	/** What the rows are sorted by; undefined: they stand in the show's own order. */
	readonly sort: Sort | undefined;
}

/** How a show is looked at before anyone has said anything. */
export const firstViews: Views = { active: everyColumn, own: [], sort: undefined };

/** The active view. */
export const activeView = ({ active, own }: Views): ColumnView => viewNamed(active, own) ?? purposeViews[0]!;

/** All views that can be selected: those for a purpose first, as they were changed, then the show's own. */
export const allViews = ({ own }: Views): readonly ColumnView[] => [
	...purposeViews.map((view) => own.find(({ name }) => name === view.name) ?? view),
	...own.filter(({ name }) => !isPurpose(name)),
];

const viewNamed = (wanted: string, own: readonly ColumnView[]): ColumnView | undefined =>
	[...own, ...purposeViews].find(({ name }) => name === wanted);

/** Whether every show has a view of this name. */
export const isPurpose = (wanted: string): boolean => purposeViews.some(({ name }) => name === wanted);

/** The views with one of them as it is now, active; one for a purpose that is as it began is none of the show's own. */
export function withView(views: Views, view: ColumnView): Views {
	const isKnown = views.own.some(({ name }) => name === view.name);
	const own = isKnown ? views.own.map((each) => (each.name === view.name ? view : each)) : [...views.own, view];
	const isAsBegun = (each: ColumnView) =>
		purposeViews.some((begun) => begun.name === each.name && isSameView(begun, each));
	return { ...views, active: view.name, own: own.filter((each) => !isAsBegun(each)) };
}

/** The views without one of them: one for a purpose is as it began then, another is gone. */
export const withoutView = (views: Views, wanted: string): Views => ({
	...views,
	active: views.active === wanted && !isPurpose(wanted) ? everyColumn : views.active,
	own: views.own.filter(({ name }) => name !== wanted),
});

/**
 * Reads how a show is looked at, as it is kept. What cannot be read is reported and left out; columns that a view does not
 * name are where they stand by themselves.
 */
export function readViews(value: unknown, context: Pick<SettingContext, 'report'>): Views {
	if (isAbsent(value)) return firstViews;
	if (!isRecord(value)) {
		context.report('views', `${shown(value)} is not a record of views`);
		return firstViews;
	}
	const names = new Set<string>();
	const full = { ...context, unit: 'mm', sizes: [] } as const;
	const own = recordsOf(value['list'], 'views.list', full).flatMap(([record, key]): ColumnView | readonly [] => {
		const name = nameNow(record['name']);
		if (typeof name !== 'string' || name === '') {
			context.report(`${key}.name`, 'the name is missing');
			return [];
		}
		if (names.has(name)) {
			context.report(`${key}.name`, `“${name}” is the name of a view before it too, and only that one is shown`);
			return [];
		}
		names.add(name);
		const order = wholeOrder(readColumns(record['order'], `${key}.order`, context));
		const hidden = new Set(readColumns(record['hidden'], `${key}.hidden`, context));
		return { name, order, hidden, widths: readWidths(record['widths'], `${key}.widths`, context) };
	});
	return { active: readActive(nameNow(value['inHand']), own, context), own, sort: readSort(value['sort'], context) };
}

/** A name as it is kept, or what a view for a purpose with that name is called now. */
const nameNow = (kept: unknown): unknown =>
	typeof kept === 'string' ? (namesNow.get(kept.trim()) ?? kept.trim()) : kept;

type Report = Pick<SettingContext, 'report'>;

function readActive(value: unknown, own: readonly ColumnView[], { report }: Report): string {
	if (isAbsent(value)) return everyColumn;
	if (typeof value === 'string' && viewNamed(value, own)) return value;
	report('views.inHand', `${shown(value)} is none of the views`);
	return everyColumn;
}

function readColumns(value: unknown, key: string, { report }: Report): readonly ViewColumn[] {
	if (isAbsent(value)) return [];
	if (!Array.isArray(value)) {
		report(key, `${shown(value)} is not a list`);
		return [];
	}
	return value.filter((name: unknown): name is ViewColumn => {
		if (isViewColumn(name)) return true;
		report(key, `${shown(name)} is no column of the grid`);
		return false;
	});
}

function readWidths(value: unknown, key: string, { report }: Report): ReadonlyMap<ViewColumn, number> {
	const widths = new Map<ViewColumn, number>();
	if (isAbsent(value)) return widths;
	if (!isRecord(value)) report(key, `${shown(value)} is not a record of widths`);
	else
		for (const [column, width] of Object.entries(value)) {
			const isWidth = typeof width === 'number' && width >= widthBounds.least && width <= widthBounds.greatest;
			if (isViewColumn(column) && isWidth) widths.set(column, width);
			else report(`${key}.${column}`, `${shown(width)} is not a column’s width in pixels, 44 to 640`);
		}
	return widths;
}

function readSort(value: unknown, { report }: Report): Sort | undefined {
	if (isAbsent(value)) return undefined;
	if (isRecord(value) && isViewColumn(value['column'])) {
		if (value['way'] === 'up' || value['way'] === 'down') return { column: value['column'], way: value['way'] };
		report('views.sort.way', `${shown(value['way'])} is none of: up, down`);
	} else report('views.sort', `${shown(value)} names no column of the grid`);
	return undefined;
}

/** How a show is looked at as it is kept; undefined where that is as it began. */
export function writeViews({ active, own, sort }: Views): unknown {
	if (active === everyColumn && own.length === 0 && sort === undefined) return undefined;
	return {
		...(active !== everyColumn && { inHand: active }),
		...(sort && { sort: { column: sort.column, way: sort.way } }),
		...(own.length > 0 && {
			list: own.map(({ name, order, hidden, widths }) => ({
				name,
				order: [...order],
				...(hidden.size > 0 && { hidden: [...hidden] }),
				...(widths.size > 0 && { widths: Object.fromEntries(widths) }),
			})),
		}),
	};
}
