import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm } from '../../../../src/core/length/length.ts';
import type { Unit } from '../../../../src/core/length/reading.ts';
import { readCells } from '../../../../src/core/row/readCells.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { bareNumbersIn, changeSettings } from '../../../../src/core/commands/changeSettings.ts';
import { type ColumnName, columns, kindOf } from '../../../../src/core/show/columns.ts';
import { apply } from '../../../../src/core/show/edit.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import type { TypedSettings } from '../../../../src/core/settings/settings.ts';
import type { Show } from '../../../../src/core/show/show.ts';
import { runs } from '../../../soak.ts';

const showWith = (settings: TypedSettings, ...rows: Pick<Row, 'typed' | 'units'>[]): Show => ({
	id: 'show',
	name: 'Spring',
	settings,
	rows: rows.map((row, index) => ({ id: `r${index}`, order: index + 1, ...row })),
});
const changed = (show: Show, changes: TypedSettings) => apply(show, changeSettings(show, changes, 'settings'));

test('a setting is typed, and put back to its default', () => {
	const show = showWith({ border: '70' });
	expect(changed(show, { border: '80', overlap: '2' }).settings).toEqual({ border: '80', overlap: '2' });
	expect(changed(show, { border: undefined }).settings).toEqual({});
	expect(changeSettings(show, { border: '70' }, 'settings').settings).toEqual([]);
});

test('a change of unit gives the old one to every bare number, and to nothing else', () => {
	const typed = {
		title: '70',
		edition: '3/25',
		'picture width': '456',
		'picture height': '30 cm',
		paper: '500 x 400',
		mount: 'fit',
		top: '2 5/8',
		side: 'wide',
		'bottom weight': '12',
		overlap: '0',
		reveal: '5',
		copies: '2',
	};
	const after = changed(showWith({ unit: 'mm' }, { typed }), { unit: 'in' });
	expect(after.rows[0]).toMatchObject({ typed, units: { 'picture width': 'mm', paper: 'mm', reveal: 'mm' } });
	expect(Object.keys(after.rows[0]!.units!)).toHaveLength(3);
});

test('a change of unit that keeps the figures reads every bare number in the new one, the mount size too', () => {
	const typed = { title: '70', 'picture width': '16', 'picture height': '30 cm', top: '3' };
	const show = showWith({ unit: 'mm', mountSize: '20 x 16', border: '2' }, { typed }, { typed: { note: '3' } });
	expect(bareNumbersIn(show, 'in')).toEqual({ rows: 1, example: '16' });
	const after = apply(show, changeSettings(show, { unit: 'in' }, 'settings', 'keep figures'));
	expect(after.settings).toEqual({ unit: 'in', mountSize: '20 x 16', border: '2' });
	expect(after.rows).toEqual(show.rows);
	const { settings } = readSettings(after.settings);
	expect([settings.mountSize!.width, settings.border]).toEqual([inches(20), inches(2)]);
	const { cells } = readCells(after.rows[0]!, settings);
	expect([cells.pictureWidth, cells.pictureHeight, cells.top]).toEqual([inches(16), mm(300), inches(3)]);
});

test('nothing is asked of a show whose lengths all have a unit, or that has none', () => {
	const own = { typed: { 'picture width': '16 in', top: '2 5/8', edition: '3/25' } };
	const pinned = { typed: { side: '70' }, units: { side: 'mm' as const } };
	expect(bareNumbersIn(showWith({ unit: 'mm' }, own, pinned, { typed: {} }), 'in')).toBeUndefined();
	expect(bareNumbersIn(showWith({ unit: 'mm' }, pinned, { typed: { side: '70' } }), 'mm')).toBeUndefined();
});

test('a cell that has a unit of its own keeps it', () => {
	const show = showWith({ unit: 'mm' }, { typed: { top: '7', bottom: '70' }, units: { top: 'cm' } });
	expect(changed(show, { unit: 'in' }).rows[0]?.units).toEqual({ top: 'cm', bottom: 'mm' });
});

