import fc from 'fast-check';
import { inches, type Length, length, mm } from '../../../../src/core/length/length.ts';
import {
	blankCells,
	type Cells,
	type MountCell,
	type PaperCell,
	type Shape,
	type SizeKey,
	sizeKeys,
} from '../../../../src/core/row/cells.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { BottomWeight } from '../../../../src/core/length/bottomWeight.ts';
import type { Settings } from '../../../../src/core/settings/settings.ts';
import type { Size } from '../../../../src/core/length/size.ts';

/** Lengths as people type them: whole and half millimetres, sixteenths and thirds of an inch, and any nanometre. */
const lengthBetween = (leastMm: number, greatestMm: number): fc.Arbitrary<Length> =>
	fc.oneof(
		{ weight: 5, arbitrary: fc.integer({ min: leastMm, max: greatestMm }).map(mm) },
		{ weight: 2, arbitrary: fc.integer({ min: 2 * leastMm, max: 2 * greatestMm }).map((halves) => mm(halves / 2)) },
		{
			weight: 2,
			arbitrary: fc
				.integer({ min: Math.ceil(leastMm * 0.63), max: Math.floor(greatestMm * 0.63) })
				.map((sixteenths) => inches(Math.max(sixteenths, 1) / 16)),
		},
		{ weight: 1, arbitrary: fc.integer({ min: leastMm, max: greatestMm }).map((n) => mm(n + 1 / 3)) },
		{
			weight: 1,
			arbitrary: fc.integer({ min: leastMm * 1_000_000, max: greatestMm * 1_000_000 }).map((nm) => mm(nm / 1e6)),
		},
	);

const shape: fc.Arbitrary<Shape> = fc.oneof(
	fc.constantFrom(
		{ numerator: 3, denominator: 2 },
		{ numerator: 2, denominator: 3 },
		{ numerator: 4, denominator: 3 },
		{ numerator: 4, denominator: 5 },
		{ numerator: 1, denominator: 1 },
		{ numerator: 16, denominator: 9 },
		{ numerator: 17778, denominator: 10000 },
	),
	fc.record({ numerator: fc.integer({ min: 1, max: 60 }), denominator: fc.integer({ min: 1, max: 60 }) }),
);

const weight: fc.Arbitrary<BottomWeight> = fc.oneof(
	fc
		.integer({ min: 0, max: 60 })
		.map((percent): BottomWeight => ({ kind: 'share', numerator: percent, denominator: 100 })),
	fc.constant<BottomWeight>({ kind: 'share', numerator: 333333, denominator: 1000000 }),
	lengthBetween(1, 40).map((more): BottomWeight => ({ kind: 'length', more })),
	fc.constant<BottomWeight>({ kind: 'optical centre' }),
);

const size = fc
	.record({ width: lengthBetween(200, 900), height: lengthBetween(200, 900) })
	.map(({ width, height }) => ({ width, height }));

const mount: fc.Arbitrary<MountCell> = fc.oneof(
	{ weight: 6, arbitrary: fc.constant<MountCell>({ kind: 'show' }) },
	{ weight: 2, arbitrary: fc.constant<MountCell>({ kind: 'fit' }) },
	{ weight: 2, arbitrary: size.map((named): MountCell => ({ kind: 'size', size: named })) },
);

const sometimes = <Value>(value: fc.Arbitrary<Value>, oneIn: number): fc.Arbitrary<Value | undefined> =>
	fc.oneof({ weight: 1, arbitrary: value }, { weight: oneIn - 1, arbitrary: fc.constant(undefined) });

/** Any typed cells, most of them blank. */
export const randomCells: fc.Arbitrary<Cells> = fc
	.record({
		mount,
		shape: sometimes(shape, 2),
		pictureWidth: sometimes(lengthBetween(50, 800), 3),
		pictureHeight: sometimes(lengthBetween(50, 800), 3),
		windowWidth: sometimes(lengthBetween(50, 700), 6),
		windowHeight: sometimes(lengthBetween(50, 700), 6),
		mountWidth: sometimes(lengthBetween(200, 900), 8),
		mountHeight: sometimes(lengthBetween(200, 900), 8),
		side: sometimes(lengthBetween(20, 150), 6),
		top: sometimes(lengthBetween(20, 150), 6),
		bottom: sometimes(lengthBetween(20, 150), 6),
		bottomWeight: sometimes(weight, 4),
		overlap: sometimes(fc.oneof(fc.constant(mm(0)), lengthBetween(1, 9)), 6),
		reveal: sometimes(fc.oneof(fc.constant(mm(0)), lengthBetween(1, 15)), 6),
		signingSpace: sometimes(fc.oneof(fc.constant(mm(0)), lengthBetween(1, 25)), 6),
		innerMount: sometimes(lengthBetween(1, 12), 10),
	})
	.map((typed) => ({ ...blankCells, ...typed }));

