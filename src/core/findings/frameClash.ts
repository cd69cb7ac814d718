import { inches, mm, sameWithin } from '../length/length.ts';
import { frameOf, insideFrame, missingFrame, seatIn, takes } from '../row/frame.ts';
import type { Frame, Settings, Size } from '../show/settings.ts';
import { clear, clearEach, typedOf } from './candidates.ts';
import { axes, type Candidate, type Finder, type Found, type RowContext } from './found.ts';
import { sizeText } from './sizeText.ts';

/** The play of a mount in its rebate that needs no second look, in all on each axis. Common practice. */
const usualPlay = ({ unit }: Settings) =>
	unit === 'in' ? { least: inches(1 / 32), most: inches(3 / 16) } : { least: mm(1), most: mm(5) };

/**
 * `frame-clash`: the frame named is not in the list; or what goes into a row's frame is too large for its rebate, or can
 * slide so far that a gap shows beside it (`stop`), or has less or more play than is usual (`look`).
 */
export const frameClash: Finder = (context) => {
	const { row, read, settings, solution } = context;
	const missing = missingFrame(row, settings);
	const inside = insideFrame(read.cells, solution.solved);
	if (missing !== undefined) return [notListed(context, missing, inside)];
	const frame = frameOf(row, inside, settings);
	if (!frame || !inside) return [];
	const { rebate, play } = seatIn(frame, inside);
	return axes.flatMap((keys) => {
		const told = wordsOf(context, frame, inside[keys.axis], rebate[keys.axis], play[keys.axis]);
		if (!told) return [];
		return [
			{
				code: 'frame-clash',
				level: told.level,
				cells: [read.cells.mount.kind === 'none' ? keys.picture : keys.mount],
				message: () => `The ${whatGoesIn(context)}’s ${keys.axis} ${told.words()}.`,
				candidates: () => [...mountThatGoesIn(context, frame, rebate), ...framesThatTake(context, inside)],
			},
		];
	});
};

function notListed(context: RowContext, name: string, inside: Size | undefined): Found {
	return {
		code: 'frame-clash',
		level: 'stop',
		cells: ['frame'],
		message: () => `There is no frame “${name}” in the show’s list.`,
		candidates: () => [...(inside ? framesThatTake(context, inside) : []), ...clearEach(context, ['frame'])],
	};
}

/** What is wrong on one axis, from its own length on. */
function wordsOf(context: RowContext, frame: Frame, own: number, rebate: number, play: number) {
	const { settings, figure, say } = context;
	const { least, most } = usualPlay(settings);
	if (play < -sameWithin)
		return {
			level: 'stop' as const,
			words: () => `${figure(own)} is ${say(-play)} larger than the ${figure(rebate)} of the rebate of “${frame.name}”`,
		};
	const has = () => `${figure(own)} has ${say(Math.max(0, play))} of play in “${frame.name}”`;
	if (frame.lip !== undefined && play >= frame.lip - sameWithin)
		return {
			level: 'stop' as const,
			words: () => `${has()}, and its lip of ${say(frame.lip!)} does not hide a gap`,
		};
	if (play >= least - sameWithin && play <= most + sameWithin) return undefined;
	return { level: 'look' as const, words: () => `${has()}; ${figure(least)} to ${say(most)} are usual` };
}

function whatGoesIn({ read: { cells } }: RowContext): string {
	if (cells.mount.kind !== 'none') return 'mount';
	return cells.paper ? 'paper' : 'picture';
}

/** The mount that the frame takes, as the rebate lies; a print without a mount has none to change. */
function mountThatGoesIn(context: RowContext, { size }: Frame, rebate: Size): Candidate[] {
	if (!size || context.read.cells.mount.kind === 'none') return [];
	const isAsGiven = rebate.width === size.rebate.width;
	const { width, height } = size.takes;
	const [across, down] = isAsGiven ? [width, height] : [height, width];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [
		{
			label: () => `Make the mount ${sizeText(context, across, down)}`,
			change: { mount: typed, 'mount width': '', 'mount height': '' },
		},
		...(typedOf(context, ['mount width', 'mount height']).length > 1 ? [clear('mount width', 'mount height')] : []),
		...clearEach(context, ['mount', 'mount width', 'mount height']),
	];
}

/** The frames of the list that take what goes in. */
const framesThatTake = ({ settings }: RowContext, inside: Size): Candidate[] =>
	settings.frames
		.filter((frame) => !frame.size || takes(frame, inside, settings))
		.map(({ name }) => ({ label: () => `Use the frame “${name}”`, change: { frame: name } }));
