import { isSame, nearestLength, toMm } from '../length/length.ts';
import { hiddenByFrame } from '../row/frame.ts';
import { areaM2, perimeterM } from '../row/framed.ts';
import { boardThickness } from '../row/stack.ts';
import type { WorkedRow } from '../row/workedRow.ts';
import type { Settings } from '../settings/settings.ts';
import { shownText } from '../values/shownText.ts';
import { seenBorders } from '../row/seenBorders.ts';
import { sayer } from './sayer.ts';
import { sumWords } from './sumWords.ts';

type Reason = (worked: WorkedRow, settings: Settings) => string | undefined;

const play: Reason = ({ frame: { frame, seat } }, settings) => {
	if (!frame || !seat) return undefined;
	const { n, say, size: inWords } = sayer(settings);
	const { rebate, play: free } = seat;
	return `The rebate of “${shownText(frame.name)}” is ${inWords(rebate.width, rebate.height)}: play ${n(free.width)} across, ${say(free.height)} down.`;
};

const size: Reason = ({ frame: { frame, seat }, framed }, settings) => {
	if (!seat || !framed.size || frame?.moulding === undefined || frame.lip === undefined) return undefined;
	const { n, say, size: inWords } = sayer(settings);
	return `Framed, it is ${inWords(framed.size.width, framed.size.height)}: the rebate + 2 × (${n(frame.moulding)} − ${say(frame.lip)}).`;
};

/** What of each border the lip hides beyond half the play, and the bevel. */
const seenBorder: Reason = (worked, settings) => {
	const hidden = hiddenByFrame(worked);
	const seen = seenBorders(worked);
	if (!hidden || !seen) return undefined;
	const { n, say } = sayer(settings);
	const { width, height } = worked.frame.seat!.play;
	const half = isSame(width, height) ? n(width / 2) : `${n(width / 2)} across and ${n(height / 2)} down`;
	const { thickness } = boardThickness(worked.boards.mount);
	const bevel = worked.read.cells.isFloat ? ` ${settings.unit}` : `, and the bevel’s ${say(thickness)}`;
	return `In the frame “${shownText(hidden.frame.name)}” each border loses the lip’s ${n(hidden.frame.lip!)} less half the play, ${half}${bevel}. Visible borders inside the frame: sides ${n(seen.side)}, top ${n(seen.top)}, bottom ${n(seen.bottom)} ${settings.unit}.`;
};

const stack: Reason = ({ frame: { frame, seat }, framed }, settings) => {
	if (!frame || !seat) return undefined;
	const words = sumWords(
		framed.layers.map(({ thickness }) => thickness),
		nearestLength(framed.depth),
		settings,
	);
	const about = framed.isAbout && !words.startsWith('about') ? `about ${words}` : words;
	return `The stack is ${about}${frame.depth === undefined ? '' : ` of the rebate’s ${sayer(settings).say(frame.depth)}`}.`;
};

/** Each part of what it weighs, in whole grams: the print would be nothing in tenths of a kilogram. */
const weight: Reason = ({ frame: { frame, inside, seat }, framed }) => {
	if (!frame || !seat || !inside || framed.weightKg === undefined) return undefined;
	const area = areaM2(inside);
	const parts = [
		...framed.layers.map(({ what, thickness, density }) => ({ what, kg: area * toMm(thickness) * density })),
		{ what: 'moulding', kg: (frame.weightKgPerMetre ?? 0) * (framed.size ? perimeterM(framed.size) : 0) },
	].flatMap(({ what, kg }) => (kg > 0 ? [`${what} ${(1000 * kg).toFixed(0)}`] : []));
	return `It weighs ${framed.isAbout ? 'about ' : ''}${framed.weightKg.toFixed(1)} kg, in grams: ${parts.join(', ')}.`;
};

/** How each column of how a row hangs comes to its figure, in a sentence; a column that is not there has no reason. */
export const framingReasons: Readonly<Record<string, Reason>> = {
	'framed width': size,
	'framed height': size,
	play,
	'seen border': seenBorder,
	stack,
	weight,
};
