import { capital } from '../../values/capital.ts';
import { isSame } from '../../length/length.ts';
import { listed } from '../../values/listed.ts';
import { shownText } from '../../values/shownText.ts';
import type { Code, FiguresByCode } from '../figures.ts';
import { lengthsInARow } from './labels.ts';
import {
	openWays,
	openWaysOfOne,
	sum,
	moreOrLess,
	coverWords,
	mountLimit,
	overlapWords,
	kilograms,
	wayOf,
	bordersAre,
	cutWords,
	percentAbove,
	areasApart,
} from './phrases.ts';
import type { Say } from './say.ts';
import { slipWords } from './slipWords.ts';

/** The sentence of each finding: one plain one, with its figures. */
export const sentences: { readonly [C in Code]: (found: FiguresByCode[C], say: Say) => string } = {
	'not-read': ({ column, problem }) => `${capital(column)}: ${problem}${/[.?!]$/.test(problem) ? '' : '.'}`,

	'adds-up': (found, say) => {
		switch (found.kind) {
			case 'mount cell':
				return `The mount ${found.axis} is typed as ${say.say(found.mount)}, but the mount cell makes it ${say.figure(found.named)}.`;
			case 'cover':
				return `Picture ${found.axis} ${say.figure(found.picture)} needs a window of ${say.figure(found.asked)} (${coverWords(found, say)}), but ${say.say(found.window)} is typed, ${moreOrLess(found.more, say)}.`;
			case 'sum':
				return `${sum(found.parts, say)} = ${say.figure(found.total)}, ${moreOrLess(found.more, say)} than the mount’s ${say.say(found.mount)}.`;
			case 'all typed':
				return `The typed ${found.axis}s cannot all be true.`;
		}
	},

	'does-not-fit': (found, { figure, say }) => {
		const { axis } = found;
		switch (found.kind) {
			case 'too large':
				return `The ${axis} comes out at more than ${say(found.most)}.`;
			case 'all covered':
				return `The picture’s ${axis} ${say(found.picture)} is all covered. The overlap covers ${figure(found.covered)}.`;
			case 'window too large':
				return `The ${found.of}’s ${axis} ${figure(found.window)} is ${found.larger === 0 ? 'as large as' : `${figure(found.larger)} larger than`} the mount’s ${say(found.mount)}.`;
			case 'no window':
				return `Borders of ${found.borders.map(figure).join(' and ')} leave ${found.left === 0 ? 'nothing' : figure(found.left)} of the mount’s ${axis} ${say(found.mount)} for the ${found.of}.`;
			case 'no border':
				return `A border of ${figure(found.border)} and a ${found.of} of ${figure(found.window)} use ${figure(found.both)} of the mount’s ${axis} ${say(found.mount)}, which leaves ${figure(found.left)} for the other border.`;
			case 'all reveal':
				return `The picture’s ${axis} comes out at ${say(found.picture)}. More shows round it than the window’s ${figure(found.window)} has room for.`;
			case 'window below nothing':
				return `The window’s ${axis} comes out at ${say(found.window)}.`;
			case 'other axis':
				return `The ${axis} depends on the ${found.other}, which doesn’t fit.`;
			case 'ruler':
				return `Rounded to your ${say(found.ruler)} ruler, a border or the window comes to nothing in the mount’s ${axis} ${say(found.mount)}.`;
		}
	},

	'falls-through': ({ axis, window, larger, paper }, { figure, say }) =>
		`The window’s ${axis} ${say(window)} is ${larger === 0 ? 'as large as' : `${figure(larger)} larger than`} the paper’s ${figure(paper)}.`,

	'paper-short': (found, { figure, say, size }) => {
		if (found.kind === 'smaller')
			return `The paper ${size(found.paper)} is ${figure(found.short)} short of the picture’s ${found.axis} ${figure(found.picture)}.`;
		if (found.kind === 'past the edge')
			return `The picture is printed ${say(found.past)} past the paper’s ${found.edge} edge.`;
		const { reaches, at, held } = found;
		const where = at === 'side' ? 'at the sides' : `at the ${at}`;
		if (reaches > 0) return `The paper has only ${say(reaches)} behind the mount ${where} and needs ${say(held)}.`;
		const short = reaches === 0 ? 'ends at' : `is ${say(-reaches)} short of`;
		return `The paper ${short} the window edge ${where} and needs ${say(held)} behind it.`;
	},

	'over-limit': mountLimit,

	'under-limit': (found, say) => {
		if (found.kind !== 'picture area') return mountLimit(found, say);
		const [is, least] = areasApart(found.area.mm2, found.least.mm2, say.unit);
		return `The picture’s area is ${is}, under the smallest allowed, ${least}.`;
	},

	'too-thick': ({ what, parts, total, most }, say) =>
		`${capital(listed(what))} are about ${sum(parts, say)} = ${say.figure(total)} thick, more than the ${say.say(most)} allowed.`,

	'frame-clash': (found, { figure, say }) => {
		if (found.kind === 'not listed') return `There is no frame “${shownText(found.frame)}” in the show’s list.`;
		const own = `The ${found.what}’s ${found.axis} ${figure(found.inside)}`;
		if (found.kind === 'too large')
			return `${own} is ${say(found.over)} too large for the rebate of “${shownText(found.frame)}”, ${figure(found.rebate)}.`;
		const play = isSame(found.play, 0) ? 'no play' : `${say(found.play)} of play`;
		const has = `${own} has ${play} in “${shownText(found.frame)}”`;
		return found.kind === 'gap'
			? `${has}, and its lip of ${say(found.lip)} does not hide a gap.`
			: `${has}; ${figure(found.least)} to ${say(found.most)} is usual.`;
	},

	'too-deep': ({ what, parts, total, depth, left, points }, say) => {
		const deep = `${capital(listed(what))} are about ${sum(parts, say)} = ${say.figure(total)} deep`;
		return points === undefined
			? `${deep}, ${say.say(-left)} more than the rebate’s ${say.figure(depth)}.`
			: `${deep}. Of the rebate’s ${say.figure(depth)} only ${say.figure(left)} is left, and points need ${say.say(points)}.`;
	},

	'no-board': (found, { say, figure, size }) => {
		if (found.kind === 'inner blank') {
			const behind = Object.entries(found.behind).map(([border, wide]) => `${border} of ${figure(wide)}`);
			return `The inner mount’s blank, ${say(found.smaller)} smaller a side, does not reach behind the mount’s ${listed(behind)}.`;
		}
		const what = found.part === 'mount' ? '' : ` for the ${found.part}`;
		return found.kind === 'too small'
			? `No sheet or ready-cut blank of “${shownText(found.board)}” gives a blank of ${size(found.blank)}${what}. Use another board, or add a size of it to the stock.`
			: `There is no “${shownText(found.board)}”${what} in stock. Add it to the boards, or use another.`;
	},

	'touches-glass': (found, { say }) => {
		switch (found.kind) {
			case 'loose':
				return `A ${found.surface} surface rubs off. Behind a single mount it needs a spacer.`;
			case 'nothing between':
				return `Nothing keeps the print off the ${found.glazing}. ${found.mounting === 'float' ? 'A float has no window over it, and there is' : 'There is no mount and'} no spacer${found.surface === undefined ? '' : `, and a ${found.surface} surface sticks to it`}.`;
			case 'thin spacer':
				return `The spacer of ${say(found.spacer)} leaves the print too near the ${found.glazing}. It needs at least ${say(found.least)}${found.over === undefined ? '' : ` for a side over ${say(found.over)}`}.`;
		}
	},

	'edition-clash': (found) => {
		switch (found.kind) {
			case 'no such number':
				return `Edition ${found.edition}: number ${found.number} is not in an edition of ${found.size}.`;
			case 'copies':
				return `Edition ${found.edition} is one print, and ${found.copies.count} copies are typed.`;
			case 'again': {
				const { rows } = found;
				const times = found.times.count;
				const more = times - 1 - rows.length;
				const where = [...rows.map(({ count }) => `${count}`), ...(more > 0 ? [`${more} more`] : [])].join(' and ');
				return `Edition ${found.edition} of “${shownText(found.title)}” is there ${times === 2 ? 'twice' : `${times} times`}: also in row${times === 2 ? '' : 's'} ${where}.`;
			}
		}
	},

	'needs-size': (found, { say, size }) => {
		if (found.kind === 'open') {
			const missing = found.open.map((axis) => `picture ${axis}`).join(' and ');
			const ways = found.open.length > 1 ? openWays : openWaysOfOne;
			return `The ${found.open.length > 1 ? 'size' : found.open[0]} can’t be worked out yet. Type ${missing}, ${ways[found.or]}.`;
		}
		if (found.kind === 'no frame')
			return `The mount is sized to its frame, but no frame with a size is named${found.mount ? `, so it has the show’s ${size(found.mount)}` : ''}. Name one.`;
		const { columns } = found.blank;
		const left = found.size
			? `. The mount leaves ${size(found.size)}`
			: found.side === undefined
				? ''
				: `. The mount leaves a ${columns[0]} of ${say(found.side)}`;
		return `Neither a shape nor a full size is typed${left}. Type ${columns.join(' and ')}, or the shape.`;
	},

	'needs-paper': (found, { figure, size }) => {
		if (found.kind === 'float') return 'A float shows the whole sheet. Type the paper’s size.';
		const compared =
			found.kind === 'both'
				? `The window ${size(found.window)} is no smaller than the picture ${size(found.picture)}`
				: `The window’s ${found.axis} ${figure(found.window)} is no smaller than the picture’s ${figure(found.picture)}`;
		return `${compared}. Type the size of the paper, which must reach under the mount.`;
	},

	'own-size': ({ mount: { width, height }, shows, clear, typed }, { say, size }) => {
		const is =
			width !== undefined && height !== undefined
				? size({ width, height })
				: width === undefined
					? `${say(height!)} high`
					: `${say(width)} wide`;
		const columns = typed?.columns ?? [];
		const because = clear
			? `Clear ${clear.columns.join(' and ')} to get back to it.`
			: `${columns.length > 0 ? capital(listed(columns)) : 'The borders'} make${columns.length === 1 ? 's' : ''} it so.`;
		return `The mount is ${is}, not the show’s ${size(shows)}. ${because}`;
	},

	'shape-clash': ({ picture, shape, lost, axis, by }, { size }) =>
		`The typed sizes make the picture ${size(picture)}, which is not ${shape}. ${lost.percent.toFixed(1).replace(/\.0$/, '')} % of its ${axis} is ${by === 'picture' ? 'cut off, or the picture is stretched' : 'covered by the mount'}.`,

	turned: ({ picture, mount }, { size }) =>
		`The picture ${size(picture)} is ${wayOf(picture)}, its mount ${size(mount)} ${wayOf(mount)}.`,

	uneven: ({ side, top, difference, share, allowed }, { figure, say }) =>
		`Side ${figure(side)} and top ${figure(top)} differ by ${say(difference)}, ${percentAbove(share.percent, allowed.percent)} %. You allow ${allowed.percent} %.`,

	'thin-border': ({ borders, least }, say) =>
		`${bordersAre(borders, say)} under your smallest border of ${say.say(least)}.`,

	'lip-shrinks': ({ frame, seen, least }, { figure, say }) =>
		`${capital(listed(seen.map(({ border, shows, length }) => `${shows > 0 ? figure(shows) : 'nothing'} of the ${figure(length)} ${border}`)))} ${seen.length > 1 ? 'show' : 'shows'} in the frame “${shownText(frame)}”, under your smallest border of ${say(least)}.`,

	'top-heavy': ({ bottom, narrower, top }, { figure, say }) =>
		`The bottom ${figure(bottom)} is ${say(narrower)} narrower than the top ${figure(top)}.`,

	'bottom-heavy': ({ bottom, wider, top }, { figure, say }) =>
		`The bottom ${figure(bottom)} is ${say(wider)} wider than the top ${figure(top)}, more than twice what you set.`,

	'weight-lost': ({ bottom, top, over, asked }, { figure, say }) =>
		isSame(bottom, top)
			? `The bottom is ${figure(bottom)}, as wide as the top; it should be ${say(asked)} wider.`
			: `The bottom ${figure(bottom)} is ${say(Math.abs(over))} ${over < 0 ? 'under' : 'over'} the top ${figure(top)}; it should be ${say(asked)} wider.`,

	'bare-paper': ({ axis, window, picture, bare }, { figure, say }) =>
		`The window’s ${axis} ${figure(window)} is larger than the picture’s ${figure(picture)}. ${say(bare)} of bare paper shows ${axis === 'width' ? 'at each side' : 'at top and bottom'}, and no reveal is set.`,

	'thin-overlap': ({ at, covered, tolerance }, { say }) =>
		`The mount covers ${covered === 0 ? 'nothing' : `only ${say(covered)}`} of the picture ${{ side: 'at the sides', top: 'at the top', 'top and bottom': 'at top and bottom' }[at]}, less than the cutting tolerance of ${say(tolerance)}.`,

	'paper-crowds': ({ at, from, margin }, { say }) =>
		`The paper ${from === 0 ? 'reaches' : from < 0 ? `is ${say(-from)} past` : `is ${say(from)} from`} the mount’s edge ${at === 'side' ? 'at the sides' : `at the ${at}`}; hinges need ${say(margin)}.`,

	'paper-margin': (found, { figure, say }) =>
		found.kind === 'too large'
			? `The picture’s ${found.axis} ${figure(found.picture)} is larger than the ${say(found.printable)} that can be printed of its paper.`
			: `The margin ${found.edge} of the picture is ${say(found.margin)}; the printer leaves ${say(found.least)} blank.`,

	'paper-bounds': ({ holds, takes }, { size }) =>
		`The picture could be ${size(takes)}, but the paper has room for ${size(holds)}.`,

	'no-frame': (found, { figure, say }) => {
		const name = `“${shownText(found.frame)}”`;
		if (found.kind === 'short stick')
			return `A leg of ${name} needs ${figure(found.leg)} with its saw cut; a length is only ${say(found.stick)}.`;
		const what = found.kind === 'too few' ? '' : ' lengths of';
		return `You need ${found.wanted.count}${what} ${name} and have ${found.there.count}.`;
	},

	heavy: ({ weight, most, load, factor, rating, below }, { say }) => {
		const lift =
			most && `Framed, it weighs about ${kilograms(weight!.kg)}. Over ${kilograms(most.kg)} takes two people to lift.`;
		const hold =
			load &&
			`Its hook, or its pair of rings, bears about ${kilograms(load.kg)}; times ${factor!.count} for safety, more than your rating of ${kilograms(rating!.kg)}.`;
		const flat =
			below !== undefined &&
			`Its hook is ${isSame(below, 0) ? 'no higher than' : `${say(below)} below`} its rings. A flat cord pulls on them harder than any rating, yours of ${kilograms(rating!.kg)} too. Lower the rings, or let the cord rise further.`;
		return [lift, hold, flat].filter(Boolean).join(' ');
	},

	'off-wall': ({ wall, past, kind }, { say }) =>
		kind !== 'part'
			? `It is ${say(past)} past the ${kind === 'left' ? 'left ' : ''}end of “${shownText(wall.said)}”.`
			: `It has no room on “${shownText(wall.said)}”. It is ${say(past)} past the end of what is free.`,

	'hangs-over': ({ wall, overlaps }, say) => `On “${shownText(wall.said)}” it ${overlapWords(overlaps, say)}.`,

	'past-guide': (found, say) => {
		const cuts = capital(listed(found.cuts.map((cut) => cutWords(cut, say))));
		if (found.kind === 'below nothing') return `${cuts}. The cutter’s guide would be set to ${say.say(found.setting)}.`;
		const range = [
			...(found.least === undefined ? [] : [`from ${say.say(found.least)}`]),
			...(found.greatest === undefined ? [] : [`to ${say.say(found.greatest)}`]),
		];
		return `${cuts}. The cutter’s guide goes ${range.join(' ')}.`;
	},

	'signature-covered': ({ covered }, { say }) =>
		`The signature on the margin is under the mount, which covers the picture by ${say(covered)} below.`,

	'signed-on-mount': () => 'The mount may be replaced, and the signature with it. Sign the print.',

	'low-resolution': ({ picture, pixelsAnInch, least }, { size }) =>
		`At ${size(picture)} the file has ${pixelsAnInch.count} pixels an inch, under your ${least.count}.`,

	crops: ({ pixels, shape, lost, axis }) =>
		`The file is ${pixels.replace(' x ', ' × ')} and the shape ${shape}. ${lost.percent.toFixed(1).replace(/\.0$/, '')} % of its ${axis} is cut off, half at ${axis === 'width' ? 'each side' : 'top and bottom'}.`,

	'off-ruler': ({ borders, ruler }, say) => `${bordersAre(borders, say)} not on the ruler of ${say.say(ruler)}.`,

	'unit-slip': ({ typed, readings, outcome }, say) => {
		const words = typed.map(({ column, lengths }) => `${column} ${lengths.map(say.figure).join(' × ')}`).join(', ');
		const meant = readings.map(({ as, lengths }) => `${slipWords[as]} (${lengthsInARow(lengths, say)})`).join(' or ');
		const look = typed.flatMap(({ lengths }) => lengths).length > 1 ? 'look' : 'looks';
		return `${capital(words)} ${look} like ${meant}.${outcome === 'fits' ? '' : ' So read, the row nearly adds up.'}`;
	},
};
