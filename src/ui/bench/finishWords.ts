/** What the button says that ticks off what is left of a step. */
export const finishWords = (left: number, all: number): string =>
	left === all && all > 1 ? `All ${all} cut` : left === 1 && all === 1 ? 'Cut made' : 'The rest cut';
