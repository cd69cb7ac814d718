/**
 * Does something once the page has been painted as it is now: what can wait does not hold up what cannot.
 * @returns calls it off
 */
export function afterPaint(act: () => void): () => void {
	let timer: ReturnType<typeof setTimeout> | undefined;
	const frame = requestAnimationFrame(() => (timer = setTimeout(act)));
	return () => {
		cancelAnimationFrame(frame);
		clearTimeout(timer);
	};
}
