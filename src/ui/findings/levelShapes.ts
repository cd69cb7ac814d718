import type { Level } from '../../core/findings/finding.ts';

/** What the marks of findings are drawn as, as paths in a square of `levelSize`: as a knife would leave them. */
export const levelShapes: Readonly<Record<Level, string>> = {
	stop: 'M0 0H12V12Z', // a filled notch
	look: 'M2.6 1H11V9.4Z', // an open one
	note: 'M5.5 4a2.5 2.5 0 0 1 5 0a2.5 2.5 0 0 1-5 0Z', // a dot
};

/** The sides of that square, in pixels. */
export const levelSize = 12;
