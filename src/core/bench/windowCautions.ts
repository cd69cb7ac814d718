import { knifeCautions } from './knifeCautions.ts';

/**
 * The cautions for cutting windows with a bevel cutter, in sentences; screens, paper and README say it alike. A window
 * is not cut as a sheet is: the blade leans, its depth is set, and each side is one stroke. All of this is common practice
 * at the bench; the hand behind the blade and the covered blade are asked of every knife, too (see knifeCautions.ts).
 */
export const windowCautions = {
	/** What is drawn on the backs first: blanks of one size look alike, and each comes back to the cutter several times. */
	marking: 'Pencil each print’s number on the back of its blank, with an arrow pointing at the bottom edge.',
	/** What lies where, what is set, and what is tried first. */
	laying:
		'Lay the mount face down on a waste strip, set how deep the blade goes, and make a test cut in an offcut of the same board.',
	/** The same where the bench says that nothing lies under the mount. */
	layingBare:
		'Lay the mount face down, set how deep the blade goes, and make a test cut in an offcut of the same board.',
	/** How the blade goes. */
	stroke: 'Cut each side in one steady stroke. A blade that has to be forced is blunt.',
	/** Where the hands are. */
	hands: 'Keep your fingers behind the blade, away from the edge that it runs along. Nobody stands in its path.',
	/** Where the blade is between cuts, and after the last. */
	blade: 'Cover the blade when you put it down, and put used blades into a hard box.',
	/** What comes before all of this. */
	rules: knifeCautions.rules,
	/** What is said beside each cut. */
	atStep: 'Face down, a waste strip under it, your hand behind the blade.',
	/** The same where nothing lies under the mount. */
	atStepBare: 'Face down, your hand behind the blade.',
	/** All of it for the foot of a page. */
	inShort:
		'Face down; depth tried in offcut; one steady stroke; fingers behind the blade, away from the edge that it runs along; cover it. Local rules and training first.',
} as const;
