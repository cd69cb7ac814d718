import { sawCautions } from '../bench/sawCautions.ts';
import type { Scale } from '../length/formatLength.ts';
import { type Currency } from '../values/money.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
import { legsMeasured } from './frameSizes.ts';
import { fillPages, type PagePart, type PageSection } from './fillPages.ts';
import { type GetKind, type GetLine, getKinds } from './getLine.ts';
import {
	type NameOfPlace,
	notGotSentences,
	notWorkedOutWords,
	notYetWords,
	placesOf,
	sharedByWords,
	shareWords,
	stickWords,
	sticksProof,
	sticksTitle,
	totalWords,
	withoutPriceWords,
} from './getSentences.ts';
import { kindWords } from './getWords.ts';
import type { ToGet } from './whatToGet.ts';

/** Heights of what stands on a page, in mm; the styles hold to them. */
export const getPageMm = { head: 13, line: 6.5, words: 4.5 } as const;

/** Between a caution and the first box to tick off. */
const mmBeforeTicks = 3;

/** Letters that surely go into a line of words over the width of a page. */
const lettersInLine = 80;

/** Letters after which names go on in words of their own, so that a page can end between them. */
const lettersTogether = 640;

/** A line of what to get, with the figures in columns; or words, which may want a box to tick off. */
export type GetPageItem =
	| { readonly line: GetLine }
	| { readonly line: undefined; readonly words: string; readonly isTicked: boolean; readonly mm: number };

type Section = PageSection<string, GetPageItem>;

/** A print that is left out, and why. */
export interface LeftOutWords {
	readonly name: string;
	readonly words: string;
}

/**
 * What to get on pages: by kind, then the sums, how moulding is sawn, what cannot be got and what is left out.
 * @param notYet what plans are still being worked out for
 * @param openKinds whose figures may still change
 * @param saidOf what else there is to know of a line
 */
export function getPages(
	toGet: ToGet,
	leftOut: readonly LeftOutWords[],
	nameOf: NameOfPlace,
	settings: Scale & { readonly currency: Currency | undefined },
	paper: Paper,
	notYet: readonly string[] = [],
	openKinds: readonly GetKind[] = [],
	saidOf: (line: GetLine) => readonly string[] = () => [],
): readonly (readonly PagePart<string, GetPageItem>[])[] {
	const room = pageRoom(paper).height;
	const ofKinds = getKinds.map((kind): Section => {
		const lines = toGet.lines.filter((line) => line.kind === kind);
		const isOpen = openKinds.includes(kind);
		// A kind that is silently missing would be taken to the shop as one that nothing is needed of.
		if (isOpen && lines.length === 0) return section(kindWords[kind], words([notWorkedOutWords(kind)], true));
		return section(
			kindWords[kind] + (isOpen ? ', not final yet' : ''),
			lines.flatMap((line) => [
				{ item: { line }, mm: getPageMm.line },
				...words(withNames(saidOf(line), placesOf(line).map(nameOf))),
			]),
		);
	});
	const sawn = toGet.sticks
		.filter(({ sticks }) => sticks.length > 0)
		.map((plan) =>
			section(`To saw: ${sticksTitle(plan)}`, [
				...words([`${sticksProof(plan)} ${legsMeasured(plan.saw, settings)}`]),
				...words([`${sawCautions.sawing} ${sawCautions.rules}`], false, mmBeforeTicks),
				...asHigh(
					words(
						stickWords(plan, nameOf, settings).map((cuts, at) => `Length ${at + 1}: ${cuts}`),
						true,
					),
				),
			]),
		);
	const beside = [notYetWords(notYet), withoutPriceWords(toGet)].filter((each) => each !== undefined);
	const shares = shareWords(toGet, settings.currency);
	const sums = section(
		totalWords(toGet, settings.currency, notYet.length > 0),
		words([...beside, ...(shares.length > 0 ? [sharedByWords] : []), ...shares]),
	);
	const missing = section('Cannot be got', words(notGotSentences(toGet, nameOf, settings)));
	const others = section('Left out', words(leftOut.map((each) => `${each.name}: ${each.words}`)));
	const all = [...ofKinds, ...(toGet.lines.length > 0 ? [withHead(sums)] : []), ...sawn, missing, others];
	return fillPages(all, room);
}

/** What is said of a line, then for which prints it is, unless each of them was named in that. */
function withNames(said: readonly string[], names: readonly string[]): readonly string[] {
	const isNamed = (name: string) =>
		[',', '.', ' and ', ' ('].some((end) => said.some((each) => each.includes(name + end)));
	return names.every(isNamed) ? said : [...said, ...inPieces(names)];
}

/** The prints that a line is for, in pieces. */
function inPieces(names: readonly string[]): readonly string[] {
	const pieces: string[] = [];
	for (const name of names) {
		const last = pieces.at(-1);
		if (last === undefined) pieces.push(`For ${name}`);
		else if (last.length + name.length > lettersTogether) pieces.push(name);
		else pieces[pieces.length - 1] = `${last}, ${name}`;
	}
	return pieces;
}

const section = (head: string, items: Section['items']): Section => ({ head, headMm: getPageMm.head, items });

/** A section whose head is said even where nothing stands under it. */
const withHead = (each: Section): Section => (each.items.length > 0 ? each : { ...each, items: words([' ']) });

/** The same, each as high as the highest: lines of one kind that are ticked off stand evenly. */
function asHigh(items: Section['items']): Section['items'] {
	const mm = Math.max(...items.map((each) => each.mm));
	return items.map(({ item }) => ({ item: { ...item, mm } as GetPageItem, mm }));
}

/** Words, each with as many lines as it may need, and so much room under them. */
const words = (texts: readonly string[], isTicked = false, under = 0): Section['items'] =>
	texts.map((text) => {
		const mm = Math.ceil(text.length / lettersInLine) * getPageMm.words + under;
		return { item: { line: undefined, words: text, isTicked, mm }, mm };
	});
