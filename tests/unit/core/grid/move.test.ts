import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Move, move, step } from '../../../../src/core/grid/move.ts';
import { at, between, headRow, rangeOf } from '../../../../src/core/grid/selection.ts';
import { gridOf } from './gridOf.ts';

/** Where `*` (blank) or `B` (filled) goes to is marked by the row and column given. */
test.each<{ from: string; way: Move; to: [number, number] }>([
	{ from: '... .*. ...', way: 'left', to: [1, 0] },
	{ from: '... *.. ...', way: 'left', to: [1, 0] }, // nothing wraps
	{ from: '... ..* ...', way: 'right', to: [1, 2] },
	{ from: '... .*. ...', way: 'up', to: [0, 1] },
	{ from: '.*. ... ...', way: 'up', to: [headRow, 1] },
	{ from: '... ... .*.', way: 'down', to: [2, 1] },
	{ from: '... .*. ...', way: 'row start', to: [1, 0] },
	{ from: '... .*. ...', way: 'row end', to: [1, 2] },
	{ from: '... .*. ...', way: 'grid start', to: [0, 0] },
	{ from: '... .*. ...', way: 'grid end', to: [2, 2] },
	{ from: '... ... ... *..', way: 'page up', to: [1, 0] },
	{ from: '... *.. ... ...', way: 'page up', to: [0, 0] }, // not the heads
	{ from: '... *.. ... ...', way: 'page down', to: [3, 0] },
	{ from: 'B.xx.', way: 'edge right', to: [0, 2] }, // to the next filled cell
	{ from: 'Bxx.x', way: 'edge right', to: [0, 2] }, // to the end of the stretch
	{ from: '*..xx', way: 'edge right', to: [0, 3] },
	{ from: '*xx.x', way: 'edge right', to: [0, 1] },
	{ from: 'B....', way: 'edge right', to: [0, 4] },
	{ from: 'xxxxB', way: 'edge right', to: [0, 4] },
	{ from: 'x.xxB', way: 'edge left', to: [0, 2] },
	{ from: 'x x . B', way: 'edge up', to: [1, 0] },
	{ from: 'B x x .', way: 'edge down', to: [2, 0] },
])('$way from $from goes to $to', ({ from, way, to }) => {
	const { grid, selection } = gridOf(from);
	expect(move(selection, way, grid)).toEqual(at(...to));
});

test('a grid without heads that can be gone to stops at the first row', () => {
	const { grid, selection } = gridOf('.*. ...');
	expect(move(selection, 'up', { ...grid, hasHead: false })).toEqual(at(0, 1));
});

test('from a head one comes back down', () => {
	const { grid } = gridOf('*.. ...');
	expect(move(at(headRow, 1), 'down', grid)).toEqual(at(0, 1));
	expect(move(at(headRow, 1), 'row end', grid)).toEqual(at(headRow, 2));
	expect(move(at(headRow, 1), 'page up', grid)).toEqual(at(headRow, 1));
});

test('extending moves the head and leaves active cell and anchor', () => {
	const { grid, selection } = gridOf('.... .a.. ..h.');
	const wider = move(selection, 'right', grid, true);
	expect(wider).toEqual(between({ row: 1, column: 1 }, { row: 2, column: 3 }));
	expect(rangeOf(move(wider, 'grid start', grid, true))).toEqual({ top: 0, bottom: 1, left: 0, right: 1 });
	expect(move(at(0, 1), 'up', grid, true)).toEqual(at(0, 1)); // no range reaches the heads
});

test('a move without Shift gives up the range and goes from the active cell', () => {
	const { grid, selection } = gridOf('.... .a.. ..h.');
	expect(move(selection, 'left', grid)).toEqual(at(1, 0));
});

test('extending there and back gives the same selection', () =>
	fc.assert(
		fc.property(
			fc.nat(4),
			fc.nat(4),
			fc.array(fc.constantFrom<Move>('left', 'right', 'up', 'down'), { maxLength: 6 }),
			(row, column, ways) => {
				const { grid } = gridOf(
					Array.from({ length: 30 }, () => '.'.repeat(30))
						.join(' ')
						.replace('.', '*'),
				);
				const back: Record<string, Move> = { left: 'right', right: 'left', up: 'down', down: 'up' };
				const start = at(row + 10, column + 10);
				const there = ways.reduce((selection, way) => move(selection, way, grid, true), start);
				const again = ways.reduceRight((selection, way) => move(selection, back[way]!, grid, true), there);
				expect(again).toEqual(start);
			},
		),
	));

