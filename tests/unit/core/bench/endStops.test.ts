import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CutSide } from '../../../../src/core/show/tick.ts';
import { orderBench } from '../../../../src/core/bench/orderBench.ts';
import { stopPlaces, stopsInWords } from '../../../../src/core/bench/stopWords.ts';
import { toMm } from '../../../../src/core/length/length.ts';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';
import { runs } from '../../../soak.ts';

const heads = ['push', 'pull'] as const;
const guideSides = ['left', 'right'] as const;
const endStops = ['from the end', 'from the start'] as const;
const benches = heads.flatMap((head) =>
	guideSides.flatMap((guideSide) => endStops.map((endStop) => ({ head, guideSide, endStop }))),
);
type Cutter = (typeof benches)[number];

function benchOf(typed: readonly Row['typed'][], cutter: object) {
	const { settings, problems } = readSettings({
		mountSize: '600 x 450 mm',
		border: 70,
		bottomWeight: '12%',
		bench: { kind: 'guide and stops', overcut: 2, ...cutter },
	});
	expect(problems).toEqual([]);
	const rows = typed.map((each, index): Row => ({ id: `${index}`, order: index + 1, typed: each }));
	const results = rows.map((row) => judgeRow(row, settings));
	return { settings, results, plan: orderBench(rows, results, settings) };
}

/** Where each cut starts on a cutter whose head is pushed with the guide at the left, as the contract has it. */
const pushedLeft: Readonly<Record<CutSide, CutSide>> = { top: 'right', left: 'top', bottom: 'left', right: 'bottom' };
const opposite: Readonly<Record<CutSide, CutSide>> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' };
const startsAt = (side: CutSide, { head, guideSide }: Cutter): CutSide =>
	(head === 'push') === (guideSide === 'left') ? pushedLeft[side] : opposite[pushedLeft[side]];

const cell = fc.record({
	'window width': fc.constantFrom('440', '444', '450'),
	'window height': fc.constantFrom('300', '304'),
	top: fc.constantFrom('70', '72'),
	bottom: fc.constantFrom('78', '80'),
	mount: fc.constantFrom('', 'fit'),
});

/** The fewest changes over every order of some set-ups, from a bench set to nothing. */
function bruteForce(setUps: readonly (readonly number[])[]): number {
	let fewest = Infinity;
	const go = (last: readonly number[] | undefined, left: readonly (readonly number[])[], changes: number) => {
		if (changes >= fewest) return;
		if (left.length === 0) fewest = changes;
		left.forEach((next, place) =>
			go(
				next,
				left.filter((_, other) => other !== place),
				changes + next.filter((value, device) => value !== last?.[device]).length,
			),
		);
	};
	go(undefined, setUps, 0);
	return fewest;
}

describe.each(benches)('head $head, guide $guideSide, end stop $endStop', (cutter) => {
	test('stops stand where the cutter has them, and no order of up to 8 set-ups has fewer changes', () =>
		fc.assert(
			fc.property(fc.array(cell, { minLength: 1, maxLength: 2 }), (typed) => {
				const { results, plan } = benchOf(typed, cutter);
				const expected = new Map<string, string>();
				results.forEach(({ solved, isStopped }, index) => {
					if (isStopped) return;
					const [width, height] = [toMm(solved.mountWidth!), toMm(solved.mountHeight!)];
					const [side, top, bottom] = [solved.side!, solved.top!, solved.bottom!].map(toMm) as [number, number, number];
					const borders = { left: side, right: side, top, bottom };
					for (const cut of ['left', 'right', 'top', 'bottom'] as const) {
						const edge = cut === 'left' || cut === 'right' ? height : width;
						const start = startsAt(cut, cutter);
						const end = borders[opposite[start]];
						const reading = cutter.endStop === 'from the end' ? end - 2 : edge - end + 2;
						expected.set(`${index + 1} ${cut}`, `${borders[cut]} ${borders[start] - 2} ${reading}`);
					}
				});
				const set = plan.steps.flatMap(({ guide, start, end, cuts }) =>
					cuts.map(({ row, side }) => [`${row} ${side}`, [guide, start!, end!].map(toMm).join(' ')] as const),
				);
				expect(new Map(set)).toEqual(expected);
				const setUps = [...new Set(expected.values())].map((text) => text.split(' ').map(Number));
				if (setUps.length > 8) return;
				expect(plan.changes).toBe(bruteForce(setUps));
				expect(plan).toMatchObject({ leastChanges: plan.changes, proven: true });
			}),
			{ numRuns: runs(10, 400) },
		));
});

test('without a word of the cutter the head is pushed, the guide at the left, the end stop read from the end', () => {
	const steps = (cutter: object) => benchOf([{ shape: '3:2' }], cutter).plan.steps;
	expect(steps({})).toEqual(steps({ head: 'push', guideSide: 'left', endStop: 'from the end' }));
});

test('from the start the end stop depends on the size of the mount: long and short edges differ', () => {
	// shape 3:2 in 600 x 450 mm: side 72, top 70, bottom 78; overcut 2
	const { plan } = benchOf([{ shape: '3:2' }], { endStop: 'from the start' });
	const of = (side: CutSide) => {
		const { guide, start, end } = plan.steps.find(({ cuts }) => cuts.some((cut) => cut.side === side))!;
		return [guide, start!, end!].map(toMm);
	};
	expect(of('left')).toEqual([72, 68, 450 - 78 + 2]);
	expect(of('right')).toEqual([72, 76, 450 - 70 + 2]);
	expect(of('top')).toEqual([70, 70, 600 - 72 + 2]);
	// two mounts of one border in two sizes are two set-ups
	const sizes = [{ shape: '1:1', mount: '500 x 500 mm', side: '60', top: '60', bottom: '60' }];
	const two = [...sizes, { ...sizes[0]!, mount: '400 x 400 mm' }];
	expect(benchOf(two, { endStop: 'from the end' }).plan.steps).toHaveLength(1);
	expect(benchOf(two, { endStop: 'from the start' }).plan.steps).toHaveLength(2);
});

describe('each stop is said with the border that it stands at', () => {
	const said = (cutter: object, side: CutSide) => {
		const { plan, settings } = benchOf([{ shape: '3:2' }], cutter);
		return stopsInWords(
			plan.steps.find(({ cuts }) => cuts.some((cut) => cut.side === side))!,
			settings.bench,
			settings,
		);
	};
	test('in one word where one will do', () => {
		expect(said({}, 'left')).toBe('start 68, at the top; end 76, at the bottom');
		expect(said({ head: 'pull' }, 'left')).toBe('start 76, at the bottom; end 68, at the top');
		expect(said({ head: 'pull', guideSide: 'right' }, 'left')).toBe('start 68, at the top; end 76, at the bottom');
		expect(said({ endStop: 'from the start' }, 'left')).toBe(
			'start 68, at the top; end 374 from the start edge, at the bottom',
		);
	});
	test('for each side of a step of several', () =>
		expect(stopPlaces([{ side: 'left' }, { side: 'top' }, { side: 'left' }], { kind: 'guide and stops' })).toEqual({
			start: 'at the top (left), the right (top)',
			end: 'at the bottom (left), the left (top)',
		}));
	test('nothing where there are none', () => {
		const { plan, settings } = benchOf([{ shape: '3:2' }], { kind: 'guide' });
		expect(stopsInWords(plan.steps[0]!, settings.bench, settings)).toBe('');
	});
});
