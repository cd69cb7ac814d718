import { parseArgs } from 'node:util';
import { type ColumnMatching, saidColumn, type SaidMeaning } from '../core/imports/columnMatching.ts';
import type { Reading } from '../core/length/reading.ts';

/** What the command line asks for. */
export interface PlanArguments {
	/** The file of rows, or a show file. */
	readonly file: string;
	/** The file of settings. */
	readonly show: string | undefined;
	readonly isJson: boolean;
	/** The most time, in seconds, that all board plans together may take. */
	readonly seconds: number;
	/** What columns of the file mean, by their headers. */
	readonly columns: ColumnMatching;
}

/** How the command is used. */
export const usage =
	"usage: npm run -s plan -- rows.csv [--show show.json] [--json] [--seconds N] [--columns 'header=column, ...']";

/** Reads the arguments behind the name of the command. */
export function readPlanArguments(args: readonly string[]): Reading<PlanArguments> {
	const { parsed, problem } = parse(args);
	if (parsed === undefined) return { problem };
	const { positionals, values } = parsed;
	const [file] = positionals;
	if (file === undefined) return { problem: 'no file of rows is named' };
	if (positionals.length > 1) return { problem: `one file of rows at a time: ${positionals.join(' ')}` };
	const seconds = values.seconds ?? '5';
	if (!/^\d+(?:\.\d+)?$/.test(seconds)) return { problem: `--seconds takes a number, zero or more, not “${seconds}”` };
	const columns = readMatching(values.columns ?? '');
	if ('problem' in columns) return columns;
	const { value: matching } = columns;
	return {
		value: { file, show: values.show, isJson: values.json ?? false, seconds: Number(seconds), columns: matching },
	};
}

/**
 * Reads what columns mean: `width=picture width, Size=picture width h x w`, where sizes give the height first; a header
 * may hold a comma where it is quoted.
 */
function readMatching(text: string): Reading<ColumnMatching> {
	const parts = text.match(/(?:"[^"]*"|[^,"])+/g) ?? [];
	const entries: [string, SaidMeaning][] = [];
	for (const part of parts.filter((each) => each.trim() !== '')) {
		const at = part.lastIndexOf('=');
		const [header, meaning] = [part.slice(0, Math.max(at, 0)), part.slice(at + 1)].map((each) =>
			each.trim().replace(/^"(.*)"$/, '$1'),
		);
		if (!header || !meaning)
			return { problem: `--columns takes header=column, parted by commas, not “${part.trim()}”` };
		const column = meaning.toLowerCase().replaceAll(/[\s_-]+/g, ' ');
		if (column !== 'none' && saidColumn(column) === undefined)
			return {
				problem: `--columns: there is no column “${meaning}”; the README names them, and none keeps one as it is`,
			};
		if (entries.some(([other]) => other.toLowerCase() === header.toLowerCase()))
			return { problem: `--columns names “${header}” twice` };
		entries.push([header, column as SaidMeaning]);
	}
	return { value: Object.fromEntries(entries) };
}

/** The arguments sorted out, or what no command of this use has. */
function parse(args: readonly string[]) {
	try {
		const value = parseArgs({
			args: [...args],
			allowPositionals: true,
			options: {
				show: { type: 'string' },
				json: { type: 'boolean' },
				seconds: { type: 'string' },
				columns: { type: 'string' },
			},
		});
		return { parsed: value };
	} catch (cause) {
		return { problem: (cause as Error).message.split(/\.\s/)[0]! };
	}
}
