import { widthOfWords } from '../length/widthOfWords.ts';

/** What stands on a piece of a sheet. */
export interface PieceLines {
	readonly lines: readonly string[];
	/** A line for each word; stacked in a narrow piece; or none, where a figure has no room: a letter and a legend say them then. */
	readonly way: 'flat' | 'stacked' | 'letter';
}

/** From one base line to the next, in letters. */
export const lineHeight = 1.25;

/**
 * The lines of words that a piece has room for. In an upright, narrow one they are stacked, so that figures stay upright: a
 * size stands whole on two lines, or not at all.
 * @param words a name; a size, "130 × 900"; a blank one counts as nothing
 * @param width of the piece, and its height and the letters', in one unit
 */
export function pieceLines(words: readonly string[], width: number, height: number, letter: number): PieceLines {
	const said = words.filter((word) => word !== '');
	const isUpright = width < height / 2 && width < letter * 9;
	if (!isUpright) {
		const lines = flatLines(said, width, height, letter);
		// The size of what is kept stands nowhere else.
		const isCut = said[0]?.startsWith(offcutWord) && lines.join() !== said.join();
		return isCut ? { lines: [], way: 'letter' } : { lines, way: 'flat' };
	}
	const letters = lettersIn(width, letter);
	const stacks = said.map((word) => stacked(word, letters, width / letter - 0.6));
	const rows = rowsIn(height, letter);
	const sizeRows = stacks.reduce((sum, stack, at) => sum + (isSize(said[at]!) ? (stack?.length ?? 0) : 0), 0);
	if (stacks.some((stack) => stack === undefined) || sizeRows > rows) return { lines: [], way: 'letter' };
	// A name gives way to the size.
	let left = rows - sizeRows;
	const lines = stacks.flatMap((stack, at) => {
		if (isSize(said[at]!)) return stack!;
		const own = stack!.slice(0, left);
		left -= own.length;
		return own;
	});
	return { lines, way: 'stacked' };
}

const times = ' × ';
/** What stands on an offcut over its size. */
export const offcutWord = 'offcut';
const isSize = (word: string) => word.includes(times);

/** Words of one line each, as many as have room; a name too long for its line has more of them where there is the height. */
function flatLines(words: readonly string[], width: number, height: number, letter: number): readonly string[] {
	const [letters, rows] = [lettersIn(width, letter), rowsIn(height, letter)];
	const [name = '', ...others] = words;
	const named = name.length > letters && !name.startsWith(offcutWord) ? stackedName(name, letters) : [];
	const isWhole = named.join(' ') === name && named.length + others.length <= rows;
	return (isWhole ? [...named, ...others] : words)
		.slice(0, rows)
		.map((word) => shortened(word, letters))
		.filter((word) => word !== '…');
}

const rowsIn = (height: number, letter: number) =>
	Math.max(0, Math.floor((height - letter * 0.6) / (letter * lineHeight)));
const lettersIn = (width: number, letter: number) => Math.floor((width - letter * 0.8) / (letter * 0.54));

/**
 * A word in lines of so many letters, a size in lines of so much room, in letters' heights; undefined for a size, or
 * "offcut", that has no room even so.
 */
function stacked(word: string, letters: number, room: number): readonly string[] | undefined {
	if (word === offcutWord) return widthOfWords(word) <= room ? [word] : undefined;
	if (!isSize(word)) return stackedName(word, letters);
	if (widthOfWords(word) <= room) return [word];
	const [width = '', height = ''] = word.split(times);
	if (widthOfWords(height) > room) return undefined;
	// On two lines it would touch the dashes round an offcut.
	return widthOfWords(`${width} ×`) <= room - 0.5 ? [`${width} ×`, height] : undefined;
}

/** A name in as many lines as it needs. */
function stackedName(name: string, letters: number): readonly string[] {
	const lines: string[] = [];
	for (const word of name.split(' ')) {
		const last = lines.at(-1);
		if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
		else lines.push(shortened(word, letters));
	}
	return lines.filter((line) => line !== '…' && line !== '');
}

/** A word where it has room; else the number of a print that it begins with, or as much of it as there is room for. */
function shortened(word: string, letters: number): string {
	if (word.length <= letters) return word;
	const first = word.split(' ', 1)[0]!;
	if ((letters < 8 || /\d/.test(first)) && first.length <= letters && !isSize(word)) return first;
	return `${word.slice(0, Math.max(0, letters - 1))}…`;
}
