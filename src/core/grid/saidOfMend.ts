import { countOf } from '../values/countOf.ts';
import { lower } from './saidOfSteps.ts';

/**
 * What is heard when a mend was applied.
 * @param gravest the gravest finding that is left of the print; nothing where there is none
 * @param left how many prints are still to check
 */
export const saidOfMend = (label: string, gravest: string, left: number): string => {
	const others = left === 0 ? 'Nothing more to check.' : `${countOf(left, 'print')} still to check.`;
	return `Done: ${lower(label)}. ${gravest === '' ? others : `${gravest} ${others}`}`;
};
