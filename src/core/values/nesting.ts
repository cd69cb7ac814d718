/** What is typed is a few levels deep; what goes on for ever can be neither kept nor written again. */
const deepest = 20;

const isWithin = (value: unknown, levels: number): boolean =>
	typeof value !== 'object' ||
	value === null ||
	(levels > 0 && Object.values(value).every((each) => isWithin(each, levels - 1)));

/** What is wrong with a plain value that has lists in lists without end, to stand behind its place; undefined: nothing. */
export const nestingProblem = (value: unknown): string | undefined =>
	isWithin(value, deepest) ? undefined : ` has lists in lists more than ${deepest} deep`;
