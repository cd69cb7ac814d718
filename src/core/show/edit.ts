import { type TickDiff, tickKey, tickKeyOf, withTicks } from '../bench/ticks.ts';
import { composeCutSheets, type CutSheetDiff, rebaseCutSheets, withCutSheets } from '../sheets/cutSheet.ts';
import { mergeRow } from './mergeRow.ts';
import { byOrder } from './orderNumbers.ts';
import type { Row, RowId } from './row.ts';
import type { Show } from './show.ts';

/** What an edit does to one row: adds it (no `before`), removes it (no `after`) or changes it. */
export interface RowDiff {
	readonly before?: Row;
	readonly after?: Row;
}

/** What an edit does to one setting as typed; undefined: the setting is absent and takes its default. */
export interface SettingDiff {
	readonly key: string;
	readonly before: unknown;
	readonly after: unknown;
}

/** One action of the person, as the difference that it makes: one transaction, one undo step. */
export interface Edit {
	/** What was done, to stand after "Undo": "Type picture width". */
	readonly label: string;
	/** At most one diff a row. */
	readonly rows: readonly RowDiff[];
	/** At most one diff a key. */
	readonly settings?: readonly SettingDiff[];
	readonly name?: { readonly before: string; readonly after: string };
	/** At most one diff a tick. */
	readonly ticks?: readonly TickDiff[];
	/** At most one diff a cut sheet. */
	readonly cutSheets?: readonly CutSheetDiff[];
	/** The exchange that the edit takes in, by its id (`after`), or takes back (`before`); see `core/merge`. */
	readonly exchange?: { readonly before?: string; readonly after?: string };
	/** What was selected before and after: a plain value, kept for whoever shows the rows and never looked into. */
	readonly focus?: { readonly before: unknown; readonly after: unknown };
}

/** The row that a diff is about. */
export const rowIdOf = ({ before, after }: RowDiff): RowId => (before ?? after)!.id;

/** Whether an edit leaves everything as it is. */
export const isEmpty = ({ rows, settings = [], name, ticks = [], cutSheets = [] }: Edit): boolean =>
	[rows, settings, ticks, cutSheets].every(({ length }) => length === 0) && name === undefined;

/**
 * The show after an edit. Rows and settings that the edit does not touch stay the same objects, so that what was
 * worked out from them holds. A row that has changed since the edit was made keeps its changes in other cells.
 */
export function apply(show: Show, edit: Edit): Show {
	return {
		...show,
		name: edit.name?.after ?? show.name,
		settings: edit.settings?.length ? withSettings(show.settings, edit.settings) : show.settings,
		rows: edit.rows.length ? withRows(show.rows, edit.rows) : show.rows,
		...(edit.ticks?.length && { ticks: withTicks(show.ticks ?? [], edit.ticks) }),
		...(edit.cutSheets?.length && { cutSheets: withCutSheets(show.cutSheets ?? [], edit.cutSheets) }),
	};
}

/** The edit that takes an edit back. */
export function invert(edit: Edit): Edit {
	return {
		...edit,
		rows: edit.rows.map(swap),
		...(edit.ticks && { ticks: edit.ticks.map(swap) }),
		...(edit.cutSheets && { cutSheets: edit.cutSheets.map(swap) }),
		...(edit.settings && {
			settings: edit.settings.map(({ key, before, after }) => ({ key, before: after, after: before })),
		}),
		...(edit.name && { name: { before: edit.name.after, after: edit.name.before } }),
		...(edit.exchange && { exchange: swap(edit.exchange) }),
		...(edit.focus && { focus: { before: edit.focus.after, after: edit.focus.before } }),
	};
}

