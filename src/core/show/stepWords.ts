import type { MadeStep } from './madeTick.ts';

/**
 * What each step is called where it is ticked: the word of the step, with what is done for it. A frame is pinned before it
 * is sealed, and has its rings before its cord.
 */
export const stepWords: Readonly<Record<MadeStep, string>> = {
	printed: 'Printed',
	signed: 'Signed',
	hinged: 'Hinged',
	'window clean': 'Mount and bevel clean',
	'glazing clean': 'Glazing clean, no dust under it',
	sealed: 'Fitted, pinned, sealed',
	labelled: 'Labelled',
	corded: 'Rings on, corded, bumpers on',
};