const paper: fc.Arbitrary<PaperCell> = fc
	.record({
		width: lengthBetween(150, 700),
		height: lengthBetween(150, 700),
		isRoll: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
		margin: fc.oneof(fc.constant(mm(0)), lengthBetween(1, 20)),
	})
	.map(({ width, height, isRoll, margin }) => ({
		width,
		height: isRoll ? undefined : height,
		roll: isRoll ? mm(15_000) : undefined,
		margin,
		edge: 'straight' as const,
		listed: 'Rag',
	}));

/** Rows on paper, or without any, some of them floats: read as `readCells` reads them. */
export const randomPapered: fc.Arbitrary<Cells> = fc
	.record({
		cells: randomCells,
		paper: sometimes(paper, 2),
		isBare: fc.integer({ min: 0, max: 2 }).map((n) => n > 0), // the paper decides where no size is typed
		marginLeft: sometimes(lengthBetween(1, 60), 6),
		marginTop: sometimes(lengthBetween(1, 60), 6),
		isFloat: fc.integer({ min: 0, max: 3 }).map((n) => n === 0),
	})
	.map(({ cells, isBare, isFloat, ...others }) => ({
		...cells,
		...others,
		isFloat,
		...(isBare && {
			pictureWidth: undefined,
			pictureHeight: undefined,
			windowWidth: undefined,
			windowHeight: undefined,
		}),
		...(isFloat && {
			...{ windowWidth: undefined, windowHeight: undefined, overlap: undefined },
			...{ reveal: undefined, signingSpace: undefined, innerMount: undefined },
		}),
	}));

/** Settings of a show, metric or inch. */
export const randomSettings: fc.Arbitrary<Settings> = fc
	.record({
		unit: fc.constantFrom<'mm' | 'in'>('mm', 'in'),
		ruler: fc.constantFrom(mm(1), mm(0.5), inches(1 / 8), inches(1 / 16), inches(1 / 32)),
		mountSize: size,
		border: lengthBetween(30, 110),
		bottomWeight: weight,
		overlap: fc.oneof(fc.constant(mm(0)), lengthBetween(1, 6)),
		reveal: sometimes(lengthBetween(1, 12), 8),
	})
	.map((settings) => ({ ...readSettings({ unit: settings.unit }).settings, ...settings }));

const onGrid = (value: Length, step: Length): Length => length(Math.max(step, Math.round(value / step) * step));

/** A row and its show with every size on so coarse a grid that sums, squares and ties happen by chance. */
export const coarsened = (row: readonly [Cells, Settings], stepMm: number): readonly [Cells, Settings] =>
	mapped(row, {
		size: (value) => onGrid(value, mm(stepMm)),
		border: (value) => onGrid(value, mm(Math.min(stepMm, 10))),
		ruler: mm(1),
	});

/** A row and its show with so little between sizes that there is room for borders of a graduation or two, or for none. */
export const crowded = (row: readonly [Cells, Settings]): readonly [Cells, Settings] =>
	mapped(row, {
		size: (value) => mm(100 + 2.5 * (Math.round(value / 50_000_000) % 14)),
		border: (value) => mm(2.5 * (1 + (Math.round(value / 10_000_000) % 6))),
		ruler: mm(5),
	});

interface Mapping {
	size(this: void, value: Length): Length;
	border(this: void, value: Length): Length;
	readonly ruler: Length;
}

function mapped([cells, settings]: readonly [Cells, Settings], { size, border, ruler }: Mapping) {
	const sizeOf = ({ width, height }: Size): Size => ({ width: size(width), height: size(height) });
	const typed: { [Key in SizeKey]?: Length } = {};
	for (const key of sizeKeys)
		if (cells[key] !== undefined) typed[key] = (['side', 'top', 'bottom'].includes(key) ? border : size)(cells[key]);
	const mount: MountCell = cells.mount.kind === 'size' ? { kind: 'size', size: sizeOf(cells.mount.size) } : cells.mount;
	const show = {
		...settings,
		ruler,
		mountSize: settings.mountSize && sizeOf(settings.mountSize),
		border: border(settings.border),
		overlap: onGrid(settings.overlap, mm(1)),
	};
	return [{ ...cells, ...typed, mount }, show] as const;
}
