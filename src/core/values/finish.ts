/** Does a piece of work at once that could be done in steps. */
export function finish<Result>(steps: Iterator<unknown, Result, undefined>): Result {
	for (;;) {
		const step = steps.next();
		if (step.done) return step.value;
	}
}
