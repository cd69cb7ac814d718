import { formatTypeable } from '../length/formatLength.ts';
import { inches, type Length, mm, sameWithin } from '../length/length.ts';
import { clearEach } from './candidates.ts';
import type { Candidate, Finder, RowContext } from './found.ts';

/** Surfaces that stick to glass, and that rub off on it. Common practice. */
const sticking: readonly unknown[] = ['gloss', 'resin-coated'];
const loose: readonly unknown[] = ['pastel', 'charcoal'];

/**
 * `touches-glass`: a print without a mount and without a spacer is glazed (`stop` for surfaces that stick to glass); or
 * its spacer is thin, or a loose surface lies behind a single mount without one (`look`).
 */
export const touchesGlass: Finder = (context) => {
	const { read, words } = context;
	const { mount, innerMount } = read.cells;
	const { surface, glazing, spacer } = words;
	if (glazing === 'none') return [];
	const found = (level: 'stop' | 'look', message: () => string) => [
		{
			code: 'touches-glass',
			level,
			cells: ['mount', 'glazing', 'spacer'],
			message,
			candidates: () => protections(context),
		},
	];
	if (mount.kind !== 'none')
		return loose.includes(surface) && spacer === 0 && !innerMount
			? found('look', () => `A ${surface} surface rubs off: behind a single mount it needs a spacer.`)
			: [];
	if (spacer === 0) {
		const sticks = sticking.includes(surface);
		return found(
			sticks ? 'stop' : 'look',
			() =>
				`Nothing keeps the print off the ${glazing}: there is no mount and no spacer${sticks ? `, and a ${surface} surface sticks to it` : ''}.`,
		);
	}
	const { least, over } = spacerNeeded(context);
	if (spacer >= least - sameWithin) return [];
	const why = over === undefined ? '' : ` for a side over ${context.say(over)}`;
	return found(
		'look',
		() =>
			`The spacer of ${context.say(spacer)} keeps the print too near the ${glazing}: ${context.say(least)} at least${why}.`,
	);
};

/** The least spacer: the show's, and 5 mm (3/16 in) for a side over 600 mm (24 in), which bends. Common practice. */
function spacerNeeded({ settings, solution: { solved } }: RowContext): { least: Length; over?: Length } {
	const [large, over] = settings.unit === 'in' ? [inches(3 / 16), inches(24)] : [mm(5), mm(600)];
	const isLarge = Math.max(solved.pictureWidth ?? 0, solved.pictureHeight ?? 0) > over + sameWithin;
	return isLarge && large > settings.leastSpacer ? { least: large, over } : { least: settings.leastSpacer };
}

function protections(context: RowContext): Candidate[] {
	const { settings, read } = context;
	const { least } = spacerNeeded(context);
	const spacer =
		least > 0
			? [
					{
						label: () => `Put in a spacer of ${context.say(least)}`,
						change: { spacer: formatTypeable(least, settings.unit) },
					},
				]
			: [];
	return [
		...spacer,
		{ label: () => 'Leave the glazing out', change: { glazing: 'none' } },
		...(read.cells.mount.kind === 'none' ? [{ label: () => 'Give it a mount', change: { mount: '' } }] : []),
	];
}

/** `signed-on-mount`: a mount may be replaced, and the signature with it. */
export const signedOnMount: Finder = ({ words }) =>
	words.signedOn === 'mount'
		? [
				{
					code: 'signed-on-mount',
					level: 'look',
					cells: ['signed on'],
					message: () => 'The mount is signed: it may be replaced, and the signature with it. Sign the print.',
					candidates: () => [
						{ label: () => 'Sign the back of the print', change: { 'signed on': 'back' } },
						{ label: () => 'Sign the picture', change: { 'signed on': 'picture' } },
					],
				},
			]
		: [];

/** `signature-covered`: signed on the margin below the picture, and neither reveal nor signing space shows it. */
export const signatureCovered: Finder = (context) => {
	const { words, solution, settings } = context;
	const { overlapBottom } = solution.solved;
	if (words.signedOn !== 'margin' || overlapBottom === undefined || overlapBottom < 0) return [];
	const space = settings.unit === 'in' ? '1/2 in' : '10 mm';
	return [
		{
			code: 'signature-covered',
			level: 'look',
			cells: ['overlapBottom'],
			message: () =>
				`The signature on the margin is under the mount, which covers the picture by ${context.say(overlapBottom)} below.`,
			candidates: () => [
				...clearEach(context, ['window height']),
				{ label: () => `Leave a signing space of ${space}`, change: { 'signing space': space } },
				{ label: () => 'It is signed on the picture', change: { 'signed on': 'picture' } },
				{ label: () => 'It is signed on the back', change: { 'signed on': 'back' } },
			],
		},
	];
};
