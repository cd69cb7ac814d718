import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withFindingsAcross } from '../../../../src/core/findings/acrossRows.ts';
import { FindingsAcross } from '../../../../src/core/findings/findingsAcross.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row, Typed } from '../../../../src/core/show/row.ts';
import { runs } from '../../../soak.ts';
import { listSteps } from '../values/listSteps.ts';

const oak = { name: 'Oak', width: 500, height: 400, count: 1 };
const ash = { name: 'Ash', moulding: 20, lip: 6, stick: '2400', count: 1 };
const shows = {
	'in counted frames': readSettings({ frames: [oak, ash] }).settings,
	'on walls': readSettings({ frames: [oak], walls: [{ name: 'Long', length: 3000 }] }).settings,
};

const oneOf = (column: keyof Typed, ...texts: readonly string[]): fc.Arbitrary<Typed> =>
	fc.constantFrom({}, ...texts.map((text) => ({ [column]: text })));
/** Rows that often stand in each other's way. */
const typed: fc.Arbitrary<Typed> = fc
	.tuple(
		oneOf('picture width', '300', '310', '900'),
		oneOf('title', 'Tide', 'Dune'),
		oneOf('edition', '1/3', '2/3'),
		oneOf('frame', 'Oak', 'Ash', 'none'),
		oneOf('copies', '0', '2'),
	)
	.map((cells) => Object.assign({ 'picture height': '200' }, ...cells) as Typed);
let made = 0;
const row: fc.Arbitrary<Row> = typed.map((cells) => ({ id: `r${made++}`, order: 0, typed: cells }));

test.each(Object.entries(shows))('%s: after each edit, what is found is what a first look finds', (_name, settings) => {
	const alone = new WeakMap<Row, ReturnType<typeof judgeRow>>();
	const judged = (each: Row) => {
		if (!alone.has(each)) alone.set(each, judgeRow(each, settings));
		return alone.get(each)!;
	};
	fc.assert(
		fc.property(listSteps(row), (lists) => {
			const across = new FindingsAcross(settings);
			for (const rows of lists) {
				const results = rows.map(judged);
				expect(across.of(rows, results)).toEqual(withFindingsAcross(rows, results, settings));
			}
		}),
		{ numRuns: runs(20, 2000) },
	);
});

test('where a row is typed into that is held against no other, no other is looked at', () => {
	const { settings } = readSettings({});
	let looks = 0;
	const rowOf = (cells: Typed): Row => ({
		id: 'r',
		order: 0,
		get typed() {
			looks++;
			return cells;
		},
	});
	const rows = Array.from({ length: 40 }, (_, place) => rowOf({ title: 'Tide', edition: `${place + 1}/50` }));
	const results = rows.map((each) => judgeRow(each, settings));
	const across = new FindingsAcross(settings);
	across.of(rows, results);
	const typedInto = rowOf({ ...rows[7]!.typed, 'picture width': '300' });
	const judged = judgeRow(typedInto, settings);
	looks = 0;
	const after = across.of(rows.with(7, typedInto), results.with(7, judged));
	expect(looks).toBeLessThan(10);
	expect(after).toEqual(results.with(7, judged));
});
