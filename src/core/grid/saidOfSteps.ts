import { countOf } from '../values/countOf.ts';

const lower = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

/** What is heard when a step is undone. @param label what it did: “Type picture width” */
export const saidOfUndone = (label: string): string => `Undone: ${lower(label)}`;

/** What is heard when a step is done again. */
export const saidOfRedone = (label: string): string => `Redone: ${lower(label)}`;

/**
 * What is heard when a mend was applied.
 * @param gravest the gravest finding that is left of the print; nothing where there is none
 * @param left how many prints are still to check
 */
export const saidOfMend = (label: string, gravest: string, left: number): string => {
	const others = left === 0 ? 'Nothing more to check.' : `${countOf(left, 'print')} still to check.`;
	return `Done: ${lower(label)}. ${gravest === '' ? others : `${gravest} ${others}`}`;
};
