import type { Row } from '../show/row.ts';
import { groupBy } from '../values/groupBy.ts';
import { pageRoom, type Paper } from '../values/papers.ts';
import type { BenchStep, Cut } from './benchPlan.ts';

/** Height of a line of a step, in mm; the sheet of styles holds to it. */
export const lineMm = 6.5;
/** Height of what stands over the first step, in mm: how blanks are marked before anything is cut. */
export const leadMm = 7;

/** Height of the head of a step, in mm: its stops have lines of their own, more where several sides have theirs elsewhere. */
export function stepHeadMm({ start, cuts }: Pick<BenchStep, 'start' | 'cuts'>): number {
	if (start === undefined) return 13;
	return new Set(cuts.map(({ side }) => side)).size > 1 ? 22 : 17;
}

/** How far a corner template goes beyond the lines, in mm. */
export const templateBeyondMm = 12;

/** Room on a template's page for the ruler and what is said, in mm. */
const templateWordsMm = 46;

/** Whether a corner with these borders, in mm, has room on a page, true to size. */
export function fitsTemplate(sideMm: number, borderMm: number, paper: Paper): boolean {
	const { width, height } = pageRoom(paper);
	return sideMm + templateBeyondMm + 1 <= width && borderMm + templateBeyondMm + 1 <= height - templateWordsMm;
}

/** A line of a step: the cuts of one row at one set-up, and of how many copies. */
export interface PaperLine {
	readonly row: number;
	readonly part: Cut['part'];
	readonly sides: readonly Cut['side'][];
	readonly copies: number;
}

/** A step, or what of it comes on one page. */
export interface PaperStep {
	readonly step: BenchStep;
	/** From 1. */
	readonly number: number;
	/** Whether its first lines are on the page before. */
	readonly isContinued: boolean;
	readonly lines: readonly PaperLine[];
}

/** The lines of a step in the order of its cuts. */
export function linesOf({ cuts }: BenchStep): readonly PaperLine[] {
	return [...groupBy(cuts, ({ row, part }) => `${row} ${part}`).values()].map((own) => ({
		row: own[0]!.row,
		part: own[0]!.part,
		sides: [...new Set(own.map(({ side }) => side))],
		copies: new Set(own.map(({ copy }) => copy)).size,
	}));
}

/** Steps on pages, none of them parted but one that is longer than a page. */
export function stepsOnPages(steps: readonly BenchStep[], paper: Paper): readonly (readonly PaperStep[])[] {
	const room = pageRoom(paper).height;
	const pages: PaperStep[][] = [[]];
	let used = leadMm;
	steps.forEach((step, place) => {
		const lines = linesOf(step);
		const stepHead = stepHeadMm(step);
		for (let from = 0; from < lines.length;) {
			const left = room - stepHead - (pages[0]!.length === 0 ? leadMm : 0);
			const part = lines.slice(from, from + Math.floor(left / lineMm));
			const height = stepHead + part.length * lineMm;
			if (pages.at(-1)!.length > 0 && used + height > room) {
				pages.push([]);
				used = 0;
			}
			pages.at(-1)!.push({ step, number: place + 1, isContinued: from > 0, lines: part });
			used += height;
			from += part.length;
		}
	});
	return pages;
}

/** Things on pages, so many on each. */
export const onPages = <Item>(items: readonly Item[], perPage: number): readonly (readonly Item[])[] =>
	Array.from({ length: Math.ceil(items.length / perPage) }, (_, page) =>
		items.slice(page * perPage, (page + 1) * perPage),
	);

/** Places of the rows, from 0, that have cuts. */
export const rowsWithCuts = (rows: readonly Row[], steps: readonly BenchStep[]): readonly number[] => {
	const cut = new Set(steps.flatMap(({ cuts }) => cuts.map(({ row }) => row - 1)));
	return rows.map((_, index) => index).filter((index) => cut.has(index));
};
