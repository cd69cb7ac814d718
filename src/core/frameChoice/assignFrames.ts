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
	/** Whether no other is better. */
	readonly proven: boolean;
}

/** What is best: as many prints as can be, then the least differences, then the least area. As one number: less is better. */
type Cost = bigint;

/**
 * Gives frames out: to as many prints as can be, then with the least sum of differences, then of the least area.
 *
 * Each step lets the copies of a print be parted over several frames, which is quickly solved and never worse than what is
 * wanted. A print that is parted then is tried with each frame alone, and with none (branch and bound).
 * @param counts how many there are of each frame; `Infinity` for as many as are needed
 * @param mostSteps after which the best so far is given, unproven
 */
export function assignFrames(
	applicants: readonly Applicant[],
	counts: readonly number[],
	mostSteps = 2000,
): Assignment {
	const costs = costsOf(applicants);
	let best: { readonly frames: readonly (number | undefined)[]; readonly cost: Cost } | undefined;
	let steps = 0;
	const search = (settled: readonly Settled[]) => {
		if (++steps > mostSteps) return;
		const open = settled.map((choice, place) =>
			choice === 'open' ? costs[place]! : costs[place]!.map((cost, frame) => (frame === choice ? cost : undefined)),
		);
		const { cost, scale, given } = splitAssignment(
			open,
			applicants.map(({ copies }) => copies),
			counts,
		);
		// Costs are whole, so what is parted costs no less than the next whole number.
		const atLeast = -(-cost / scale);
		if (best && atLeast >= best.cost) return;
		const parted = given.findIndex(
			(own, place) => settled[place] === 'open' && own.some((count) => count > 0 && count < applicants[place]!.copies),
		);
		if (parted < 0 && isWhole(settled, given, applicants)) {
			best = { frames: given.map((own) => placeOf(own)), cost: atLeast };
			return;
		}
		const next = parted >= 0 ? parted : settled.findIndex((choice) => choice === 'open');
		if (next < 0) return; // a frame that is settled has too few left for it
		const own = given[next]!;
		const likeliest = [...costs[next]!.keys()]
			.filter((frame) => costs[next]![frame] !== undefined)
			.sort((a, b) => own[b]! - own[a]!);
		for (const choice of [...likeliest, 'none'] as const)
			search(settled.map((each, place) => (place === next ? choice : each)));
	};
	search(applicants.map(() => 'open'));
	return {
		frames: best?.frames ?? applicants.map(() => undefined),
		proven: best !== undefined && steps <= mostSteps,
	};
}

/** Which frame a print has in a part of the search, if that is settled. */
type Settled = number | 'none' | 'open';

const placeOf = (own: readonly number[]): number | undefined => {
	const place = own.findIndex((count) => count > 0);
	return place < 0 ? undefined : place;
};

/** Whether what is given is all copies of each print in one frame, and every frame that is settled. */
const isWhole = (
	settled: readonly Settled[],
	given: readonly (readonly number[])[],
	applicants: readonly Applicant[],
) =>
	given.every((own, place) => {
		const choice = settled[place]!;
		const { copies } = applicants[place]!;
		if (typeof choice === 'number') return own[choice] === copies;
		return own.every((count) => count === 0 || count === copies);
	});

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
