import { formatWithUnit } from '../length/formatLength.ts';
import { type Length, length, mm, plus, times, zero } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import { nameKey } from '../values/named.ts';
import { type Paper, papers } from '../values/papers.ts';
import { isSameWord } from '../values/words.ts';
import {
	isAbsent,
	lengthSetting,
	optionalSettings,
	recordsOf,
	type SettingContext,
	sizeOfRecord,
	textSetting,
	valueOf,
	wholeSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import type { LabelSheet } from './labelSheet.ts';

/** The most labels beside or under each other that are read. */
const mostLabels = 100;

/**
 * Reads the show's sheets of labels. One that lacks a measure, or does not fit on its paper, is reported and left out: its
 * labels would not come out where they are. So is one with the name of a sheet before it.
 */
export function readLabelSheets(value: unknown, context: SettingContext): readonly LabelSheet[] {
	const names = new Set<string>();
	return recordsOf(value, 'labelSheets', context).flatMap(([record, key]): readonly LabelSheet[] => {
		const name = valueOf(textSetting(record['name']), `${key}.name`, context);
		const paper = isAbsent(record['paper']) ? 'A4' : valueOf(paperSetting(record['paper']), `${key}.paper`, context);
		const size = sizeOfRecord(record, key, context);
		const [columns, rows] = (['columns', 'rows'] as const).map((side) =>
			countOf(record[side], `${key}.${side}`, context),
		);
		const space = (typed: unknown) => lengthSetting(typed, context, true);
		const rest = optionalSettings<{ left: Length; top: Length; gapAcross: Length; gapDown: Length }>(
			record,
			key,
			context,
			{
				left: ['left', space],
				top: ['top', space],
				gapAcross: ['gapAcross', space],
				gapDown: ['gapDown', space],
			},
		);
		if (name === undefined || paper === undefined || size === undefined) return [];
		if (columns === undefined || rows === undefined) return [];
		if (names.has(nameKey(name))) {
			context.report(`${key}.name`, `“${name}” is the name of a sheet before it too; give this one another`);
			return [];
		}
		names.add(nameKey(name));
		const { gapAcross = zero, gapDown = zero } = rest;
		const page = { width: mm(papers[paper].widthMm), height: mm(papers[paper].heightMm) };
		// Where a margin is blank, the labels lie in the middle of the page.
		const across = plus(times(size.width, columns), times(gapAcross, columns - 1));
		const down = plus(times(size.height, rows), times(gapDown, rows - 1));
		const left = rest.left ?? inTheMiddle(page.width, across);
		const top = rest.top ?? inTheMiddle(page.height, down);
		const sheet = { name, paper, ...size, columns, rows, left, top, gapAcross, gapDown };
		const problems = [
			pastPage(plus(left, across), page.width, `${columns} across reach`, `${paper} is`, 'wide', context),
			pastPage(plus(top, down), page.height, `${rows} down reach`, `${paper} is`, 'high', context),
		].filter((problem) => problem !== undefined);
		for (const problem of problems) context.report(key, problem);
		return problems.length > 0 ? [] : [sheet];
	});
}

/** A4 or Letter, whatever its capitals. */
function paperSetting(value: unknown): Reading<Paper> {
	const names = Object.keys(papers) as Paper[];
	const paper = names.find((name) => isSameWord(name, typeof value === 'string' ? value : ''));
	return paper === undefined ? { problem: `${shown(value)} is none of: ${names.join(', ')}` } : { value: paper };
}

function countOf(value: unknown, key: string, context: SettingContext): number | undefined {
	if (isAbsent(value)) {
		context.report(key, `the number of ${key.split('.').at(-1)!} is missing`);
		return undefined;
	}
	const count = valueOf(wholeSetting(value, 1), key, context);
	if (count === undefined || count <= mostLabels) return count;
	context.report(key, `${count} is more than ${mostLabels}`);
	return undefined;
}

const inTheMiddle = (page: Length, taken: Length): Length => length(Math.max(0, Math.floor((page - taken) / 2)));

/** What is wrong with labels that reach past the page: by 1 µm at least, as lengths in inches are rounded. */
function pastPage(end: Length, page: Length, labels: string, paper: string, way: string, { unit }: SettingContext) {
	if (end - page <= mm(0.001)) return undefined;
	const scale = { unit, ruler: mm(0.1) };
	return `${labels} ${formatWithUnit(end, scale)}, and ${paper} ${formatWithUnit(page, scale)} ${way}`;
}
