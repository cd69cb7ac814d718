import type { RowResult } from '../findings/rowResult.ts';
import { isSame, type Length } from '../length/length.ts';
import type { Bench } from '../settings/bench.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { type CutPart, type CutSide, type CutTick, isCutTick, type Tick, tickKey } from '../show/tick.ts';
import { groupBy } from '../values/groupBy.ts';
import type { BenchStep } from './benchPlan.ts';
import { setUpKey } from './setUps.ts';
import { isAsAsked, tickFor } from './ticks.ts';

/** One thing at a time at the bench: a test cut where the thickness changes, or a step of the cutting order. */
export type Station =
	| { readonly kind: 'test cut'; readonly key: string; readonly thickness: Length | undefined }
	| {
			readonly kind: 'step';
			/** Names it for as long as its set-up is in the order. */
			readonly key: string;
			/** From 1, as in the list. */
			readonly number: number;
			readonly step: BenchStep;
			/** Whether a fresh blade is due before it. */
			readonly isBladeDue: boolean;
	  };

const cutsPerMount = 4;

/** All that is to be done at the bench, in order. */
export function stationsOf(steps: readonly BenchStep[], { bladeEvery }: Bench): readonly Station[] {
	const stations: Station[] = [];
	const seen = new Map<string, number>();
	const timeOf = (name: string) => {
		const time = (seen.get(name) ?? 0) + 1;
		seen.set(name, time);
		return time;
	};
	let cutsBefore = 0;
	let blades = 0;
	steps.forEach((step, place) => {
		const last = steps[place - 1];
		if (last === undefined || last.thickness !== step.thickness) {
			const name = `test ${step.thickness ?? ''}`;
			const time = timeOf(name);
			stations.push({ kind: 'test cut', key: time === 1 ? name : `${name} #${time}`, thickness: step.thickness });
		}
		const used = bladeEvery === undefined ? 0 : Math.floor(cutsBefore / (bladeEvery * cutsPerMount));
		const time = timeOf(setUpKey(step));
		stations.push({
			kind: 'step',
			key: `${setUpKey(step)} #${time}`,
			number: place + 1,
			step,
			isBladeDue: used > blades,
		});
		blades = used;
		cutsBefore += step.cuts.length;
	});
	return stations;
}

/** A mount in a step, to be ticked off. */
export interface StepMount {
	readonly row: Row;
	/** Its place in the show, from 0. */
	readonly index: number;
	readonly copy: number;
	/** How many copies the row has. */
	readonly copies: number;
	readonly part: CutPart;
	readonly sides: readonly CutSide[];
	/** The ticks that its cuts of this step get. */
	readonly cuts: readonly CutTick[];
	/** Whether all of them are made, as the row asks now. */
	readonly isMade: boolean;
	/** How many boards were spoilt for it. */
	readonly spoilt: number;
}

/** The mounts of a step in the order in which they are cut. */
export function stepMounts(
	{ cuts }: BenchStep,
	rows: readonly Row[],
	results: readonly RowResult[],
	settings: Settings,
	ticks: ReadonlyMap<string, Tick>,
): readonly StepMount[] {
	const mounts = groupBy(cuts, ({ row, copy, part }) => `${row} ${copy} ${part}`);
	return [...mounts.values()].flatMap((own): StepMount[] => {
		const { row: number, copy, part } = own[0]!;
		const row = rows[number - 1];
		const result = results[number - 1];
		if (!row || !result) return [];
		const wanted = own.flatMap((cut) => tickFor(row, result, settings, cut) ?? []);
		const spoilt = ticks.get(tickKey({ row: row.id, copy, part, side: 'spoilt' }));
		return [
			{
				row,
				index: number - 1,
				copy,
				copies: result.copies,
				part,
				sides: own.map(({ side }) => side),
				cuts: wanted,
				isMade: wanted.every((cut) => isMade(cut, ticks.get(tickKey(cut)))),
				spoilt: spoilt?.side === 'spoilt' ? spoilt.times : 0,
			},
		];
	});
}

const isMade = (wanted: CutTick, tick: Tick | undefined): boolean =>
	tick !== undefined && isCutTick(tick) && isAsAsked(tick, wanted);

/** What is wrong with a step for the guide of the bench; undefined where it can be set. */
export function guideProblem({ guide, border }: BenchStep, bench: Bench): 'past' | 'under' | undefined {
	if (bench.kind === 'straight edge') return undefined;
	if (bench.greatest !== undefined && guide > bench.greatest && !isSame(guide, bench.greatest)) return 'past';
	if (bench.least !== undefined && border < bench.least && !isSame(border, bench.least)) return 'under';
	return undefined;
}

/** The active station: the one named, else the first at which something is still to be done. */
export function activeStation(
	stations: readonly Station[],
	key: string | undefined,
	isDone: (station: Station) => boolean,
) {
	const named = stations.findIndex((station) => station.key === key);
	if (named >= 0) return named;
	const open = stations.findIndex((station) => station.kind === 'step' && !isDone(station));
	return Math.max(0, open > 0 && stations[open - 1]?.kind === 'test cut' ? open - 1 : open);
}

/** Sides in words, as a person reads them at the bench. */
export function sidesInWords(cut: readonly CutSide[]): string {
	const sides = new Set(cut);
	if (sides.size === 4) return 'all four sides';
	const both = sides.has('left') && sides.has('right');
	const words = [
		both ? 'both sides' : sides.has('left') ? 'left' : sides.has('right') ? 'right' : '',
		sides.has('top') ? 'top' : '',
		sides.has('bottom') ? 'bottom' : '',
	];
	return words.filter((word) => word !== '').join(', ');
}
