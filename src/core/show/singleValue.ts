import { isRecord } from '../values/isRecord.ts';
import { isSameValue } from '../values/isSameValue.ts';
import type { PartShape } from './partShape.ts';

/** What an edit does to a value that is changed as a whole. */
export interface ValueDiff<Value> {
	readonly before: Value;
	readonly after: Value;
}

/** The other way round. */
export const swapValues = <Value>({ before, after }: ValueDiff<Value>): ValueDiff<Value> => ({
	before: after,
	after: before,
});

/** Two changes of one value as one. */
export const composeValues = <Value>(first: ValueDiff<Value>, second: ValueDiff<Value>): ValueDiff<Value> => ({
	before: first.before,
	after: second.after,
});

/** A part that is one value, changed as a whole: of two that change it the last wins. */
export const singleValue = <Value>(): PartShape<Value, ValueDiff<Value>> => ({
	compare: (from, to) => (isSameValue(from, to) ? undefined : { before: from, after: to }),
	isEmpty: () => false,
	sides: (diff) =>
		isRecord(diff) && 'before' in diff && 'after' in diff ? [diff['before'], diff['after']] : undefined,
	apply: (_value, { after }) => after,
	invert: swapValues,
	compose: composeValues,
	rebase: ({ after }, value) => ({ before: value, after }),
	keepObjects: (old, read) => (isSameValue(old, read) ? old : read),
});
