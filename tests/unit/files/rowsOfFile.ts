import type { ReadOptions } from '../../../src/files/readRows.ts';
import { type MakeId, readRows, type RowsOfFile } from '../../../src/files/csv.ts';
import { textOfFile, withoutMark } from '../../../src/files/textOfFile.ts';
import type { Settings } from '../../../src/core/settings/settings.ts';

/** The rows of a file, by its bytes or by its text. */
export function rowsOfFile(
	file: Uint8Array | string,
	settings: Settings,
	makeId: MakeId,
	options?: ReadOptions,
): RowsOfFile | { readonly problem: string } {
	const text = typeof file === 'string' ? { value: withoutMark(file) } : textOfFile(file);
	if ('problem' in text) return { problem: `line 1, column 1: ${text.problem}` };
	return readRows(text.value, settings, makeId, options);
}
