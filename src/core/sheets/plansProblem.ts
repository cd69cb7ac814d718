import type { CutSheet } from '../show/cutSheet.ts';
import { cutSheetsJson, readCutSheets } from '../show/cutSheetJson.ts';
import { isRecord, type PlainRecord } from '../values/isRecord.ts';
import { jobKey } from './jobKey.ts';
import type { PackingJob } from './packingJob.ts';

/** What is wrong with board plans as they are kept, in words; undefined: each is one that can be shown and cut. */
export function plansProblem(boards: unknown): string | undefined {
	if (!Array.isArray(boards)) return 'boards is not a list';
	for (const [place, board] of boards.entries()) {
		const problem = planProblem(board);
		if (problem !== undefined) return `boards[${place}]${problem}`;
	}
	return undefined;
}

const figures = ['cost', 'count', 'leastCost', 'leastCount', 'wasteShare'];

function planProblem(board: unknown): string | undefined {
	if (!isRecord(board)) return ' is not a record';
	const { key, job, plan, sheets } = board;
	if (!isRecord(plan)) return '.plan is not a record';
	if (!isKeyOf(key, job)) return '.key is not that of its job';
	const figure = figures.find((name) => !Number.isFinite(plan[name]));
	if (figure !== undefined) return `.plan.${figure} is not a number`;
	if (!Array.isArray(plan['unplaced']) || !plan['unplaced'].every(isUnplaced)) return '.plan.unplaced is damaged';
	const layouts = Array.isArray(plan['layouts']) ? (plan['layouts'] as unknown[]) : [undefined];
	const asSheets = layouts.map((layout, at) => ({ ...(layout as object), id: `${at}`, made: [], isSpoilt: false }));
	return sheetsProblem(asSheets, '.plan.layouts') ?? sheetsProblem(sheets, '.sheets');
}

const isUnplaced = (entry: unknown): boolean =>
	isRecord(entry) && typeof entry['reason'] === 'string' && isRecord(entry['blank']) && isSized(entry['blank']);

const isSized = ({ width, height, copy }: PlainRecord): boolean =>
	[width, height, copy].every((value) => Number.isFinite(value));

function isKeyOf(key: unknown, job: unknown): boolean {
	try {
		return key === jobKey(job as PackingJob);
	} catch {
		return false;
	}
}

/** By the way in which cut sheets are written to files and read; a damaged one may not even be written. */
function sheetsProblem(sheets: unknown, place: string): string | undefined {
	try {
		const read = readCutSheets(cutSheetsJson(sheets as CutSheet[]));
		return 'problem' in read ? read.problem.replace('cutSheets', place) : undefined;
	} catch {
		return `${place} has no known form`;
	}
}
