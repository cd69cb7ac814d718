import { expect, test } from 'vitest';
import { solvedKeys } from '../../../../src/core/row/solvedRow.ts';
import { viewColumns } from '../../../../src/core/grid/columnView.ts';
import { columnOfFindingCell, gridColumns, groupsOf } from '../../../../src/ui/grid/gridColumns.ts';
import { keyName } from '../../../../src/ui/grid/gridKeys.ts';

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

test.each([
	{ key: 'z', ctrlKey: true, is: 'Ctrl+Z' },
	{ key: 'Z', metaKey: true, shiftKey: true, is: 'Ctrl+Shift+Z' },
	{ key: '?', shiftKey: true, is: '?' },
	{ key: 'Tab', shiftKey: true, is: 'Shift+Tab' },
	{ key: 'ArrowUp', altKey: true, is: 'Alt+ArrowUp' },
])('$key is called $is', ({ is, ...event }) => {
	expect(keyName({ ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...event })).toBe(is);
});
