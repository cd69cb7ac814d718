import type { Reading } from '../core/length/reading.ts';
import { readRows } from '../files/csv.ts';
import { tooLarge } from '../files/kindOfFile.ts';
import { makeId } from '../files/makeId.ts';
import { openText } from '../files/openText.ts';
import { textOfBlob, withoutMark } from '../files/textOfFile.ts';
import { isPackedFile, keepPictures } from './packedFile.ts';
import type { Pictures } from './pictures.svelte.ts';
import { unpackInWorker } from '../workers/archive.ts';
import { type HeldList, type Opened, openInWorker } from '../workers/openInWorker.ts';

/** How something that came in is named. */
export interface Origin {
	/** Blank for what was pasted. */
	readonly fileName: string;
	/** In sentences. */
	readonly source: string;
	/** In undo, where its rows are imported. */
	readonly label: string;
}

/** Something that came in, decoded once and opened. */
export interface Incoming extends Origin {
	readonly opened: Opened;
	/** A sentence where pictures that came with it were not kept. */
	readonly leftOut?: string | undefined;
}

/** A list that came in. */
export interface IncomingList extends Origin {
	readonly opened: Extract<Opened, { readonly kind: 'list' }>;
}

/** Whether what came in is a list. */
export const isList = (incoming: Incoming): incoming is IncomingList => incoming.opened.kind === 'list';

/** How a file is named in sentences. */
export const nameOfFile = ({ name }: { readonly name: string }): string => `“${name}”`;

/** What was pasted, in sentences. */
export const nameOfPasted = 'What was pasted';

/**
 * Opens a file.
 * @param pictures where those of a packed show are kept, once all of it is found to be sound; without it, no packed file is
 * opened
 * @param onProgress called with how many pictures are unpacked, then kept, of how many
 * @returns a problem, as a sentence without its place, where it cannot be read
 */
export async function openFile(
	file: File,
	signal?: AbortSignal,
	pictures?: Pick<Pictures, 'keep' | 'announce'>,
	onProgress: (done: number, of: number) => void = () => undefined,
	unpack = unpackInWorker,
): Promise<Reading<Incoming>> {
	const source = nameOfFile(file);
	const origin = { fileName: file.name, source, label: `Import ${source}` };
	if (pictures && (await isPackedFile(file))) {
		const until = signal ?? new AbortController().signal;
		const packed = await unpack(file, until, onProgress);
		if ('problem' in packed) return packed;
		const { text, close } = packed.value;
		try {
			const incoming = named(origin, await open(text, text.length, signal));
			if ('problem' in incoming) return incoming;
			const leftOut = await keepPictures(packed.value, pictures, until, onProgress);
			return { value: { ...incoming.value, leftOut } };
		} finally {
			close();
		}
	}
	const problem = tooLarge(file.size);
	return problem === undefined ? named(origin, await open(file, file.size, signal)) : { problem };
}

/** Opens a text that was pasted. @returns a problem where it holds a damaged show */
export const openPasted = async (text: string, signal?: AbortSignal): Promise<Reading<Incoming>> =>
	named({ fileName: '', source: nameOfPasted, label: 'Paste rows' }, await open(text, text.length, signal));

const named = (origin: Origin, opened: Reading<Opened>): Reading<Incoming> =>
	'problem' in opened ? opened : { value: { ...origin, opened: opened.value } };

/** From this size on, in bytes or characters, something is read beside the page, which goes on answering. */
const largeFile = 300_000;

const open = (
	source: Blob | string,
	size: number,
	signal: AbortSignal = new AbortController().signal,
): Promise<Reading<Opened>> =>
	size < largeFile || typeof Worker === 'undefined' ? openHere(source) : openInWorker(source, signal);

async function openHere(source: Blob | string): Promise<Reading<Opened>> {
	const text = typeof source === 'string' ? { value: withoutMark(source) } : await textOfBlob(source);
	if ('problem' in text) return text;
	const opened = openText(text.value);
	if ('problem' in opened) return opened;
	if (opened.value.kind !== 'list') return { value: opened.value };
	const list: HeldList = {
		beginning: opened.value.beginning,
		read: ({ settings, matching }) => Promise.resolve(readRows(text.value, settings, makeId, { matching })),
		letGo: () => undefined,
	};
	return { value: { kind: 'list', list } };
}

/** Opens what comes in; where that is left meanwhile, what was opened is closed again, and this rejects. */
export async function openUnlessLeft(
	open: (signal: AbortSignal | undefined) => Promise<Reading<Incoming>>,
	signal: AbortSignal | undefined,
): Promise<Reading<Incoming>> {
	const incoming = await open(signal);
	if (signal?.aborted && 'value' in incoming && isList(incoming.value)) incoming.value.opened.list.letGo();
	signal?.throwIfAborted();
	return incoming;
}
