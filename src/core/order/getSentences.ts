import { formatWithUnit, type Scale } from '../length/formatLength.ts';
import { unplacedSentence } from '../sheets/planWords.ts';
import type { CutStick, StickPlan } from '../sticks/stickPlan.ts';
import { countOf } from '../values/countOf.ts';
import { groupBy } from '../values/groupBy.ts';
import { listed } from '../values/listed.ts';
import { type Currency, formatMoney, moneyWords } from '../values/money.ts';
import type { GetKind, GetLine } from './getLine.ts';
import { kindWords } from './getWords.ts';
import type { Share, ToGet } from './whatToGet.ts';

/** What a print is called, by the place of its row, from 0. */
export type NameOfPlace = (place: number) => string;

/** What a line costs: nothing is left to buy, or it has no price. */
export function costWords({ packs, cost }: GetLine, currency: Currency | undefined): string {
	if (packs === 0) return formatMoney(0, currency);
	return cost === undefined ? 'no price' : formatMoney(cost, currency);
}

/** Places of the prints that a line is for, in the order of the show. */
export const placesOf = ({ taken, cutFor = taken }: Pick<GetLine, 'taken' | 'cutFor'>): readonly number[] =>
	[...cutFor.keys()].sort((a, b) => a - b);

/** Whether anything that is to be got has a price. */
export const isPriced = ({ lines }: ToGet): boolean => lines.some(({ cost }) => cost !== undefined && cost > 0);

/** What stands over the sum: `Total 42.00 EUR`; `Total so far 42.00 EUR` while plans are still looked for. */
export const totalWords = (toGet: ToGet, currency: Currency | undefined, isOpen = false): string =>
	isPriced(toGet) ? `Total ${isOpen ? 'so far ' : ''}${moneyWords(toGet.total, currency)}` : 'No prices yet';

/**
 * For how many prints a line is: `6 prints`, or `6 prints, 7 copies` where some are there more than once.
 * @param copies how many copies those prints have in all
 */
export const printsWords = (prints: number, copies: number): string =>
	countOf(prints, 'print') + (copies > prints ? `, ${copies} copies` : '');

/** What the sum leaves out, or what is missing for one; undefined where it is whole. */
export function withoutPriceWords(toGet: ToGet): string | undefined {
	if (!isPriced(toGet)) return 'Type prices in the settings to see what each maker pays.';
	const names = [...new Set(toGet.unpriced.map(({ name }) => name))];
	return names.length === 0 ? undefined : `Not in the total, because they have no price: ${listed(names)}.`;
}

/** What the sum may still lack while plans are looked for, in a sentence; undefined where there is nothing. */
export const notYetWords = (parts: readonly string[]): string | undefined =>
	parts.length === 0 ? undefined : `Not final: still being worked out for ${listed(parts)}.`;

/** What stands for the lines of a kind that plans are still looked for and that has none yet. */
export const notWorkedOutWords = (kind: GetKind): string =>
	`${kindWords[kind]}, not worked out yet. Don’t buy from this list.`;

/** How the sum is shared, said over the shares: nobody can charge by figures whose sums are not said. */
export const sharedByWords =
	'Shared by how much each maker’s prints use, whole packs. What has no price is not shared yet.';

/** What the makers pay, each in words; none where there is only one, or nothing to pay. */
export const shareWords = ({ shares, total }: ToGet, currency: Currency | undefined): readonly string[] =>
	shares.length > 1 && total > 0
		? shares.map(
				({ maker, cost }: Share) => `${maker === '' ? 'No maker named' : maker}: ${formatMoney(cost, currency)}`,
			)
		: [];

/** What cannot be got as it stands, in sentences: blanks without a sheet, legs without a stick, frames without a measure. */
export const notGotSentences = (
	{ unplaced, tooLong, unmeasured }: ToGet,
	nameOf: NameOfPlace,
	scale: Scale,
): readonly string[] => [
	...new Set([
		...[
			...groupBy(unplaced, ({ board, reason, blank }) => [reason, blank.width, blank.height, board].join(' ')).values(),
		].map((alike) => {
			const places = [...new Set(alike.flatMap(({ blank: { row } }) => (row > 0 ? [row - 1] : [])))];
			const whose = places.length > 0 ? ` for ${listed(places.map(nameOf))}` : '';
			return unplacedSentence(alike[0]!.board, alike, scale, whose);
		}),
		...tooLong.map(
			({ frame, row, length }) =>
				`A length of “${frame}” is too short for ${formatWithUnit(length, scale)} (${nameOf(row - 1)}).`,
		),
		...unmeasured.map(
			({ frame, row }) =>
				`“${frame}” needs its face width and lip in the settings before lengths are planned for ${nameOf(row - 1)}.`,
		),
	]),
];

/** Of which moulding sticks are sawn, and how many. */
export const sticksTitle = ({ frame, sticks }: StickPlan): string => `${frame}, ${countOf(sticks.length, 'length')}`;

/** Whether fewer sticks would do, in a sentence. */
export const sticksProof = ({ proven, leastCount }: StickPlan): string =>
	proven ? 'No plan uses fewer lengths.' : `Any plan uses at least ${countOf(leastCount, 'length')}.`;

/**
 * What is sawn from each stick of a plan, in the order of the saw, and what is left of it. Where a print has several copies
 * each leg says for which.
 */
export function stickWords(
	{ sticks }: Pick<StickPlan, 'sticks'>,
	nameOf: NameOfPlace,
	scale: Scale,
): readonly string[] {
	const copied = new Set(sticks.flatMap(({ legs }) => legs.filter(({ copy }) => copy > 1).map(({ row }) => row)));
	return sticks.map((stick) => wordsOfStick(stick, copied, nameOf, scale));
}

function wordsOfStick(
	{ legs, rest }: CutStick,
	copied: ReadonlySet<number>,
	nameOf: NameOfPlace,
	scale: Scale,
): string {
	const alike = groupBy(legs, ({ length, row, copy }) => `${length} ${row} ${copy}`);
	const cuts = [...alike.values()].map((own) => {
		const { length, row, copy } = own[0]!;
		const whose = `${row > 0 ? nameOf(row - 1) : 'deleted print'}${copied.has(row) ? `, copy ${copy}` : ''}`;
		return `${own.length > 1 ? `${own.length} × ` : ''}${formatWithUnit(length, scale)} (${whose})`;
	});
	return `${cuts.join(', ')}; ${formatWithUnit(rest, scale)} left`;
}
