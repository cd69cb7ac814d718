import { onceMade } from '../values/onceMade.ts';
import type { LabelLine } from './labelLines.ts';

/** How wide a text is, in its own size: 2 for a text twice as wide as its type is high. */
export type MeasureText = (text: string, isBold: boolean) => number;

/** A line as it stands on its label: `left` and `top` of its box in mm from the label's upper left corner. */
export interface FittedLine extends Pick<LabelLine, 'word' | 'text' | 'isBold' | 'hasArrow'> {
	readonly left: number;
	readonly top: number;
	readonly points: number;
}

/** A label as it comes out. */
export interface FittedLabel {
	readonly lines: readonly FittedLine[];
	/** What had to be shortened, and what found no room at all. */
	readonly shortened: readonly LabelLine['word'][];
	readonly leftOut: readonly LabelLine['word'][];
}

const mmPerPoint = 25.4 / 72;
/** From line to line, in the size of the type. */
export const lineHeight = 1.25;
/** What an arrow takes before its line, in the size of its type. */
export const arrowWidth = 0.9;
/** Steps in which type shrinks, in points. */
const step = 0.25;
/** A browser may set a text a hair wider than it was measured. */
const hair = 1.01;

/** How far text stays from the edge of its label, in mm: sheets are never fed quite straight. */
export const paddingOf = (widthMm: number, heightMm: number): number =>
	Math.max(1, Math.min(4, Math.min(widthMm, heightMm) / 10));

interface Laid {
	readonly line: LabelLine;
	readonly texts: readonly string[];
	readonly points: number;
}

/**
 * Fits lines into a label of a size in mm. A line that is too long shrinks, to its least size; then it breaks. Where all of
 * them are too high, all shrink. What still finds no room is shortened, longest first, and said to be.
 */
export function fitLabel(
	lines: readonly LabelLine[],
	widthMm: number,
	heightMm: number,
	measure: MeasureText,
): FittedLabel {
	const padding = paddingOf(widthMm, heightMm);
	const [width, height] = [widthMm - 2 * padding, heightMm - 2 * padding];
	const most = Math.max(0, ...lines.map(({ points }) => points));
	const least = Math.min(...lines.map(({ leastPoints }) => leastPoints));
	for (let greatest = most; greatest > least; greatest -= step) {
		const laid = lines.map((line) => layLine(line, greatest, width, measure));
		if (heightOf(laid) <= height) return placed(laid, padding, height, [], []);
	}
	const laid = lines.map((line) => layLine(line, 0, width, measure));
	return shorten(laid, padding, width, height, measure);
}

const heightOf = (laid: readonly Laid[]) =>
	laid.reduce((sum, { texts, points }) => sum + texts.length * points * lineHeight * mmPerPoint, 0);

/** A line in one piece, smaller if it must be; where the least size is not enough, in several, as large as these allow. */
function layLine(line: LabelLine, greatest: number, width: number, measure: MeasureText): Laid {
	const points = Math.max(line.leastPoints, Math.min(line.points, greatest));
	const emsAt = (size: number) => width / (size * mmPerPoint * hair) - (line.hasArrow ? arrowWidth : 0);
	const ems = measure(line.text, line.isBold);
	for (let size = points; size >= line.leastPoints; size -= step)
		if (ems <= emsAt(size)) return { line, texts: [line.text], points: size };
	const broken = breakText(line.text, emsAt(line.leastPoints), line.isBold, measure);
	for (let size = points; size > line.leastPoints; size -= step) {
		const texts = breakText(line.text, emsAt(size), line.isBold, measure);
		if (texts.length <= broken.length) return { line, texts, points: size };
	}
	return { line, texts: broken, points: line.leastPoints };
}

/** A text in lines no wider than `most`; a word that is wider is broken too, between letters with their marks. */
function breakText(text: string, most: number, isBold: boolean, measure: MeasureText): readonly string[] {
	const texts: string[] = [];
	let current = '';
	for (const word of text.split(' ')) {
		const longer = current === '' ? word : `${current} ${word}`;
		if (measure(longer, isBold) <= most) {
			current = longer;
			continue;
		}
		if (current !== '') texts.push(current);
		current = '';
		for (const letter of lettersOf(word)) {
			if (current !== '' && measure(current + letter, isBold) > most) {
				texts.push(current);
				current = '';
			}
			current += letter;
		}
	}
	return current === '' ? texts : [...texts, current];
}

const segmenter = onceMade(() => new Intl.Segmenter(undefined, { granularity: 'grapheme' }));
const lettersOf = (text: string): readonly string[] => Array.from(segmenter().segment(text), ({ segment }) => segment);

/** What does not fit at the least sizes: the line of most pieces loses its last, until there is room; then the last lines go. */
function shorten(
	laid: readonly Laid[],
	padding: number,
	width: number,
	height: number,
	measure: MeasureText,
): FittedLabel {
	let kept = laid;
	const shortened = new Set<LabelLine['word']>();
	while (heightOf(kept) > height && kept.some(({ texts }) => texts.length > 1)) {
		const most = Math.max(...kept.map(({ texts }) => texts.length));
		const at = kept.findLastIndex(({ texts }) => texts.length === most);
		kept = kept.with(at, { ...kept[at]!, texts: kept[at]!.texts.slice(0, -1) });
		shortened.add(kept[at]!.line.word);
	}
	const leftOut: LabelLine['word'][] = [];
	while (heightOf(kept) > height) {
		leftOut.unshift(kept.at(-1)!.line.word);
		shortened.delete(kept.at(-1)!.line.word);
		kept = kept.slice(0, -1);
	}
	const marked = kept.map((each) => {
		if (!shortened.has(each.line.word)) return each;
		const most = width / (each.points * mmPerPoint * hair) - (each.line.hasArrow ? arrowWidth : 0);
		return { ...each, texts: each.texts.with(-1, withEllipsis(each.texts.at(-1)!, most, each.line.isBold, measure)) };
	});
	return placed(marked, padding, height, [...shortened], leftOut);
}

function withEllipsis(text: string, most: number, isBold: boolean, measure: MeasureText): string {
	const letters = [...lettersOf(text)];
	while (letters.length > 0 && measure(`${letters.join('').trimEnd()}…`, isBold) > most) letters.pop();
	return `${letters.join('').trimEnd()}…`;
}

/** The lines under each other, the whole in the middle of the label's height. */
function placed(
	laid: readonly Laid[],
	padding: number,
	height: number,
	shortened: FittedLabel['shortened'],
	leftOut: FittedLabel['leftOut'],
): FittedLabel {
	let top = padding + Math.max(0, height - heightOf(laid)) / 2;
	const lines = laid.flatMap(({ line, texts, points }) =>
		texts.map((text, place) => {
			const fitted = {
				...{ word: line.word, text, isBold: line.isBold, hasArrow: line.hasArrow && place === 0 },
				...{ left: padding, top, points },
			};
			top += points * lineHeight * mmPerPoint;
			return fitted;
		}),
	);
	return { lines, shortened, leftOut };
}
