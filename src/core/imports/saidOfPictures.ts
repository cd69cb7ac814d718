import { shownText } from '../values/shownText.ts';
import { asSentence, decideFirst, type FileReport } from './fileReports.ts';
import { questionFirst } from './saidOfFiles.ts';
import { countOf } from '../values/countOf.ts';

/** What came of picture files. */
export interface PictureCounts {
	/** Given to prints that were there. */
	readonly given: number;
	/** New prints. */
	readonly added: number;
	/** Files that could not be read. */
	readonly unread: number;
}

/** What is said once pictures were added. */
export function picturesAdded({ given, added, unread }: PictureCounts, room: string | undefined): FileReport {
	const done = [
		...(given > 0 ? [`${countOf(given, 'print has', 'prints have')} a picture now.`] : []),
		...(added > 0 ? [`${countOf(added, 'new print')} at the end of the list.`] : []),
		...(given + added === 0 ? ['No picture was added.'] : []),
		...(unread > 0 ? [`${countOf(unread, 'file was', 'files were')} not read.`] : []),
	];
	return { title: 'Pictures', isProblem: false, sentences: [...done, ...(room === undefined ? [] : [room])] };
}

/**
 * What is said where pictures are not added, or not yet, for a question about cuts.
 * @param isRefused whether it was open before: then they are not added with the answer
 */
export const picturesWaiting = (isRefused: boolean): FileReport => ({
	title: 'Pictures',
	isProblem: isRefused,
	sentences: [isRefused ? `No picture was added: ${questionFirst}.` : decideFirst],
});

/** What is said where prints name pictures that this device does not have. @param count how many, at least 1 */
export const picturesNotHere = (count: number): string =>
	`${countOf(count, 'picture is', 'pictures are')} not on this device.`;

/** How a print was found for a file. */
export const foundByWords = {
	picture: 'has this picture already',
	'file name': 'by the file’s name',
	title: 'by its title',
	number: 'by its number',
	choice: 'chosen',
} as const;

/** The title of what is shown before pictures are added. */
export const picturesTitle = (count: number): string => countOf(count, 'picture');

/** Files that are named one by one, at most. */
const mostNamed = 5;

/** What is said where no file gave a picture. @param room said where room runs short */
export function noPicture(
	unread: readonly { readonly name: string; readonly problem: string }[],
	room: string | undefined,
): FileReport {
	const named = unread.slice(0, mostNamed).map(({ name, problem }) => `“${shownText(name)}”: ${problem}.`);
	const more = unread.length - named.length;
	const rest = more > 0 ? [`${countOf(more, 'other file')} gave no picture either.`] : [];
	const [only] = unread;
	const short = room === undefined ? [] : [room];
	return unread.length === 1 && only
		? {
				title: `“${shownText(only.name)}” gives no picture`,
				isProblem: true,
				sentences: [asSentence(only.problem), ...short],
			}
		: { title: 'No picture was read', isProblem: true, sentences: [...named, ...rest, ...short] };
}
