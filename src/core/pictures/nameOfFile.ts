/** A picture's file name, taken apart. */
export interface NameParts {
	/** The number that it begins with, without leading zeros: `012_harbour.jpg` has 12, `7b.jpg` 7b. No year, no decimal. */
	readonly number: string | undefined;
	/** All of its name without folders and ending. */
	readonly bare: string;
	/** The same without the units of figures that may be its title's: `Study 300` for `Study 300dpi`. */
	readonly plain: string;
	/** Its words in small letters, without the number, the ending, a date, pixels, and marks of copies. */
	readonly words: readonly string[];
	/** The same as people would write it; undefined where a camera made the name, or nothing is left. */
	readonly title: string | undefined;
}

/**
 * Names as cameras, phones and programs for screens make them: they say nothing of the picture. Whatever stands between
 * parts is one sign here: a pattern that may share a run of signs out in many ways tries all of them.
 */
const camera =
	/^(?:_?(?:img|dsc[fn]?|mg|dscn|pxl|mvi|cimg|sam|gopr|imgp|dji|scan|screenshot|photo|image|picture|file|unnamed|untitled)[\d_]*|_?[a-z]{1,3}\d{5,}|p\d{7}|\d{5,}|\d{8}_\d{6}[\d_]*)(?:_?(?:hdr|pano|burst\d*|edit(?:ed)?|copy))*$/i;
const isCameras = (name: string): boolean => camera.test(name.replace(/[\s_-]+/g, '_'));

const ending = /\.[a-z0-9]{1,5}$/i;
const leadingNumber =
	/^(?:no\.?|nr\.?|#|cat\.?)?\s*(?!(?:19|20)\d\d(?!\d))0*(\d{1,4}[a-z]?)(?=$|[\s_)-]|[.,](?!\d))[\s_.,)-]*/i;
const leadingDate = /^(?:19|20)\d\d[-_.]?(?:0\d|1[0-2])[-_.]?(?:[0-2]\d|3[01])(?=$|[\s_-])[\s_-]*/;
/** What programs and people put behind a name. */
const mark =
	/(?:(?<![\s_-])[\s_-]*(?:\(\d{1,3}\)|(?<!\d)\d{2,5}\s?(?:px|dpi|ppi)|(?<!\d)\d{3,5}\s?x\s?\d{3,5}(?:\s?px)?)|(?<![\s_-])[\s_-]+(?:copy(?:\s?\d+)?|v\d{1,2}|s?rgb)|[_-](?:edit(?:ed)?(?:-\d+)?|final))$/i;
/** A figure with its unit at the end, which may be a mark or the last word of a title. */
const figureWithUnit = /(?<=\d)\s?(?:px|dpi|ppi)$/i;
/** More marks than anybody puts behind one name. */
const mostMarks = 8;

function withoutMarks(name: string): string {
	let bare = name;
	for (let marks = 0; marks < mostMarks; marks++) bare = bare.replace(mark, '');
	return bare;
}

/** Takes a file's name apart. Folders before it do not count. */
export function nameParts(fileName: string): NameParts {
	const bare = withoutEnding(decoded(fileName).replace(/^.*[/\\]/s, ''))
		.normalize('NFC')
		.trim();
	if (isCameras(bare)) return { bare, plain: bare, number: undefined, words: [], title: undefined };
	const undated = bare.replace(leadingDate, '');
	const number = leadingNumber.exec(undated);
	const rest = undated.slice(number?.[0].length ?? 0);
	const isOfCamera = isCameras(rest);
	// What is nothing but such a mark is the name: a print called “Copy”.
	const text = spaced(isOfCamera ? '' : withoutMarks(rest) || rest);
	return {
		bare,
		plain: bare.replace(figureWithUnit, ''),
		number: number?.[1]!.toLowerCase(),
		words: wordsOf(text),
		title: text === '' ? undefined : text.charAt(0).toUpperCase() + text.slice(1),
	};
}

/** A file's name without what programs tell its kind by. */
export const withoutEnding = (name: string): string => name.replace(ending, '');

/** The number that is typed for a row, as those of files are: `No. 07` is 7. */
export const numberOfRow = (text: string): string =>
	text
		.trim()
		.toLowerCase()
		.replace(/^(?:(?:no|nr|cat)(?![a-z])\.?|#)\s*/, '')
		.replace(/^0+(?=\d)/, '');

/** The words of a text, in small letters without accents: what only differs in signs between them is the same. */
export const wordsOf = (text: string): readonly string[] =>
	text
		.normalize('NFD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/['’]/g, '')
		.split(/[^\p{L}\p{N}]+/u)
		.filter((word) => word !== '');

/** Words apart that stood together by signs or capitals: `winterLight_ii` is `winter Light ii`. */
const spaced = (text: string): string =>
	text
		.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
		.replace(/_+/g, ' ')
		.replace(/(?<=\S)-+(?=\S)/g, ' ')
		.replace(/\s+/g, ' ')
		.trim();

function decoded(text: string): string {
	try {
		return decodeURIComponent(text);
	} catch {
		return text; // a per cent sign of its own
	}
}

/** Words as one text, to be compared: letters that stand apart are as good as together (`Ann_s` is `Ann’s`), figures are not. */
export const keyOf = (text: string): string =>
	wordsOf(text)
		.join(' ')
		.replace(/(?<=\p{L}) (?=\p{L})/gu, '')
		.replace(/^0+(?=\d)/, '');
