import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { mm } from '../../../../src/core/length/length.ts';
import { splitCopies } from '../../../../src/core/record/splitCopies.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import { apply, invert } from '../../../../src/core/show/edit.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';
import type { Tick } from '../../../../src/core/show/tick.ts';
import type { Show } from '../../../../src/core/show/show.ts';

const { settings } = readSettings({});
const cut = (copy: number): Tick => ({
	...{ row: 'b', copy, part: 'mount', side: 'top' },
	...{ border: mm(60), width: mm(500), height: mm(400) },
});
const showOf = (typed: Typed): Show => ({
	...{ id: 's', name: 'Show', settings: {} },
	rows: [
		{ id: 'a', order: 1, typed: { title: 'Weir' } },
		{ id: 'b', order: 2, typed: { title: 'Pier', copies: '3', ...typed }, units: { side: 'cm' } },
		{ id: 'c', order: 3, typed: { title: 'Quay' } },
	] satisfies Row[],
	ticks: [cut(1), cut(2), cut(3)],
	made: [{ row: 'b', copy: 3, step: 'printed' }],
});
const split = (show: Show) =>
	splitCopies(show, 'b', judgeRow(show.rows[1]!, settings), ['x', 'y'], 'Split the copies of Pier');

test('each copy is a row of its own, with what was cut and made of it; undo puts it together again', () => {
	const show = showOf({ edition: 'open', price: '90', 'print id': 'P1', stage: 'hung' });
	const edit = split(show);
	const after = apply(show, edit);
	const copy = { title: 'Pier', edition: 'open', price: '90', stage: 'hung' };
	expect(after.rows.map(({ id, typed }) => [id, typed])).toEqual([
		['a', { title: 'Weir' }],
		['b', { ...copy, 'print id': 'P1' }],
		['x', copy],
		['y', copy],
		['c', { title: 'Quay' }],
	]);
	expect(after.rows[3]!.units).toEqual({ side: 'cm' });
	expect(after.ticks!.map(({ row, copy: which }) => [row, which]).toSorted()).toEqual([
		['b', 1],
		['x', 1],
		['y', 1],
	]);
	expect(after.made).toEqual([{ row: 'y', copy: 1, step: 'printed' }]);
	const undone = apply(after, invert(edit));
	expect({ ...undone, ticks: undone.ticks!.toSorted((a, b) => a.copy - b.copy) }).toEqual(show);
});

test('a number of an edition stays with the first: no two prints have one', () => {
	const after = apply(showOf({ edition: '3/12' }), split(showOf({ edition: '3/12' })));
	expect(after.rows.map(({ typed }) => typed.edition)).toEqual([undefined, '3/12', undefined, undefined, undefined]);
});

test('a row that is not there is a slip', () =>
	expect(() => splitCopies(showOf({}), 'z', judgeRow(showOf({}).rows[0]!, settings), [], '')).toThrow(/no row z/));

test('where it hangs stays with the first copy, which alone hung: the others do not come to lie on it', () => {
	const show = showOf({ wall: 'North', 'hang order': '2', 'hang left': '50', 'hang centre': '145', drop: '3' });
	const [, pier, quay] = show.rows as [Row, Row, Row];
	const units = { side: 'cm', 'hang left': 'cm', 'hang centre': 'cm', drop: 'cm' } as const;
	const hung = { ...show, rows: [show.rows[0]!, { ...pier, units }, quay] };
	const [, first, other] = apply(hung, split(hung)).rows as [Row, Row, Row];
	const { copies: _, ...single } = pier.typed;
	expect([first.typed, first.units]).toEqual([single, units]);
	expect([other.typed, other.units]).toEqual([
		{ title: 'Pier', drop: '3' },
		{ side: 'cm', drop: 'cm' },
	]);
});
