import fc from 'fast-check';

/**
 * A list as it goes through edits: items are put in, taken out, and replaced by others, at the ends and between.
 * @param item what it is a list of; no two of them are the same object
 */
export const listSteps = <Item>(item: fc.Arbitrary<Item>): fc.Arbitrary<readonly (readonly Item[])[]> =>
	fc
		.tuple(
			fc.array(item, { maxLength: 8 }),
			fc.array(fc.record({ at: fc.nat(8), gone: fc.nat(2), come: fc.array(item, { maxLength: 2 }) }), {
				minLength: 1,
				maxLength: 6,
			}),
		)
		.map(([first, edits]) => {
			const lists: (readonly Item[])[] = [first];
			for (const { at, gone, come } of edits)
				lists.push(lists.at(-1)!.toSpliced(Math.min(at, lists.at(-1)!.length), gone, ...come));
			return lists;
		});
