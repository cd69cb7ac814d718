import { clearEach } from './candidates.ts';
import type { Finder } from './found.ts';

/** `touches-glass`: glazed, no mount and no spacer. A `stop` for surfaces that stick to glass. */
export const touchesGlass: Finder = ({ read, words, settings }) => {
	if (read.cells.mount.kind !== 'none' || words.spacer > 0) return [];
	if (words.glazing === undefined || words.glazing === 'none') return [];
	const sticks = words.surface === 'gloss' || words.surface === 'resin-coated';
	const spacer = settings.unit === 'in' ? '1/8 in' : '3 mm';
	return [
		{
			code: 'touches-glass',
			level: sticks ? 'stop' : 'look',
			cells: ['mount', 'glazing', 'spacer'],
			message: () =>
				`Nothing keeps the print off the ${words.glazing}: there is no mount and no spacer${sticks ? `, and a ${words.surface} surface sticks to it` : ''}.`,
			candidates: () => [
				{ label: () => `Put in a spacer of ${spacer}`, change: { spacer } },
				{ label: () => 'Leave the glazing out', change: { glazing: 'none' } },
				{ label: () => 'Give it a mount', change: { mount: '' } },
			],
		},
	];
};

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
