import { expect, test } from 'vitest';
import { solvedKeys } from '../../../../src/core/row/solvedRow.ts';
import { viewColumns } from '../../../../src/core/grid/columnView.ts';
import { columnOfFindingCell, gridColumns, groupsOf } from '../../../../src/ui/grid/gridColumns.ts';

test('the groups stand over all columns, without gaps', () => {
	const covered = groupsOf(gridColumns).flatMap(({ start, count }) =>
		Array.from({ length: count }, (_, place) => start + place),
	);
	expect(covered).toEqual(gridColumns.map((_, place) => place));
	expect(gridColumns.map(({ key }) => key)).toEqual(viewColumns);
});

test('every cell that a finding may name has a column', () => {
	for (const key of solvedKeys) expect(columnOfFindingCell(key), key).toBeDefined();
	expect(columnOfFindingCell('pictureWidth')).toBe('picture width');
	expect(columnOfFindingCell('overlapTop')).toBe('overlap');
	expect(columnOfFindingCell('signing space')).toBe('signing space');
	expect(columnOfFindingCell('no such cell')).toBeUndefined();
});
