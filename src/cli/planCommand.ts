import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Tick } from '../core/show/tick.ts';
import { orderBench } from '../core/bench/orderBench.ts';
import { readViews } from '../core/grid/views.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import { shownText } from '../core/values/shownText.ts';
import type { Reading } from '../core/length/reading.ts';
import { withFindingsAcross } from '../core/findings/acrossRows.ts';
import { judgeRow } from '../core/findings/judgeRow.ts';
import { printsOf } from '../core/show/blankRow.ts';
import type { CutSheet } from '../core/show/cutSheet.ts';
import { layoutOf } from '../core/sheets/layout.ts';
import { jobsOf } from '../core/sheets/jobsOf.ts';
import { whatToGet } from '../core/order/whatToGet.ts';
import { packBoards } from '../core/sheets/packBoards.ts';
import { planAllSticks } from '../core/sticks/planSticks.ts';
import { stickJobsOf } from '../core/sticks/stickJobsOf.ts';
import { readSettings, unknownSettings } from '../core/settings/readSettings.ts';
import type { Row } from '../core/show/row.ts';
import type { TypedSettings } from '../core/settings/settings.ts';
import { readRows, type WorkedOutRows, writeRows } from '../files/csv.ts';
import { saysBuyer } from '../files/headers.ts';
import { type ColumnOfFile, readColumns } from '../files/readColumns.ts';
import { firstLines } from '../files/firstLines.ts';
import { isShowFileText, readSettingsFile, readShowFile } from '../files/showFile.ts';
import { textOfFile } from '../files/textOfFile.ts';
import { openHighs } from '../solver/openHighs.ts';
import { type PlanArguments, readPlanArguments, usage } from './planArguments.ts';
import { planJson, type PlannedShow } from './planJson.ts';

/** What a command says, and the code with which it ends: 0, 1 if a file cannot be read, 2 if it is used wrongly. */
export interface Outcome {
	readonly exitCode: 0 | 1 | 2;
	/** For standard output. */
	readonly output: string;
	/** For standard error, one line each. */
	readonly said: readonly string[];
}

/**
 * Works out the rows of a file, orders their cuts and plans their boards.
 * @param args what stands behind the name of the command
 * @param standing the folder that relative paths are meant from; undefined for the process's own
 */
export async function planCommand(args: readonly string[], standing: string | undefined): Promise<Outcome> {
	const read = readPlanArguments(args);
	if ('problem' in read) return { exitCode: 2, output: '', said: [read.problem, usage] };
	const input = readInput(read.value, standing);
	if ('problem' in input) return { exitCode: 1, output: '', said: [input.problem] };
	const { rows, typedSettings, views, notes, isShowFile } = input.value;
	const { settings, problems: ofSettings } = readSettings(typedSettings);
	const problems = [...ofSettings];
	readViews(views, { report: (key, problem) => void problems.push({ key, problem }) });
	if (problems.length > 0) {
		const where = read.value.show ?? read.value.file;
		const said = problems.map(({ key, problem }) => `${where}, setting ${key}: ${problem}`);
		return { exitCode: 1, output: '', said };
	}
	const unknown = unknownSettings(typedSettings).map((key) => `no setting is called ${key}: passed over`);
	const alone = rows.map((row) => judgeRow(row, settings));
	const results = withFindingsAcross(rows, alone, settings);
	const show = { rows, results, settings, bench: orderBench(rows, results, settings) };
	const output = read.value.isJson
		? planJson(show, await planAll(show, input.value, read.value.seconds))
		: writeRows(show, { lineEnd: '\n', hasIds: isShowFile });
	return { exitCode: 0, output, said: [...unknown, ...notes] };
}

/** The most of the time that sticks may take: they are quick, and what they leave is for boards. */
const shareOfSticks = 0.3;

/** The plans of boards, glazing, backing and sticks, in at most so many seconds, and what is to be got. */
async function planAll(
	{ rows, results, settings }: WorkedOutRows,
	{ ticks, cutSheets }: Input,
	seconds: number,
): Promise<PlannedShow> {
	const start = performance.now();
	const secondsLeft = () => seconds - (performance.now() - start) / 1000;
	const { jobs } = jobsOf(rows, results, settings, { ticks, cutSheets: cutSheets.map(layoutOf) });
	const possible = jobs.filter(({ stock }) => stock.length > 0);
	const sawn = stickJobsOf(rows, results, settings);
	const openProgram = possible.length + sawn.length > 0 ? await openHighs() : undefined;
	const sticks = planAllSticks(sawn, { openProgram, secondsLeft: () => secondsLeft() - (1 - shareOfSticks) * seconds });
	const plans = packBoards(possible, { openProgram, secondsLeft });
	return { plans, sticks, toGet: whatToGet({ rows, results, settings, plans, sticks }) };
}