test('a length that its neighbour makes inches stays inches', () => {
	const show = showWith({ unit: 'mm' }, { typed: { 'picture width': '16 1/2', 'picture height': '11' } });
	expect(changed(show, { unit: 'cm' }).rows[0]).toBe(show.rows[0]);
	// Whether a fraction whose unit is stated speaks for its neighbour is for the reader to say; no size changes.
	const stated = { ...show.rows[0]!, units: { 'picture width': 'in' as const } };
	const after = changed({ ...show, rows: [stated] }, { unit: 'cm' }).rows[0]!;
	const cellsOf = (row: Row, unit: Unit) => readCells(row, readSettings({ unit }).settings).cells;
	expect(cellsOf(after, 'cm')).toEqual(cellsOf(stated, 'mm'));
});

test('settings that are bare are written with the unit that they were typed in', () => {
	const settings = {
		unit: 'mm',
		border: '70',
		overlap: 3,
		leastBorder: '4 cm',
		bottomWeight: '12',
		unevenTolerance: '15',
		mountSize: '600 x 450',
		limits: { largest: '900 x 700', pictureArea: '50000', within: '2', thickness: 5 },
		boards: [{ name: '300', width: '1200', height: 800, thickness: '1,4', count: 3 }],
		frames: [
			{ name: 'oak', width: '16 1/2', height: '20', lip: '6', clearance: '3' },
			{ name: 'ash', rebateWidth: '20', rebateHeight: '16 1/2' },
			{ name: 'elm', rebateWidth: '500', rebateHeight: '400' },
		],
		frameClearance: '4',
		pointsRoom: '2',
		leastSpacer: '3',
		sizes: [{ name: '60 x 45', width: '600', height: '450' }],
		bench: { kind: 'guide', greatest: '150', correction: '-0.5', slipBoard: '2' },
		undermount: '300',
	};
	expect(changed(showWith(settings), { unit: 'in' }).settings).toEqual({
		unit: 'in',
		border: '70 mm',
		overlap: 3,
		leastBorder: '4 cm',
		bottomWeight: '12',
		unevenTolerance: '15',
		mountSize: '600 x 450 mm',
		limits: { largest: '900 x 700 mm', pictureArea: '50000 mm²', within: '2 mm', thickness: 5 },
		boards: [{ name: '300', width: '1200 mm', height: 800, thickness: '1,4 mm', count: 3 }],
		frames: [
			{ name: 'oak', width: '16 1/2', height: '20', lip: '6 mm', clearance: '3 mm' },
			{ name: 'ash', rebateWidth: '20', rebateHeight: '16 1/2' },
			{ name: 'elm', rebateWidth: '500 mm', rebateHeight: '400 mm' },
		],
		frameClearance: '4 mm',
		pointsRoom: '2 mm',
		leastSpacer: '3 mm',
		sizes: [{ name: '60 x 45', width: '600 mm', height: '450 mm' }],
		bench: { kind: 'guide', greatest: '150 mm', correction: '-0.5 mm', slipBoard: '2 mm' },
		undermount: '300',
	});
});

test('an obstacle keeps its width beside a height in inches', () => {
	const obstacle = { left: '1 m', width: '90', bottom: '1 m', height: '20 1/2' };
	const settings = { unit: 'mm', walls: [{ name: 'North', length: '5 m', obstacles: [obstacle] }] };
	const show = showWith(settings, { typed: { title: 'Tide' } });
	const after = changed(show, { unit: 'in' });
	const obstaclesOf = (typed: TypedSettings) => readSettings(typed).settings.walls[0]!.obstacles;
	expect(obstaclesOf(after.settings)).toEqual(obstaclesOf(settings));
	expect(obstaclesOf(settings)[0]).toMatchObject({ width: mm(90), height: inches(20.5) });
});

test('a mount size that is a name stays that name', () => {
	const settings = { mountSize: '60 x 45', sizes: [{ name: '60 x 45', width: '600', height: '450' }] };
	expect(changed(showWith(settings), { unit: 'in' }).settings['mountSize']).toBe('60 x 45');
});

test('a show in which nothing is typed takes the defaults of its new unit', () => {
	expect(readSettings(changed(showWith({ unit: 'mm' }, { typed: {} }), { unit: 'in' }).settings).settings).toEqual(
		readSettings({ unit: 'in' }).settings,
	);
});

test('a setting changed along with the unit is in the new unit', () => {
	const show = showWith({ border: '70' }, { typed: { title: 'Pier' } });
	expect(changed(show, { unit: 'in', border: '3' }).settings['border']).toBe('3');
});