test('no move leaves the grid', () => {
	const ways: Move[] = ['left', 'right', 'up', 'down', 'row start', 'row end', 'grid start', 'grid end'];
	ways.push('page up', 'page down', 'edge left', 'edge right', 'edge up', 'edge down');
	fc.assert(
		fc.property(
			fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
			fc.array(fc.tuple(fc.constantFrom(...ways), fc.boolean()), { maxLength: 12 }),
			(filled, steps) => {
				const grid = {
					rows: 3,
					columns: 4,
					pageRows: 2,
					hasHead: true,
					isFilled: ({ row, column }: { row: number; column: number }) => filled[row * 4 + column]!,
				};
				let selection = at(1, 1);
				for (const [way, isExtending] of steps) {
					selection = move(selection, way, grid, isExtending);
					for (const { row, column } of [selection.active, selection.anchor, selection.head]) {
						expect(row).toBeGreaterThanOrEqual(headRow);
						expect(row).toBeLessThan(3);
						expect(column).toBeGreaterThanOrEqual(0);
						expect(column).toBeLessThan(4);
					}
				}
			},
		),
	);
});

test.each([
	{ key: 'tab', isBack: false, order: ['1,1', '1,2', '2,1', '2,2', '1,1'] },
	{ key: 'enter', isBack: false, order: ['1,1', '2,1', '1,2', '2,2', '1,1'] },
	{ key: 'tab', isBack: true, order: ['1,1', '2,2', '2,1', '1,2', '1,1'] },
	{ key: 'enter', isBack: true, order: ['1,1', '2,2', '1,2', '2,1', '1,1'] },
] as const)('$key, back $isBack, goes through a range by $order', ({ key, isBack, order }) => {
	let selection = between({ row: 1, column: 1 }, { row: 2, column: 2 });
	const passed = order.map(() => {
		const { row, column } = selection.active;
		selection = step(selection, key, isBack, { rows: 5, columns: 5 });
		return `${row},${column}`;
	});
	expect(passed).toEqual(order);
	expect(rangeOf(selection)).toEqual({ top: 1, bottom: 2, left: 1, right: 2 });
});

test.each([
	{ from: at(0, 2), key: 'tab', isBack: false, to: at(1, 0) },
	{ from: at(1, 0), key: 'tab', isBack: true, to: at(0, 2) },
	{ from: at(1, 2), key: 'tab', isBack: false, to: at(1, 2) },
	{ from: at(0, 0), key: 'tab', isBack: true, to: at(0, 0) },
	{ from: at(0, 1), key: 'enter', isBack: false, to: at(1, 1) },
	{ from: at(1, 1), key: 'enter', isBack: false, to: at(1, 1) },
	{ from: at(1, 1), key: 'enter', isBack: true, to: at(0, 1) },
] as const)('$key, back $isBack, from $from.active alone goes to $to.active', ({ from, key, isBack, to }) => {
	expect(step(from, key, isBack, { rows: 2, columns: 3 }).active).toEqual(to.active);
});

/** `t` Tab, `T` back, `e` Enter, `E` back, an arrow ends the run; from the second cell of the first of three rows. */
test.each([
	{ keys: 'tte', to: [1, 1] },
	{ keys: 'tTe', to: [1, 1] },
	{ keys: 'TTe', to: [1, 1] },
	{ keys: 'ttete', to: [2, 1] },
	{ keys: 'tt→e', to: [1, 4] },
	{ keys: 'tteE', to: [0, 1] },
	{ keys: 'ttttt', to: [1, 1] }, // into the next row
	{ keys: 'ttttte', to: [2, 1] },
	{ keys: 'eete', to: [2, 2] }, // nothing below: it stays
])('after $keys the active cell is $to', ({ keys, to }) => {
	const grid = { rows: 3, columns: 5, pageRows: 2, hasHead: true, isFilled: () => true };
	let selection = at(0, 1);
	for (const key of keys)
		if (key === '→') selection = move(selection, 'right', grid);
		else selection = step(selection, key.toLowerCase() === 't' ? 'tab' : 'enter', key !== key.toLowerCase(), grid);
	expect([selection.active.row, selection.active.column]).toEqual(to);
});
