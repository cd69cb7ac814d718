import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { orderBench } from '../core/bench/orderBench.ts';
import type { Reading } from '../core/length/reading.ts';
import { withEditionClashes } from '../core/findings/editionClashes.ts';
import { workOut } from '../core/row/workOut.ts';
import { readSettings, unknownSettings } from '../core/show/readSettings.ts';
import type { Row } from '../core/show/row.ts';
import type { TypedSettings } from '../core/show/settings.ts';
import { readRows, writeRows } from '../files/csv.ts';
import { decodeText } from '../files/decodeText.ts';
import { isShowFileText, readSettingsFile, readShowFile } from '../files/showFile.ts';
import { type PlanArguments, readPlanArguments, usage } from './planArguments.ts';
import { planJson } from './planJson.ts';

/** What could not be done, and the code with which the command ends. */
class Refusal extends Error {
	readonly exitCode: number;
	constructor(message: string, exitCode: number) {
		super(message);
		this.exitCode = exitCode;
	}
}

/** The value of a reading of a file, or a refusal in its words. */
function valueOf<Value>(reading: Reading<Value>): Value {
	if ('problem' in reading) throw new Refusal(reading.problem, 1);
	return reading.value;
}

/** npm runs a script in the project's folder; a relative path is meant from where the person stands. */
function pathOf(file: string): string {
	const { INIT_CWD: standing } = process.env;
	const meant = standing === undefined ? resolve(file) : resolve(standing, file);
	return existsSync(meant) ? meant : resolve(file);
}

function bytesOf(file: string): Uint8Array {
	try {
		return readFileSync(pathOf(file));
	} catch (cause) {
		const { code, message } = cause as NodeJS.ErrnoException;
		const why: Readonly<Record<string, string>> = { ENOENT: 'there is no such file', EISDIR: 'it is a folder' };
		throw new Refusal(`${file} cannot be read: ${why[code ?? ''] ?? message}`, 1);
	}
}

interface Input {
	readonly rows: readonly Row[];
	readonly settings: TypedSettings;
	readonly notes: readonly string[];
	readonly isShowFile: boolean;
}

/** The rows and settings of a show file, or the rows of a delimited one. */
function readInput({ file, show }: PlanArguments): Input {
	const bytes = bytesOf(file);
	const settings = show === undefined ? undefined : valueOf(readSettingsFile(bytesOf(show)));
	const text = decodeText(bytes);
	if ('value' in text && isShowFileText(text.value)) {
		const read = valueOf(readShowFile(text.value));
		return { rows: read.rows, settings: settings ?? read.settings, notes: [], isShowFile: true };
	}
	const read = readRows(bytes, readSettings(settings ?? {}).settings, (place, attempt) =>
		attempt === 1 ? `row ${place}` : `row ${place} (${attempt})`,
	);
	if ('problem' in read) throw new Refusal(read.problem, 1);
	return { rows: read.rows, settings: settings ?? {}, notes: read.notes, isShowFile: false };
}

/** Works out the rows of a file, and writes them with their results to standard output. */
function plan(args: readonly string[]): void {
	const read = readPlanArguments(args);
	if ('problem' in read) throw new Refusal(`${read.problem}\n${usage}`, 2);
	const input = readInput(read.value);
	const { settings, problems } = readSettings(input.settings);
	if (problems.length > 0) {
		const where = read.value.show ?? read.value.file;
		throw new Refusal(problems.map(({ key, problem }) => `${where}, setting ${key}: ${problem}`).join('\n'), 1);
	}
	for (const key of unknownSettings(input.settings)) console.error(`no setting is called ${key}: passed over`);
	for (const note of input.notes) console.error(note);
	const { rows } = input;
	const results = withEditionClashes(
		rows,
		rows.map((row) => workOut(row, settings)),
	);
	const show = { rows, results, settings, bench: orderBench(rows, results, settings) };
	process.stdout.write(
		read.value.isJson ? planJson(show) : writeRows(show, { lineEnd: '\n', hasIds: input.isShowFile }),
	);
}

process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
	if (cause.code !== 'EPIPE') throw cause; // whoever read it (head, say) has seen enough
});
try {
	plan(process.argv.slice(2));
} catch (cause) {
	if (!(cause instanceof Refusal)) throw cause;
	console.error(cause.message);
	process.exitCode = cause.exitCode;
}
