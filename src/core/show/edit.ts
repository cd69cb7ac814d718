import type { Settings } from '../settings/settings.ts';
import { everyPart, heldOf, type PartValues } from './everyPart.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { type ItemDiff, itemDiff, itemOf } from './keyedList.ts';
import type { DiffOf, Part, PartName } from './parts.ts';
import type { Row, RowId } from './row.ts';
import type { Show } from './show.ts';
import { composeValues, swapValues, type ValueDiff } from './singleValue.ts';

/** What an edit does to one row. */
export type RowDiff = ItemDiff<Row>;

type Diffs = { readonly [Name in Exclude<PartName, 'rows'>]?: DiffOf<Name> };

/** One action of the person, as the difference that it makes to parts of the show: one transaction, one undo step. */
export interface Edit extends Diffs {
	/** What was done, to stand after "Undo": "Type picture width". */
	readonly label: string;
	/** At most one diff a row. */
	readonly rows: readonly RowDiff[];
	/** The exchange that the edit imports, by its id (`after`), or undoes (`before`); see `core/merge`. */
	readonly exchange?: ItemDiff<string>;
	readonly focus?: FocusOfEdit;
}

/** What was selected before an edit and after it: plain values, handed back by undo and redo, never looked into. */
export type FocusOfEdit = ValueDiff<unknown>;

/** Makes an edit of the show as it is, under its settings as read: `typeCells` and its like, with all else said. */
export type Command = (show: Show, settings: Settings) => Edit;

/** The row that a diff is about. */
export const rowIdOf = (diff: RowDiff): RowId => itemOf(diff).id;

/** Whether an edit leaves everything as it is. */
export const isEmpty = (edit: Edit): boolean => touched(edit).length === 0;

/** Whether an edit changes more than how the show is looked at: it is missed where no copy has it. */
export const isToBackUp = (edit: Edit): boolean => touched(edit).some(([, part]) => part.isToBackUp);

/** The edit that makes one show of another; parts that hold the same are not touched. */
export const difference = (from: Show, to: Omit<Show, 'id'>, label: string): Edit => ({
	label,
	rows: [],
	...diffsOf((name, part) => part.compare(heldOf(from, name, part), heldOf(to, name, part))),
});

/**
 * The show after an edit. Rows and settings that the edit does not touch stay the same objects, so that what was
 * worked out from them holds. A row that has changed since the edit was made keeps its changes in other cells.
 */
export const apply = (show: Show, edit: Edit): Show => applyTo(show, edit);

/** A show, or what is kept of some of its parts, after an edit. */
export function applyTo<Held extends object>(held: Held, edit: Edit): Held {
	const after = new Map<string, unknown>(Object.entries(held));
	for (const [name, part, diff] of touched(edit)) {
		const value = part.apply(heldOf(held, name, part), diff);
		if (value === undefined) after.delete(name);
		else after.set(name, value);
	}
	return Object.fromEntries(after) as Held;
}

/** The edit that undoes an edit. */
export const invert = (edit: Edit): Edit => ({
	...edit,
	...changed(edit, (_name, part, diff) => part.invert(diff)),
	...(edit.exchange && { exchange: itemDiff(edit.exchange.after, edit.exchange.before) }),
	...(edit.focus && { focus: swapValues(edit.focus) }),
});

/** Two edits, the second made on what the first left, as one. */
export function compose(first: Edit, second: Edit): Edit {
	const exchange = second.exchange ?? first.exchange;
	const focus = first.focus && second.focus ? composeValues(first.focus, second.focus) : (second.focus ?? first.focus);
	return {
		label: first.label,
		rows: [],
		...diffsOf((name, part) => {
			const [one, other] = [diffIn(first, name), diffIn(second, name)];
			const both = one === undefined || other === undefined ? (one ?? other) : part.compose(one, other);
			return both === undefined || part.isEmpty(both) ? undefined : both;
		}),
		...(exchange && { exchange }),
		...(focus && { focus }),
	};
}

/**
 * The edit as it would work on this show now: the same changes, with what the show holds as `before`, so that its
 * inverse gives exactly that back. Needed where the show has changed since, in another tab.
 */
export const rebase = (edit: Edit, show: Show): Edit => ({
	...edit,
	...changed(edit, (name, part, diff) => part.rebase(diff, heldOf(show, name, part))),
});

/**
 * The edit without what it changes in rows that are no longer there: another tab has deleted them. To type into such a
 * row brings it back, for no text may be lost; to undo what was typed in it must not.
 */
export function withoutRowsGone(edit: Edit, show: Show): Edit {
	const there = new Set(show.rows.map(({ id }) => id));
	return { ...edit, rows: edit.rows.filter((diff) => !diff.before || !diff.after || there.has(rowIdOf(diff))) };
}

type AnyPart = Part<unknown, unknown>;

const diffIn = (edit: Edit, name: string): unknown => (edit as unknown as PartValues)[name];

/** The parts that an edit changes. */
const touched = (edit: Edit) =>
	everyPart.flatMap(([name, part]) => {
		const diff = diffIn(edit, name);
		return diff === undefined || part.isEmpty(diff) ? [] : [[name, part, diff] as const];
	});

/** Diffs by the names of their parts; undefined: the part has none. */
function diffsOf(make: (name: string, part: AnyPart) => unknown): Diffs & Partial<Pick<Edit, 'rows'>> {
	const diffs = everyPart.map(([name, part]) => [name, make(name, part)] as const);
	return Object.fromEntries(diffs.filter(([, diff]) => diff !== undefined));
}

/** The diffs of an edit, each made into another. */
const changed = (edit: Edit, make: (name: string, part: AnyPart, diff: unknown) => unknown) =>
	diffsOf((name, part) => {
		const diff = diffIn(edit, name);
		return diff === undefined ? undefined : make(name, part, diff);
	});

/**
 * An edit with what was selected before and after it.
 * @param known as the step before has it: what is the same is then the same object, since thousands of steps are held
 */
export function withFocus(edit: Edit, focus: FocusOfEdit | undefined, known?: FocusOfEdit): Edit {
	if (!focus) return edit;
	const shared = (value: unknown, others: readonly unknown[]) =>
		others.find((other) => isSameValue(value, other)) ?? value;
	const before = shared(focus.before, known ? [known.after, known.before] : []);
	const after = shared(focus.after, known ? [before, known.after, known.before] : [before]);
	return { ...edit, focus: { before, after } };
}
