import { inches, mm, sameWithin } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import { clear, clearEach, typedOf } from './candidates.ts';
import type { FiguresByCode, InFrame } from './figures.ts';
import type { Axis } from './measure.ts';
import { axes, type Candidate, type Finder, type Found, type RowContext } from './found.ts';
import { otherFrames } from './otherFrames.ts';

/** The play of a mount in its rebate that needs no second look, in all on each axis. Common practice. */
const usualPlay = ({ unit }: Settings) =>
	unit === 'in' ? { least: inches(1 / 32), most: inches(3 / 16) } : { least: mm(1), most: mm(5) };

/**
 * `frame-clash`: the frame named is not in the list; or what goes into a row's frame is too large for its rebate, or can
 * slide so far that a gap shows beside it (`stop`), or has less or more play than is usual (`look`).
 */
export const frameClash: Finder = (context) => {
	const { frame, inside, seat, named } = context.frame;
	if (named.missing !== undefined) return [notListed(context, named.missing)];
	if (!frame || !inside || !seat) return [];
	const { rebate, play } = seat;
	return axes.flatMap((keys) => {
		const { axis } = keys;
		const clash = clashOf(context, frame, axis, inside[axis], rebate[axis], play[axis]);
		if (!clash) return [];
		return [
			{
				code: 'frame-clash',
				level: clash.level,
				cells: [context.hasMount ? keys.mount : keys.picture],
				figures: () => clash.figures,
				candidates: () => [...mountThatGoesIn(context, frame, rebate), ...otherFrames(context)],
			},
		];
	});
};

function notListed(context: RowContext, name: string): Found {
	return {
		code: 'frame-clash',
		level: 'stop',
		cells: ['frame'],
		figures: () => ({ kind: 'not listed', frame: name }),
		candidates: () => [...otherFrames(context), ...clearEach(context, ['frame'])],
	};
}

/** What is wrong on one axis: undefined where nothing is. */
function clashOf(
	context: RowContext,
	frame: Frame,
	axis: Axis,
	inside: number,
	rebate: number,
	play: number,
): { level: 'stop' | 'look'; figures: FiguresByCode['frame-clash'] } | undefined {
	const { least, most } = usualPlay(context.settings);
	const of = { what: whatGoesIn(context), axis, inside, frame: frame.name };
	if (play < -sameWithin) return { level: 'stop', figures: { kind: 'too large', ...of, over: -play, rebate } };
	const left = Math.max(0, play);
	if (frame.lip !== undefined && play >= frame.lip - sameWithin)
		return { level: 'stop', figures: { kind: 'gap', ...of, play: left, lip: frame.lip } };
	if (play >= least - sameWithin && play <= most + sameWithin) return undefined;
	const usual = { least: { usual: least }, most: { usual: most } };
	return { level: 'look', figures: { kind: 'unusual play', ...of, play: left, ...usual } };
}

function whatGoesIn({ hasMount, read }: RowContext): InFrame {
	if (hasMount) return 'mount';
	return read.cells.paper ? 'paper' : 'picture';
}

/** The mount that the frame takes, as the rebate lies; a print without a mount has none to change. */
function mountThatGoesIn(context: RowContext, { size }: Frame, rebate: Size): Candidate[] {
	if (!size || !context.hasMount) return [];
	const isAsGiven = rebate.width === size.rebate.width;
	const { width, height } = size.takes;
	const [across, down] = isAsGiven ? [width, height] : [height, width];
	const typed = `${context.text(across)} x ${context.text(down)}`;
	return [
		{
			offer: { kind: 'set size', of: 'mount', size: { width: across, height: down } },
			change: { mount: typed, 'mount width': '', 'mount height': '' },
		},
		...(typedOf(context, ['mount width', 'mount height']).length > 1 ? [clear('mount width', 'mount height')] : []),
		...clearEach(context, ['mount', 'mount width', 'mount height']),
	];
}
