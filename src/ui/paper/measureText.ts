import type { MeasureText } from '../../core/labels/fitLabel.ts';

/** The size that texts are measured at, in CSS pixels: a large one, so that nothing is rounded to the screen. */
const measuredAt = 100;

let context: CanvasRenderingContext2D | null | undefined;

/** How wide a text is in the type of the page. Before the type is loaded (`typeLoaded`) it is that of another one. */
export const measureText: MeasureText = (text, isBold) => {
	context ??= document.createElement('canvas').getContext('2d');
	if (!context) return text.length; // no letter is much wider than it is high
	context.font = fontOf(isBold);
	return context.measureText(text).width / measuredAt;
};

const fontOf = (isBold: boolean) =>
	`${isBold ? 600 : 400} ${measuredAt}px ${getComputedStyle(document.documentElement).fontFamily}`;

/** Resolves when the type of the page is loaded, or does not come. */
export async function typeLoaded(): Promise<void> {
	await Promise.allSettled([false, true].map((isBold) => document.fonts.load(fontOf(isBold))));
}
