/**
 * What the button says that ticks off what is left of a step.
 * @param cuts of the one that is left, where it is the only one
 */
export function finishWords(left: number, all: number, cuts = 1): string {
	if (left < all) return 'The rest cut';
	const count = all > 1 ? all : cuts;
	return count === 1 ? 'Cut made' : count === 2 ? 'Both cut' : `All ${count} cut`;
}
