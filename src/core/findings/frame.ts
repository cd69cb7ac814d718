import { innerBorder } from '../bench/windowCuts.ts';
import { type Length, length, plus, sameWithin } from '../length/length.ts';
import { frameOf, hiddenByFrame, insideFrame } from '../row/frame.ts';
import { backingThickness, glazingThickness, printThickness, stackParts, stackThickness } from '../row/stack.ts';
import { clearEach, sizeColumns } from './candidates.ts';
import { axes, type Finder } from './found.ts';

/** `too-thick`: mounts, print and undermount are thicker than the show's rules allow. */
export const tooThick: Finder = (context) => {
	const { row, read, settings, figure, say } = context;
	const { thickness } = settings.limits;
	if (thickness === undefined || read.cells.mount.kind === 'none') return [];
	const hasInner = !!read.cells.innerMount;
	const total = stackThickness(row, hasInner, settings);
	if (total <= thickness + sameWithin) return [];
	const parts = stackParts(row, hasInner, settings).map(figure).join(' + ');
	return [
		{
			code: 'too-thick',
			level: 'stop',
			cells: ['board'],
			message: () =>
				`Mounts, print and undermount are ${parts} = ${figure(total)} thick; ${say(thickness)} at most are allowed.`,
			candidates: () => clearEach(context, ['inner mount', 'board']),
		},
	];
};

/**
 * `too-deep`: glazing, spacer, mounts, print, undermount and backing are deeper than the frame's rebate (`stop`), or
 * leave too little of it for the points behind them (`look`).
 */
export const tooDeep: Finder = (context) => {
	const { row, read, settings, solution, words, figure, say } = context;
	const depth = frameOf(row, insideFrame(read.cells, solution.solved), settings)?.depth;
	if (depth === undefined) return [];
	const isBare = read.cells.mount.kind === 'none';
	const mounts = isBare ? [printThickness] : stackParts(row, !!read.cells.innerMount, settings);
	const parts = [glazingThickness[words.glazing], words.spacer, ...mounts, backingThickness].filter((part) => part > 0);
	const total = plus(...parts);
	const left = depth - total;
	if (left >= settings.pointsRoom - sameWithin) return [];
	const what = [
		...(words.glazing === 'none' ? [] : ['glazing']),
		...(words.spacer > 0 ? ['spacer'] : []),
		...(isBare ? [] : [read.cells.innerMount ? 'mounts' : 'mount']),
		'print',
	].join(', ');
	const sum = () =>
		`${what[0]!.toUpperCase()}${what.slice(1)} and backing are about ${parts.map(figure).join(' + ')} = ${figure(total)} deep`;
	const isOver = left < -sameWithin;
	return [
		{
			code: 'too-deep',
			level: isOver ? 'stop' : 'look',
			cells: ['frame'],
			message: () =>
				isOver
					? `${sum()}, ${say(-left)} more than the rebate’s ${figure(depth)}.`
					: `${sum()}: ${say(left)} of the rebate’s ${figure(depth)} is left, and points need ${say(settings.pointsRoom)}.`,
			candidates: () => clearEach(context, ['frame', 'inner mount', 'spacer', 'board', 'glazing']),
		},
	];
};

/** `lip-shrinks`: what the lip of the frame leaves to be seen of a border is under the least border. */
export const lipShrinks: Finder = (context) => {
	const { row, settings, solution, figure, say } = context;
	const hidden = hiddenByFrame(row, solution.solved, settings);
	if (!hidden) return [];
	return axes.flatMap(({ axis, borders }) => {
		const thin = borders.filter((key) => {
			const border = solution.solved[key];
			return border !== undefined && border - hidden[axis] < settings.leastBorder - sameWithin;
		});
		if (thin.length === 0) return [];
		const seen = thin
			.map(
				(key) =>
					`${figure(length(Math.round(solution.solved[key]! - hidden[axis])))} of the ${key}’s ${figure(solution.solved[key]!)}`,
			)
			.join(' and ');
		return [
			{
				code: 'lip-shrinks',
				level: 'look' as const,
				cells: thin,
				message: () =>
					`In the frame “${hidden.frame.name}” one sees ${seen}, under the least border of ${say(settings.leastBorder)}.`,
				candidates: () => clearEach(context, [...sizeColumns, 'frame', 'board']),
			},
		];
	});
};

/** `past-guide`: a border past the guide's greatest setting, or under the least that the cutter can hold. */
export const pastGuide: Finder = (context) => {
	const { read, settings, solution, figure, say } = context;
	const { greatest, least, kind, correction = 0 } = settings.bench;
	// A guide that cuts short of what it reads is set wider than the border.
	const shortBy = kind === 'straight edge' ? 0 : correction;
	const isBelowZero = (border: Length) => border - shortBy < -sameWithin;
	const isPast = (border: Length) =>
		isBelowZero(border) ||
		(greatest !== undefined && border - shortBy > greatest + sameWithin) ||
		(least !== undefined && border < least - sameWithin);
	const { innerMount } = read.cells;
	return axes.flatMap(({ borders }) => {
		const cuts = borders.flatMap((key) => {
			const border = solution.solved[key];
			if (border === undefined) return [];
			const outer = { key, border, words: `${key} ${figure(border)}` };
			if (!innerMount) return [outer];
			const inner = innerBorder(border, innerMount, settings);
			return [outer, { key, border: inner, words: `the inner mount’s ${key} ${figure(inner)}` }];
		});
		const beyond = cuts.filter(({ border }) => isPast(border));
		if (beyond.length === 0) return [];
		const past = borders.filter((name) => beyond.some(({ key }) => key === name));
		const words = beyond.map((cut) => cut.words).join(' and ');
		const below = beyond.find(({ border }) => isBelowZero(border));
		const outOf = () => (below ? `would be set to ${say(below.border - shortBy)}` : `holds ${range}`);
		const range = [
			...(least === undefined ? [] : [`from ${say(least)}`]),
			...(greatest === undefined ? [] : [`to ${say(greatest)}`]),
		].join(' ');
		return [
			{
				code: 'past-guide',
				level: 'look' as const,
				cells: past,
				message: () => `${words[0]!.toUpperCase()}${words.slice(1)}: the cutter’s guide ${outOf()}.`,
				candidates: () => clearEach(context, sizeColumns),
			},
		];
	});
};
