/**
 * What is done with a part of a show and with the changes of it, whatever it holds. Each shape of part (a list of items
 * with keys, a record, a single value) says it once.
 */
export interface PartShape<Value, Diff> {
	/** What changes from one value to another; undefined: nothing does. */
	compare(from: Value, to: Value): Diff | undefined;
	/** Whether a diff leaves everything as it is. */
	isEmpty(diff: Diff): boolean;
	/**
	 * What a diff of unknown origin would have been before and would make, each as a value of the part by itself, to be
	 * looked at; undefined: it is no diff.
	 */
	sides(diff: unknown): readonly unknown[] | undefined;
	/** The value after a diff. What the diff does not touch stays the same object. */
	apply(value: Value, diff: Diff): Value;
	/** The diff that undoes a diff. */
	invert(diff: Diff): Diff;
	/** Two diffs, the second made on what the first left, as one. */
	compose(first: Diff, second: Diff): Diff;
	/** The diff as it would work on this value now, so that its inverse gives exactly that back. */
	rebase(diff: Diff, value: Value): Diff;
	/** The value as read again, with the objects of the old one wherever they hold the same. */
	keepObjects(old: Value, read: Value): Value;
}
