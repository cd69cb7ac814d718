/**
 * What the button says that ticks off what is left of a step.
 * @param cuts of the one that is left, where it is the only one
 */
export function finishWords(left: number, all: number, cuts = 1): string {
	if (all > 1) return left === all ? `All ${all} cut` : 'The rest cut';
	return cuts === 1 ? 'Cut made' : cuts === 2 ? 'Both cuts made' : `All ${cuts} cuts made`;
}
