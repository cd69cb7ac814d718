import { isSame } from '../../length/length.ts';
import type { Code, FiguresByCode } from '../figures.ts';
import type { Measure } from '../measure.ts';
import { shownText } from '../../values/shownText.ts';
import { coverWords, moreOrLess, sum } from './phrases.ts';
import type { Say } from './say.ts';
import { sentences } from './sentences.ts';

type Pair<C extends Code> = (across: FiguresByCode[C], down: FiguresByCode[C], say: Say) => string | undefined;

/** "600 × 450", of which another length of the sentence says the unit. */
const figures = (across: Measure, down: Measure, { figure }: Say) => `${figure(across)} × ${figure(down)}`;

const sizes = (width: Measure, height: Measure, { size }: Say) => size({ width, height });

/** "6 mm each way", "6 mm across and 7 mm down". */
const eachWay = (across: Measure, down: Measure, say: (value: Measure) => string) =>
	isSame(across, down) ? `${say(across)} each way` : `${say(across)} across and ${say(down)} down`;

/**
 * The one sentence for both axes of a row, by what was found across and down: of each code that is found axis by axis.
 * Undefined where the two are of different kinds, and have a sentence each.
 */
export const pairs: { readonly [C in Code]?: Pair<C> } = {
	'adds-up': (across, down, say) => {
		if (across.kind === 'sum' && down.kind === 'sum')
			return `Across, ${sum(across.parts, say)} = ${say.figure(across.total)}, ${moreOrLess(across.more, say)} than the mount’s ${say.figure(across.mount)}; down, ${sum(down.parts, say)} = ${say.figure(down.total)}, ${moreOrLess(down.more, say)} than its ${say.say(down.mount)}.`;
		if (across.kind === 'cover' && down.kind === 'cover')
			return `Picture ${figures(across.picture, down.picture, say)} needs a window of ${figures(across.asked, down.asked, say)} (${coverWords(down, say)}), but ${sizes(across.window, down.window, say)} is typed.`;
		if (across.kind === 'mount cell' && down.kind === 'mount cell')
			return `The mount is typed as ${figures(across.mount, down.mount, say)}, but the mount cell makes it ${sizes(across.named, down.named, say)}.`;
		return undefined;
	},
	'does-not-fit': (across, down, say) => {
		if (across.kind === 'other axis') return sentences['does-not-fit'](down, say);
		if (down.kind === 'other axis') return sentences['does-not-fit'](across, say);
		if (across.kind === 'window too large' && down.kind === 'window too large')
			return `The ${across.of} ${figures(across.window, down.window, say)} is ${across.larger === 0 || down.larger === 0 ? 'no smaller' : 'larger'} than the mount ${sizes(across.mount, down.mount, say)}.`;
		if (across.kind === 'no window' && down.kind === 'no window')
			return `Borders of ${across.borders.map(say.figure).join(' and ')} across, ${down.borders.map(say.figure).join(' and ')} down, leave nothing of the mount ${sizes(across.mount, down.mount, say)} for the ${across.of}.`;
		return undefined;
	},
	'falls-through': (across, down, say) => {
		const wider = `${say.say(across.larger)} wider`;
		const taller = `${say.say(down.larger)} taller`;
		const paper = `the paper ${figures(across.paper, down.paper, say)}`;
		if (across.larger > 0 && down.larger > 0) return `The window is ${wider} and ${taller} than ${paper}.`;
		if (across.larger > 0) return `The window is ${wider} than ${paper}, and as tall.`;
		if (down.larger > 0) return `The window is ${taller} than ${paper}, and as wide.`;
		return `The window is as large as the paper ${sizes(across.paper, down.paper, say)}.`;
	},
	'paper-short': (across, down, say) => {
		const { figure } = say;
		if (across.kind === 'smaller' && down.kind === 'smaller')
			return `The paper ${say.size(across.paper)} is ${say.say(across.short)} too narrow and ${say.say(down.short)} too short for the picture ${figures(across.picture, down.picture, say)}.`;
		if (across.kind === 'past the edge' && down.kind === 'past the edge')
			return `The picture is printed ${figure(across.past)} past the paper’s ${across.edge} edge and ${say.say(down.past)} past its ${down.edge} edge.`;
		if (across.kind !== 'hardly held' || down.kind !== 'hardly held') return undefined;
		const at = (first: Measure, second: Measure) =>
			`${figure(first)} ${where[across.at]} and ${say.say(second)} ${where[down.at]}`;
		if (across.reaches > 0 && down.reaches > 0)
			return `Behind the mount the paper has only ${at(across.reaches, down.reaches)}, and needs ${say.say(across.held)}.`;
		if (across.reaches < 0 && down.reaches < 0)
			return `The paper is short of the window edge by ${at(-across.reaches, -down.reaches)}, and needs ${say.say(across.held)} behind it.`;
		return undefined;
	},
	'frame-clash': (across, down, say) => {
		if (across.kind === 'not listed' || down.kind === 'not listed') return undefined;
		const own = `The ${across.what} ${figures(across.inside, down.inside, say)}`;
		const frame = `“${shownText(across.frame)}”`;
		if (across.kind === 'too large' && down.kind === 'too large')
			return `${own} is too large for the rebate of ${frame}, ${sizes(across.rebate, down.rebate, say)}.`;
		if (across.kind === 'too large' || down.kind === 'too large' || across.kind !== down.kind) return undefined;
		const play = (value: Measure) => (isSame(value, 0) ? 'no play' : `${say.say(value)} of play`);
		const has = `${own} has ${eachWay(across.play, down.play, play)} in ${frame}`;
		return across.kind === 'gap'
			? `${has}, and its lip of ${say.say(across.lip)} does not hide a gap.`
			: `${has}; ${say.figure(across.least)} to ${say.say(across.most)} is usual.`;
	},
	'thin-border': (across, down, say) =>
		sentences['thin-border']({ ...across, borders: { ...across.borders, ...down.borders } }, say),
	'lip-shrinks': (across, down, say) =>
		sentences['lip-shrinks']({ ...across, seen: [...across.seen, ...down.seen] }, say),
	'bare-paper': (across, down, say) =>
		`The window ${figures(across.window, down.window, say)} is larger than the picture ${figures(across.picture, down.picture, say)}. ${isSame(across.bare, down.bare) ? `${say.say(across.bare)} of bare paper shows all round` : `${say.figure(across.bare)} of bare paper shows at each side, ${say.say(down.bare)} at top and bottom`}, and no reveal is set.`,
	'thin-overlap': (across, down, say) => {
		const covered = (value: Measure) => (value === 0 ? 'nothing' : `only ${say.say(value)}`);
		const below = isSame(across.covered, down.covered) ? '' : `${covered(down.covered)} `;
		return `The mount covers ${covered(across.covered)} of the picture at the sides and ${below}${down.at === 'top' ? 'at the top' : 'at top and bottom'}, less than the cutting tolerance of ${say.say(across.tolerance)}.`;
	},
	'paper-margin': (across, down, say) => {
		if (across.kind === 'too large' && down.kind === 'too large')
			return `The picture ${figures(across.picture, down.picture, say)} is larger than the ${sizes(across.printable, down.printable, say)} that can be printed of its paper.`;
		if (across.kind === 'margin' && down.kind === 'margin')
			return `The margins ${across.edge} and ${down.edge} of the picture are ${say.figure(across.margin)} and ${say.say(down.margin)}; the printer leaves ${say.say(across.least)} blank.`;
		return undefined;
	},
	'paper-crowds': (across, down, say) =>
		across.from > 0 && down.from > 0
			? `The paper is ${say.figure(across.from)} from the mount’s edge ${where[across.at]} and ${say.say(down.from)} ${where[down.at]}; hinges need ${say.say(across.margin)}.`
			: undefined,
	'past-guide': (across, down, say) =>
		across.kind === 'out of range' && down.kind === 'out of range'
			? sentences['past-guide']({ ...across, cuts: [...across.cuts, ...down.cuts] }, say)
			: undefined,
	'off-ruler': (across, down, say) =>
		sentences['off-ruler']({ ...across, borders: { ...across.borders, ...down.borders } }, say),
};

const where = { side: 'at the sides', top: 'at the top', bottom: 'at the bottom' } as const;