/** Two edits, the second made on what the first left, as one. */
export function compose(first: Edit, second: Edit): Edit {
	const rows = new Map(first.rows.map((diff) => [rowIdOf(diff), diff]));
	for (const diff of second.rows) {
		const before = rows.has(rowIdOf(diff)) ? rows.get(rowIdOf(diff))!.before : diff.before;
		rows.set(rowIdOf(diff), { ...(before && { before }), ...(diff.after && { after: diff.after }) });
	}
	const settings = new Map((first.settings ?? []).map((diff) => [diff.key, diff]));
	for (const diff of second.settings ?? [])
		settings.set(diff.key, { ...diff, before: (settings.get(diff.key) ?? diff).before });
	const name = second.name ? { ...second.name, before: (first.name ?? second.name).before } : first.name;
	const ticks = composeTicks(first.ticks ?? [], second.ticks ?? []);
	const cutSheets = composeCutSheets(first.cutSheets ?? [], second.cutSheets ?? []);
	const exchange = second.exchange ?? first.exchange;
	const focus = second.focus ? { ...second.focus, before: (first.focus ?? second.focus).before } : first.focus;
	return {
		label: first.label,
		rows: [...rows.values()].filter(({ before, after }) => before ?? after),
		...(settings.size > 0 && { settings: [...settings.values()] }),
		...(name && { name }),
		...(ticks.length > 0 && { ticks }),
		...(cutSheets.length > 0 && { cutSheets }),
		...(exchange && { exchange }),
		...(focus && { focus }),
	};
}

/**
 * The edit as it would work on this show now: the same changes, with what the show holds as `before`, so that its
 * inverse gives exactly that back. Needed where the rows have changed since, in another tab.
 */
export function rebase(edit: Edit, show: Show): Edit {
	const touched = new Set(edit.rows.map(rowIdOf));
	const current = new Map(show.rows.filter(({ id }) => touched.has(id)).map((row) => [row.id, row]));
	const settings = new Map(Object.entries(show.settings));
	const ticks = new Map(edit.ticks && (show.ticks ?? []).map((tick) => [tickKey(tick), tick]));
	const rows = edit.rows.map((diff): RowDiff => {
		const before = current.get(rowIdOf(diff));
		const after = mergeRow(before, diff);
		return { ...(before && { before }), ...(after && { after }) };
	});
	return {
		...edit,
		rows: rows.filter(({ before, after }) => before !== after),
		...(edit.settings && { settings: edit.settings.map((diff) => ({ ...diff, before: settings.get(diff.key) })) }),
		...(edit.name && { name: { before: show.name, after: edit.name.after } }),
		...(edit.ticks && {
			ticks: edit.ticks
				.map((diff): TickDiff => {
					const before = ticks.get(tickKeyOf(diff));
					return { ...(before && { before }), ...(diff.after && { after: diff.after }) };
				})
				.filter(({ before, after }) => before ?? after),
		}),
		...(edit.cutSheets && { cutSheets: rebaseCutSheets(edit.cutSheets, show.cutSheets ?? []) }),
	};
}

const swap = <Value>({ before, after }: { readonly before?: Value; readonly after?: Value }) => ({
	...(after && { before: after }),
	...(before && { after: before }),
});

function composeTicks(first: readonly TickDiff[], second: readonly TickDiff[]): readonly TickDiff[] {
	const ticks = new Map(first.map((diff) => [tickKeyOf(diff), diff]));
	for (const diff of second) {
		const { before } = ticks.get(tickKeyOf(diff)) ?? diff;
		ticks.set(tickKeyOf(diff), { ...(before && { before }), ...(diff.after && { after: diff.after }) });
	}
	return [...ticks.values()].filter(({ before, after }) => before ?? after);
}

function withRows(rows: readonly Row[], diffs: readonly RowDiff[]): readonly Row[] {
	const open = new Map(diffs.map((diff) => [rowIdOf(diff), diff]));
	const after: Row[] = [];
	for (const row of rows) {
		const diff = open.get(row.id);
		open.delete(row.id);
		const merged = diff ? mergeRow(row, diff) : row;
		if (merged) after.push(merged);
	}
	for (const diff of open.values()) {
		const added = mergeRow(undefined, diff);
		if (added) after.push(added);
	}
	return after.sort(byOrder);
}

function withSettings(settings: Show['settings'], diffs: readonly SettingDiff[]): Show['settings'] {
	const after = new Map(Object.entries(settings));
	for (const { key, after: value } of diffs) {
		if (value === undefined) after.delete(key);
		else after.set(key, value);
	}
	return Object.fromEntries(after);
}
