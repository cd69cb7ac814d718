import { quoted } from '../length/parseLength.ts';
import type { Reading } from '../length/reading.ts';

/** The most copies of one print that are read. */
const mostCopies = 9999;

/** Reads a number of copies: whole, zero or more. */
export function readCount(text: string): Reading<number> {
	if (!/^\d+$/.test(text))
		return { problem: `${quoted(text)} is not a number of copies. Type a whole number, such as 2` };
	const count = Number(text);
	return count > mostCopies
		? { problem: `${quoted(text)} is more than ${mostCopies} copies, the most that are read` }
		: { value: count };
}
