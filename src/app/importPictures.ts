import { pictureNotKept, roomRunsShort } from '../core/device/picturesProblem.ts';
import type { FileReport } from '../core/imports/fileReports.ts';
import { picturesAdded, picturesWaiting } from '../core/imports/saidOfPictures.ts';
import { applyPictures } from '../core/pictures/applyPictures.ts';
import { type MatchedPicture, matchingPictures, type PictureFile } from '../core/pictures/matchPictures.ts';
import { makeId } from '../files/makeId.ts';
import { hashOfRow } from '../core/show/givenPicture.ts';
import { readPictures } from '../workers/readPictures.ts';
import type { Step } from './history.svelte.ts';
import { inSlices, otherWork } from './inSlices.ts';
import type { Pictures } from './pictures.svelte.ts';
import { prepareRows } from './prepareRows.ts';
import type { Session } from './session.svelte.ts';
import { storageRoom } from './storageRoom.ts';

/** A file that gives no picture. */
export interface UnreadPicture {
	readonly name: string;
	readonly problem: string;
}

/** Picture files that were read: nothing of the show has changed so far. */
export interface PicturesRead {
	readonly matched: readonly MatchedPicture[];
	readonly unread: readonly UnreadPicture[];
	/** Said where the browser's room runs short. */
	readonly room: string | undefined;
}

const endings =
	/\.(?:jpe?g|jpe|jfif|pjpe?g|png|apng|webp|avif|gif|tiff?|bmp|hei[cf]|svgz?|psd|raw|dng|cr[23]|nef|arw|orf|rw2)$/i;

/** Whether a file may be a picture, by what it is called; its bytes decide later. */
export const isPictureFile = ({ name, type }: Pick<File, 'name' | 'type'>): boolean =>
	type.startsWith('image/') || endings.test(name);

/** Whether the bytes of a file begin as those of a picture do, whatever it is called. */
export async function beginsAsPicture(file: Blob): Promise<boolean> {
	const bytes = await file
		.slice(0, 16)
		.arrayBuffer()
		.catch(() => new ArrayBuffer(0));
	return /^(?:\xff\xd8\xff|\x89PNG|GIF8|RIFF[^]{4}WEBP|[^]{4}ftyp(?:avi[fs]|hei[cx]|mif1)|II\*\0|MM\0\*)/.test(
		String.fromCharCode(...new Uint8Array(bytes)),
	);
}

/**
 * Reads picture files and keeps a small picture of each, and finds the prints that they belong to.
 * @param pictures where they are kept
 * @param onProgress called with how many are read
 */
export async function importPictures(
	session: Session,
	files: readonly File[],
	signal: AbortSignal,
	onProgress: (done: number, of: number) => void,
	read = readPictures,
	pictures: Pick<Pictures, 'keep' | 'announce'> = session.pictures,
): Promise<PicturesRead> {
	const sound: PictureFile[] = [];
	const unread: UnreadPicture[] = [];
	onProgress(0, files.length);
	await read(files, signal, async (file, reading, place) => {
		if ('problem' in reading) unread.push({ name: file.name, problem: reading.problem });
		else {
			const { hash, pixels, preview, small } = reading.value;
			try {
				await pictures.keep({ hash, pixels, names: [file.name], preview, small });
				sound.push({ name: file.name, hash, pixels });
			} catch (cause) {
				unread.push({ name: file.name, problem: pictureNotKept((cause as Error).name) });
			}
		}
		onProgress(place + 1, files.length);
	});
	await pictures.announce();
	const matched = await inSlices(matchingPictures(session.show.rows, sound));
	return { matched, unread, room: await room() };
}

async function room(): Promise<string | undefined> {
	const { usage, quota } = await storageRoom();
	return roomRunsShort(usage, quota);
}

/**
 * Gives the pictures to the prints, as it was chosen, as one edit. The rows are worked out in slices before that. A new
 * print that another tab has made of the same picture since the files were read is not made again.
 * @throws where it is left, or the session closes, before they are added
 */
export async function addPictures(
	session: Session,
	{ matched, unread, room: said }: PicturesRead,
	chosen: readonly MatchedPicture[],
	left?: AbortSignal,
): Promise<{ readonly report: FileReport; readonly step: Step | undefined }> {
	const ended = session.signal;
	const had = new Set(session.show.rows.map(hashOfRow));
	const wasNew = new Set(matched.filter(({ kind }) => kind === 'new').map(({ file }) => file.hash));
	const wanted = chosen.filter(({ kind, file }) => kind !== 'new' || !wasNew.has(file.hash) || !had.has(file.hash));
	const ids = wanted.map(() => makeId());
	const edit = applyPictures(session.show, wanted, ids, session.settings);
	await prepareRows(
		session,
		edit.rows.flatMap(({ after }) => after ?? []),
		left,
	);
	await otherWork(); // the edit, and the grid that it may open, have a turn of their own
	left?.throwIfAborted();
	const isAsked = session.question !== undefined;
	const step = session.do(() => edit);
	ended.throwIfAborted();
	if (session.question) return { report: picturesWaiting(isAsked), step };
	const given = edit.rows.filter(({ before, after }) => before && after && before.picture !== after.picture).length;
	const added = edit.rows.filter(({ before }) => !before).length;
	const counts = { given, added, unread: unread.length };
	return { report: picturesAdded(counts, said), step };
}
