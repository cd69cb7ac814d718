import type { Reading } from '../core/length/reading.ts';
import { decodeText } from './decodeText.ts';
import { bytesOfFile } from './bytesOfFile.ts';
import { kindOfBytes } from './kindOfFile.ts';

/**
 * The text of a file. Bytes become text here and nowhere else, once a file; all that is read is read from the text.
 * @returns a problem, without its place, where the file is no text
 */
export function textOfFile(bytes: Uint8Array): Reading<string> {
	const kind = kindOfBytes(bytes);
	return kind === undefined ? decodeText(bytes) : { problem: kind };
}

/** The text of a file that the device has yet to give; see `textOfFile`. */
export async function textOfBlob(blob: Blob): Promise<Reading<string>> {
	const read = await bytesOfFile(blob);
	return 'problem' in read ? read : textOfFile(read.value);
}

/** A text that came as one, without the byte order mark that some programs leave at its beginning. */
export const withoutMark = (text: string): string => text.replace(/^\ufeff/, '');
