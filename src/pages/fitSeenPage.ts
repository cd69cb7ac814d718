/** What share of the page's height is seen at most while a keyboard is up; bars of the browser cover less. */
const mostSeen = 0.8;

/** Under this height, in pixels, what is seen has room for the active cell and little else. */
const leastHeight = 520;

/**
 * Keeps `--seen-height` at the height of the page that no on-screen keyboard covers, and `--seen-top` at where it begins.
 * While a keyboard covers a good part of the page, the page's root has the class `covered`, and `scarce` where little is
 * left: what can wait leaves its room.
 * A page that has been enlarged with two fingers is left as it is: it is looked at, not laid out again.
 * @returns stops that
 */
export function fitSeenPage(): (() => void) | undefined {
	const seen = window.visualViewport;
	if (!seen) return undefined;
	const { style, classList } = document.documentElement;
	const fit = () => {
		// All is read before anything is written: what is read after that has the whole page laid out once more.
		const { scale, offsetTop } = seen;
		const height = seen.height * scale;
		const isCovered = height < window.innerHeight * mostSeen;
		style.setProperty('--seen-height', `${Math.round(height)}px`);
		classList.toggle('covered', isCovered);
		classList.toggle('scarce', isCovered && height < leastHeight);
		style.setProperty('--seen-top', `${scale > 1.01 ? 0 : Math.round(offsetTop)}px`);
	};
	fit();
	for (const event of ['resize', 'scroll']) seen.addEventListener(event, fit);
	return () => {
		for (const event of ['resize', 'scroll']) seen.removeEventListener(event, fit);
	};
}
