import { mostUsed } from './mostUsed.ts';
import { splitAssignment } from './splitAssignment.ts';

/** What a frame is for a print; a whole number each. */
export interface FrameOption {
	/** How far the picture's long side is from what was wanted. */
	readonly difference: bigint;
	/** The area of one frame. */
	readonly area: bigint;
}

/** A print that may have one of some frames. */
export interface Applicant {
	/** How many of the frame it needs: all its copies have the same. */
	readonly copies: number;
	/** By the frame's place; undefined where the frame does not suit it. */
	readonly options: readonly (FrameOption | undefined)[];
}

/** Who gets which frame. */
export interface Assignment {
	/** By the print's place, the place of its frame; undefined where it gets none. */
	readonly frames: readonly (number | undefined)[];
	/** Whether no other gives a frame to more prints. */
	readonly isMost: boolean;
	/** Whether no other is better. */
	readonly proven: boolean;
}

/** What is best: as many prints as can be, then the least differences, then the least area. As one number: less is better. */
type Cost = bigint;

/** Steps before the best so far is given: somebody waits for it. */
const usualSteps = 2000;

/** Which frame a print has, by its place; undefined where it gets none. */
type Frames = readonly (number | undefined)[];

/**
 * Gives frames out: to as many prints as can be, then with the least sum of differences, then of the least area.
 *
 * Each step lets the copies of a print be parted over several frames, which is quickly solved and never worse than what is
 * wanted. A print that is parted then is tried with each frame alone, and with none (branch and bound). What is parted is
 * made whole at each step, so there always is an answer.
 * @param counts how many there are of each frame; `Infinity` for as many as are needed
 * @param mostSteps after which the best so far is given, unproven
 */
export function assignFrames(
	applicants: readonly Applicant[],
	counts: readonly number[],
	mostSteps = usualSteps,
): Assignment {
	const costs = costsOf(applicants);
	const kinds = kindsOf(applicants);
	let best: { readonly frames: Frames; readonly cost: Cost } | undefined;
	let steps = 0;
	const search = (settled: readonly Settled[]) => {
		if (++steps > mostSteps) return;
		const { open, left, cost: before } = openPart(settled, { applicants, counts, costs, kinds });
		const copies = open.map(({ place }) => applicants[place]!.copies);
		const { cost, scale, given } = splitAssignment(
			open.map((each) => each.costs),
			copies,
			left.map((count, frame) =>
				mostUsed(
					count,
					copies.filter((_, at) => open[at]!.costs[frame] !== undefined),
				),
			),
		);
		// Costs are whole, so what is parted costs no less than the next whole number.
		if (best && before - -cost / scale >= best.cost) return;
		const frames: (number | undefined)[] = settled.map((choice) => (typeof choice === 'number' ? choice : undefined));
		const parted = open.findIndex((_, at) => given[at]!.some((count) => count > 0 && count < copies[at]!));
		const whole = makeWhole(open, copies, given, left);
		open.forEach(({ place }, at) => (frames[place] = whole[at]));
		const sum = costOf(costs, frames);
		if (!best || sum < best.cost) best = { frames, cost: sum };
		if (parted < 0) return;
		// Of prints that are alike, the first is settled first: it may as well be the one that is parted.
		const next = open.find(({ place }) => kinds[place] === kinds[open[parted]!.place])!;
		const own = given[parted]!;
		const likeliest = [...counts.keys()]
			.filter((frame) => next.costs[frame] !== undefined)
			.sort((a, b) => own[b]! - own[a]!);
		for (const choice of [...likeliest, 'none'] as const)
			search(settled.map((each, place) => (place === next.place ? choice : each)));
	};
	search(applicants.map(() => 'open'));
	const proven = best !== undefined && steps <= mostSteps;
	return { frames: best?.frames ?? applicants.map(() => undefined), isMost: proven, proven };
}

/** How good it is, who gets which frame: less is better. */
export const rankOf = (applicants: readonly Applicant[], frames: Frames): bigint => costOf(costsOf(applicants), frames);

const costOf = (costs: readonly (readonly (Cost | undefined)[])[], frames: Frames): Cost =>
	frames.reduce((all: Cost, frame, place) => (frame === undefined ? all : all + costs[place]![frame]!), 0n);