const sizeTexts = fc.constantFrom(
	'456',
	'30',
	'7.5',
	'7,5',
	'2 5/8',
	'1/2',
	'30 cm',
	'1,500',
	'0',
	'wide',
	'-3',
	'2000',
);
const sizeColumns = columns
	.map(({ name }) => name)
	.filter((name) => ['length', 'space', 'size', 'mount', 'weight'].includes(kindOf(name)));
const twoLengths = fc.constantFrom('456 x 306', '50 x 40 cm', '16 1/2 x 11', 'A3', 'fit', 'none', 'own', '60 x 45');
const typedRow = fc
	.array(
		fc
			.constantFrom<ColumnName>(...sizeColumns)
			.chain((name) =>
				(['size', 'mount'].includes(kindOf(name)) ? twoLengths : sizeTexts).map((text): [ColumnName, string] => [
					name,
					text,
				]),
			),
		{ minLength: 1, maxLength: 7 },
	)
	.map((cells) => Object.fromEntries(cells));
const anyUnits = (names: readonly ColumnName[], maxKeys: number) =>
	fc.dictionary(fc.constantFrom(...names), fc.constantFrom<Unit>('mm', 'cm', 'in'), { maxKeys });
const anyRow = fc.record({ typed: typedRow, units: anyUnits(sizeColumns, 2) });
/** A width and a height, where a fraction in one makes inches of the other. */
const pairRow = fc.record({
	typed: fc.record({ 'picture width': sizeTexts, 'picture height': sizeTexts }),
	units: anyUnits(['picture width', 'picture height'], 2),
});
const typedSettings = fc.record(
	{
		border: sizeTexts,
		ruler: fc.constantFrom('1', '1 mm', '1/16'),
		mountSize: twoLengths,
		overlap: sizeTexts,
		reveal: sizeTexts,
		hanging: fc.record({ inset: sizeTexts, rings: fc.constantFrom('20 %', '7.5', '1/2') }, { requiredKeys: [] }),
		walls: fc
			.record(
				{ name: fc.constant('North'), length: fc.constantFrom('456', '14 m', '900'), centre: sizeTexts },
				{ requiredKeys: ['name', 'length'] },
			)
			.map((wall) => [wall]),
		sizes: fc
			.record({ name: fc.constantFrom('own', '60 x 45'), width: sizeTexts, height: sizeTexts })
			.map((size) => [size]),
	},
	{ requiredKeys: [] },
);
const unit = fc.constantFrom<Unit>('mm', 'cm', 'in');

/** Random shows and units to change to. What cannot be read takes the default of the new unit, so there is none of that. */
const changes = fc
	.record({ settings: typedSettings, row: fc.oneof(anyRow, pairRow), from: unit, to: unit })
	.map(({ settings, row, from, to }) => ({ show: showWith({ ...settings, unit: from }, row), to }))
	.filter(({ show }) => readSettings(show.settings).problems.length === 0);

test('whatever is typed, a change of unit changes no setting and no cell', () =>
	fc.assert(
		fc.property(changes, ({ show, to }) => {
			const after = changed(show, { unit: to });
			const [before, now] = [readSettings(show.settings).settings, readSettings(after.settings).settings];
			expect(now).toEqual({ ...before, unit: to });
			const [was, is] = [readCells(show.rows[0]!, before), readCells(after.rows[0]!, now)];
			expect(is.cells).toEqual(was.cells);
			expect(is.unread.map(({ column }) => column)).toEqual(was.unread.map(({ column }) => column));
		}),
		{ numRuns: runs(30, 5000) },
	));

test('whatever is typed, a change of unit changes nothing that is worked out', () =>
	fc.assert(
		fc.property(changes, ({ show, to }) => {
			const after = changed(show, { unit: to });
			const was = judgeRow(show.rows[0]!, readSettings(show.settings).settings);
			const is = judgeRow(after.rows[0]!, readSettings(after.settings).settings);
			expect(is.solved).toEqual(was.solved);
			expect(is.findings.map(({ code }) => code)).toEqual(was.findings.map(({ code }) => code));
		}),
		{ numRuns: runs(10, 5000) },
	));
