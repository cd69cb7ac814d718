import { mm, unitsPerInch, unitsPerMm } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import type { Code, FiguresByCode } from './figures.ts';
import type { Sides } from './measure.ts';
import { heldBy } from './heldBy.ts';

/**
 * A figure as a former sentence had it: a length, which was written in the show's unit; another number, and how far
 * rounding moved it; or a text with its digits.
 */
type Former = number | string | { readonly value: number; readonly within: number };

const sides = ({ width, height }: Sides): readonly Former[] => [width, height];

/**
 * The figures of former sentences, in their order. A `look` was accepted by its code with these, as they were written:
 * `uneven(149/70/79/113/15)`. A finding that came later has no such form. What is here is never changed: it says what
 * stands in shows and lists.
 */
const former: { readonly [C in Code]?: (found: FiguresByCode[C], unit: Unit) => readonly Former[] } = {
	'needs-size': (found) =>
		found.kind !== 'left by the mount'
			? []
			: found.size
				? sides(found.size)
				: found.side === undefined
					? []
					: [found.side],
	'own-size': ({ mount, shows }) => [
		...[mount.width, mount.height].filter((side) => side !== undefined),
		...sides(shows),
	],
	'shape-clash': ({ picture, shape, lost }) => [...sides(picture), shape, { value: lost.percent, within: 0.05 }],
	turned: ({ picture, mount }) => [...sides(picture), ...sides(mount)],
	uneven: ({ side, top, difference, share, allowed }) => [
		...[side, top, difference],
		{ value: share.percent, within: 0.5 },
		{ value: allowed.percent, within: 0 },
	],
	'thin-border': ({ borders, least }) => [...Object.values(borders), least],
	'lip-shrinks': ({ frame, seen, least }) => [frame, ...seen.flatMap(({ shows, length }) => [shows, length]), least],
	'top-heavy': ({ bottom, narrower, top }) => [bottom, narrower, top],
	'bottom-heavy': ({ bottom, wider, top }) => [bottom, wider, top],
	'bare-paper': ({ window, picture, bare }) => [window, picture, bare],
	'thin-overlap': ({ covered, tolerance }) => (covered === 0 ? [tolerance] : [covered, tolerance]),
	'paper-short': (found, unit) =>
		found.kind !== 'hardly held' ? [] : [...(found.reaches === 0 ? [] : [found.reaches]), heldBy(unit)],
	'paper-crowds': ({ from, margin }) => [from, margin],
	'touches-glass': (found) => (found.kind === 'nothing between' ? [found.glazing] : []),
	'signature-covered': ({ covered }) => [covered],
	'signed-on-mount': () => [],
	'edition-clash': (found) =>
		found.kind === 'copies' ? [found.edition, { value: found.copies.count, within: 0 }] : [],
	'past-guide': (found) => [
		...found.cuts.map(({ length }) => length),
		...(found.kind === 'below nothing'
			? [found.setting]
			: [found.least, found.greatest].filter((range) => range !== undefined)),
	],
};

/** A text of the cell `accepted` in its former form. */
const form = /^([a-z-]+)\((.*)\)$/s;

/**
 * Whether a text accepts these figures in the form that it had before lengths stood in it: the figures of the sentence, as
 * they were written in the unit of the show. Which unit that was it does not say: each is tried.
 */
export function isFormerAcceptance<C extends Code>(text: string, code: C, figures: FiguresByCode[C]): boolean {
	const [, codeOfText, list] = form.exec(text) ?? [];
	const figuresOf = former[code];
	if (codeOfText !== code || figuresOf === undefined) return false;
	const written = list === '' ? [] : list!.split('/');
	return units.some((unit) => isWritten(figuresOf(figures, unit), written, unit));
}

const units: readonly Unit[] = ['mm', 'cm', 'in'];

/** Whether these figures, one after the other, are what is written, to the last. */
function isWritten(figures: readonly Former[], written: readonly string[], unit: Unit): boolean {
	const [first, ...others] = figures;
	if (first === undefined) return written.length === 0;
	if (typeof first === 'string') {
		const digits = figuresIn(first);
		return digits.every((text, i) => text === written[i]) && isWritten(others, written.slice(digits.length), unit);
	}
	const { value, within } = typeof first === 'number' ? inUnit(first, unit) : first;
	return mostParts(unit).some((count) => {
		const number = numberOf(written.slice(0, count));
		// The slack is for decimals that no double has exactly.
		const isSame = number !== undefined && Math.abs(number - value) <= within + 1e-9;
		return isSame && isWritten(others, written.slice(count), unit);
	});
}

/** Into how many parts the strokes of one number may have cut it: `16 5/16` was kept as `16/5/16`. */
const mostParts = (unit: Unit): readonly number[] => (unit === 'in' ? [1, 2, 3] : [1]);

/** Figures of a text, as they were taken out of a sentence. */
const figuresIn = (text: string): readonly string[] =>
	(text.match(/\d[\d.:/]*[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]/gu) ?? []).flatMap((figure) => figure.replace(/[.:/]+$/, '').split('/'));

/** A length without its sign in a unit, and how far it may be from what was written: half of 0.1 mm, or of 1/64 in. */
function inUnit(value: number, unit: Unit): { readonly value: number; readonly within: number } {
	const perUnit = { mm: unitsPerMm, cm: 10 * unitsPerMm, in: unitsPerInch }[unit];
	const within = unit === 'in' ? 1 / 128 : mm(0.05) / perUnit;
	return { value: Math.abs(value) / perUnit, within };
}

const eighths = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** `149`, `2.625`, `2⅝`, `5/16` or `16 5/16`, cut at its strokes; undefined where it is no number. */
function numberOf(parts: readonly string[]): number | undefined {
	if (parts.length > 1) {
		if (!parts.every((part) => /^\d+$/.test(part))) return undefined;
		const [under, over, whole = 0] = parts.map(Number).reverse() as [number, number, number?];
		return under > over ? whole + over / under : undefined;
	}
	const [, whole, sign] = /^(\d+(?:\.\d+)?)?([½¼¾⅛⅜⅝⅞])?$/.exec(parts[0] ?? '') ?? [];
	if (whole === undefined && sign === undefined) return undefined;
	return Number(whole ?? 0) + (sign === undefined ? 0 : (eighths.indexOf(sign) + 1) / 8);
}