/** Which frame a print has in a part of the search, if that is settled. */
type Settled = number | 'none' | 'open';

/** A print whose frame is not settled, with what it costs in each frame that it may still have. */
interface OpenPrint {
	readonly place: number;
	readonly costs: readonly (Cost | undefined)[];
}

/** What is given out, to whom. */
interface Job {
	readonly applicants: readonly Applicant[];
	readonly counts: readonly number[];
	readonly costs: readonly (readonly (Cost | undefined)[])[];
	readonly kinds: readonly number[];
}

/**
 * What is left to decide: the open prints, how many are left of each frame, and what the settled prints cost. An open
 * print may have a frame of which enough are left for it, and of prints that are alike none has a frame before that of
 * the one before it: to swap them would be the same.
 */
function openPart(settled: readonly Settled[], { applicants, counts, costs, kinds }: Job) {
	const left = [...counts];
	let cost: Cost = 0n;
	const first = new Map<number, number>();
	settled.forEach((choice, place) => {
		if (choice === 'open') return;
		first.set(kinds[place]!, choice === 'none' ? Infinity : choice);
		if (choice === 'none') return;
		left[choice]! -= applicants[place]!.copies;
		cost += costs[place]![choice]!;
	});
	const open = settled.flatMap((choice, place): OpenPrint[] => {
		if (choice !== 'open') return [];
		const least = first.get(kinds[place]!) ?? 0;
		const own = costs[place]!.map((each, frame) =>
			frame >= least && left[frame]! >= applicants[place]!.copies ? each : undefined,
		);
		return [{ place, costs: own }];
	});
	return { open, left, cost };
}

/** The prints that are alike, by the place of the first of them: they have as many copies, and cost the same in each frame. */
export function kindsOf(applicants: readonly Applicant[]): readonly number[] {
	const firsts = new Map<string, number>();
	return applicants.map(({ copies, options }, place) => {
		const key = [copies, ...options.map((option) => (option ? `${option.difference} ${option.area}` : ''))].join();
		if (!firsts.has(key)) firsts.set(key, place);
		return firsts.get(key)!;
	});
}

/** Each print that has one frame for all its copies keeps it; the others get the cheapest that is left, small ones first. */
function makeWhole(
	open: readonly OpenPrint[],
	copies: readonly number[],
	given: readonly (readonly number[])[],
	counts: readonly number[],
): Frames {
	const left = [...counts];
	const frames = given.map((own, at): number | undefined => {
		const frame = own.findIndex((count) => count > 0 && count === copies[at]);
		if (frame < 0) return undefined;
		left[frame]! -= copies[at]!;
		return frame;
	});
	const others = [...open.keys()].filter((at) => frames[at] === undefined).sort((a, b) => copies[a]! - copies[b]!);
	for (const at of others) {
		const own = open[at]!.costs;
		frames[at] = [...counts.keys()]
			.filter((frame) => own[frame] !== undefined && left[frame]! >= copies[at]!)
			.reduce<number | undefined>((a, b) => (a === undefined || own[b]! < own[a]! ? b : a), undefined);
		if (frames[at] !== undefined) left[frames[at]]! -= copies[at]!;
	}
	return frames;
}

/** What each frame costs each print: below zero, so much that a print more is worth any difference, and that any area. */
function costsOf(applicants: readonly Applicant[]): readonly (readonly (Cost | undefined)[])[] {
	const most = (value: (option: FrameOption, copies: number) => bigint) =>
		1n +
		applicants.reduce(
			(sum, { copies, options }) =>
				sum +
				options.reduce((worst, option) => {
					const own = option ? value(option, copies) : 0n;
					return own > worst ? own : worst;
				}, 0n),
			0n,
		);
	const areaUnit = most(({ area }, copies) => area * BigInt(copies));
	const printUnit = areaUnit * most(({ difference }) => difference);
	return applicants.map(({ copies, options }) =>
		options.map((option) =>
			option ? option.difference * areaUnit + option.area * BigInt(copies) - printUnit : undefined,
		),
	);
}
