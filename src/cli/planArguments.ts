import { parseArgs } from 'node:util';
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
}

/** How the command is used. */
export const usage = 'usage: npm run -s plan -- rows.csv [--show show.json] [--json] [--seconds N]';

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
	return { value: { file, show: values.show, isJson: values.json ?? false, seconds: Number(seconds) } };
}

/** The arguments sorted out, or what no command of this use has. */
function parse(args: readonly string[]) {
	try {
		const value = parseArgs({
			args: [...args],
			allowPositionals: true,
			options: { show: { type: 'string' }, json: { type: 'boolean' }, seconds: { type: 'string' } },
		});
		return { parsed: value };
	} catch (cause) {
		return { problem: (cause as Error).message.split('. ')[0]! };
	}
}
