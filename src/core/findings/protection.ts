import { formatTypeable } from '../length/formatLength.ts';
import { inches, type Length, mm, sameWithin, zero } from '../length/length.ts';
import { clearEach } from './candidates.ts';
import type { FiguresByCode } from './figures.ts';
import type { Candidate, Finder, Found, RowContext } from './found.ts';

/** Surfaces that stick to glass, and that rub off on it. Common practice. */
const sticking: readonly unknown[] = ['gloss', 'resin-coated'];
const loose: readonly unknown[] = ['pastel', 'charcoal'];

/**
 * `touches-glass`: a print without a window mount and without a spacer is glazed (`stop` for surfaces that stick to glass); or
 * its spacer is thin, or a loose surface lies behind a single mount without one (`look`).
 */
export const touchesGlass: Finder = (context) => {
	const { read, hasMount, words } = context;
	const { innerMount, spacer = zero, isFloat } = read.cells;
	const { surface } = words;
	if (words.glazing === 'none') return [];
	const glazing = context.materials.glazing?.usual ?? words.glazing;
	const found = (level: 'stop' | 'look', figures: () => FiguresByCode['touches-glass']): readonly Found[] => [
		{
			code: 'touches-glass',
			level,
			cells: ['mount', 'glazing', 'spacer'],
			figures,
			candidates: () => protections(context),
		},
	];
	if (hasMount && !isFloat)
		return loose.includes(surface) && spacer === 0 && !innerMount
			? found('look', () => ({ kind: 'loose', surface: surface! }))
			: [];
	if (spacer === 0) {
		const sticks = sticking.includes(surface);
		return found(sticks ? 'stop' : 'look', () => ({
			kind: 'nothing between',
			glazing,
			...(isFloat && { mounting: 'float' as const }),
			surface: sticks ? surface : undefined,
		}));
	}
	const { least, over } = spacerNeeded(context);
	if (spacer >= least - sameWithin) return [];
	return found('look', () => ({
		kind: 'thin spacer',
		glazing,
		spacer,
		least: over === undefined ? least : { usual: least },
		over: over && { usual: over },
	}));
};

/** The least spacer: the show's, and 5 mm (3/16 in) for a side over 600 mm (24 in), which bends. Common practice. */
function spacerNeeded({ settings, solution: { solved } }: RowContext): { least: Length; over?: Length } {
	const [large, over] = settings.unit === 'in' ? [inches(3 / 16), inches(24)] : [mm(5), mm(600)];
	const isLarge = Math.max(solved.pictureWidth ?? 0, solved.pictureHeight ?? 0) > over + sameWithin;
	return isLarge && large > settings.leastSpacer ? { least: large, over } : { least: settings.leastSpacer };
}

function protections(context: RowContext): Candidate[] {
	const { settings, hasMount, read } = context;
	const { least } = spacerNeeded(context);
	const spacer =
		least > 0
			? [
					{
						offer: { kind: 'set' as const, column: 'spacer' as const, to: least },
						change: { spacer: formatTypeable(least, settings.unit) },
					},
				]
			: [];
	return [
		...spacer,
		{ offer: { kind: 'set text', column: 'glazing', text: 'none' }, change: { glazing: 'none' } },
		...(read.cells.isFloat ? [{ offer: { kind: 'mount it in a window' as const }, change: { mounting: '' } }] : []),
		...(hasMount ? [] : [{ offer: { kind: 'give a mount' as const }, change: { mount: '' } }]),
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
					figures: () => ({}),
					candidates: () => [
						{ offer: { kind: 'set text', column: 'signed on', text: 'back' }, change: { 'signed on': 'back' } },
						{ offer: { kind: 'set text', column: 'signed on', text: 'picture' }, change: { 'signed on': 'picture' } },
					],
				},
			]
		: [];

/** `signature-covered`: signed on the margin below the picture, and neither reveal nor signing space shows it. */
export const signatureCovered: Finder = (context) => {
	const { words, solution, settings } = context;
	const { overlapBottom } = solution.solved;
	if (words.signedOn !== 'margin' || overlapBottom === undefined || overlapBottom < 0) return [];
	const space = settings.unit === 'in' ? inches(1 / 2) : mm(10);
	return [
		{
			code: 'signature-covered',
			level: 'look',
			cells: ['overlapBottom'],
			figures: () => ({ covered: overlapBottom }),
			candidates: () => [
				...clearEach(context, ['window height']),
				{
					offer: { kind: 'set', column: 'signing space', to: space },
					change: { 'signing space': formatTypeable(space, settings.unit) },
				},
				{ offer: { kind: 'set text', column: 'signed on', text: 'picture' }, change: { 'signed on': 'picture' } },
				{ offer: { kind: 'set text', column: 'signed on', text: 'back' }, change: { 'signed on': 'back' } },
			],
		},
	];
};