interface Input {
	readonly ticks: readonly Tick[];
	readonly cutSheets: readonly CutSheet[];
	readonly rows: readonly Row[];
	readonly typedSettings: TypedSettings;
	/** How the show is looked at: nothing follows from it, but that it can be read. */
	readonly views: unknown;
	readonly notes: readonly string[];
	readonly isShowFile: boolean;
}

/** The rows and settings of a show file, or the rows of a delimited one. */
function readInput({ file, show, columns }: PlanArguments, standing: string | undefined): Reading<Input> {
	const bytes = bytesOf(file, standing);
	if ('problem' in bytes) return bytes;
	const own = show === undefined ? undefined : settingsOf(show, standing);
	if (own !== undefined && 'problem' in own) return own;
	const text = textOfFile(bytes.value);
	if ('problem' in text) return { problem: `line 1, column 1: ${text.problem}` };
	if (isShowFileText(text.value)) {
		const read = readShowFile(text.value);
		if ('problem' in read) return { problem: `${file}: ${read.problem}` };
		const { rows, settings, views, ticks = [], cutSheets = [] } = read.value;
		const looked = own ? { typedSettings: own.value, views: own.value['views'] } : { typedSettings: settings, views };
		return { value: { rows: printsOf(rows), ticks, cutSheets, ...looked, notes: [], isShowFile: true } };
	}
	const typedSettings = own?.value ?? {};
	const makeId = (place: number, attempt: number) => (attempt === 1 ? `row ${place}` : `row ${place} (${attempt})`);
	const read = readRows(text.value, readSettings(typedSettings).settings, makeId, { matching: columns });
	const said = readColumns(firstLines(text.value, mostLookedAt), columns)?.columns ?? [];
	const missing = Object.keys(columns).find((name) => said.every((column) => !isSameHeader(column.text, name)));
	if (said.length > 0 && missing !== undefined)
		return { problem: `line 1, column ${missing}: --columns names it, and the file has no such column` };
	if ('problem' in read) return read;
	const { views } = typedSettings;
	const { rows } = read;
	const notes = [...read.notes, ...notesOnColumns(said, columns)];
	return { value: { rows, ticks: [], cutSheets: [], typedSettings, views, notes, isShowFile: false } };
}

/** How much of a list is looked at to know its columns. */
const mostLookedAt = 200_000;

const isSameHeader = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** What is said of columns that are not known, with what they may mean, and of those that say who bought a print. */
function notesOnColumns(columns: readonly ColumnOfFile[], matching: ColumnMatching): readonly string[] {
	const noted = columns.filter(
		({ meaning, text }) =>
			meaning === 'buyer' || (meaning === 'none' && !Object.keys(matching).some((name) => isSameHeader(name, text))),
	);
	return noted.map(({ meaning, text, guesses: [likeliest] }) => {
		const hint = likeliest === undefined ? '' : `; if it is ${likeliest}, say --columns '${text}=${likeliest}'`;
		const isOfBuyers = meaning === 'buyer' || saysBuyer(text);
		return `column ${shownText(text)} ${isOfBuyers ? 'says who bought a print: left out' : 'is not known: kept as it is'}${hint}`;
	});
}

function settingsOf(show: string, standing: string | undefined): Reading<TypedSettings> {
	const bytes = bytesOf(show, standing);
	if ('problem' in bytes) return bytes;
	const text = textOfFile(bytes.value);
	const read = 'problem' in text ? text : readSettingsFile(text.value);
	return 'problem' in read ? { problem: `${show}: ${read.problem}` } : read;
}

const reasons: Readonly<Record<string, string>> = { ENOENT: 'there is no such file', EISDIR: 'it is a folder' };

function bytesOf(file: string, standing: string | undefined): Reading<Uint8Array> {
	const meant = standing === undefined ? resolve(file) : resolve(standing, file);
	try {
		return { value: readFileSync(existsSync(meant) ? meant : resolve(file)) };
	} catch (cause) {
		const { code, message } = cause as NodeJS.ErrnoException;
		return { problem: `${file} cannot be read: ${reasons[code ?? ''] ?? message}` };
	}
}
