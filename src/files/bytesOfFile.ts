import type { Reading } from '../core/length/reading.ts';
import { notGiven } from './kindOfFile.ts';

/** The bytes of a file that the device has yet to give. @returns a problem, without the file's name, where it does not */
export async function bytesOfFile(file: Blob): Promise<Reading<Uint8Array<ArrayBuffer>>> {
	try {
		return { value: new Uint8Array(await file.arrayBuffer()) };
	} catch (cause) {
		return { problem: notGiven((cause as Error).name) };
	}
}
