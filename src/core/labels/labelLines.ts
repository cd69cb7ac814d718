import type { RowResult } from '../findings/rowResult.ts';
import { formatSize } from '../length/formatLength.ts';
import { onRuler } from '../length/ruler.ts';
import type { LabelWord } from '../settings/labels.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { capital } from '../values/capital.ts';

/** A line that is wanted on a label, before it is fitted. */
export interface LabelLine {
	/** What it says, for a sentence about it. */
	readonly word: LabelWord;
	readonly text: string;
	readonly isBold: boolean;
	/** The size that it has where there is room, and the least that can be read, in points. */
	readonly points: number;
	readonly leastPoints: number;
	/** Whether an arrow that points up stands before it. */
	readonly hasArrow: boolean;
}

/** The sizes of type on a label, in points: 7 pt is about the least that is read with ease at arm's length (practice). */
const sizes = {
	title: { points: 14, leastPoints: 8 },
	other: { points: 10.5, leastPoints: 7 },
	up: { points: 9, leastPoints: 7 },
};

/**
 * The lines that stand on the label of a print, from its top; what its row leaves blank is not there.
 * @param price what is asked for it, in words
 */
export function labelLines(
	row: Row,
	result: RowResult,
	words: ReadonlySet<LabelWord>,
	settings: Settings,
	price: string,
): readonly LabelLine[] {
	const text = (word: LabelWord): string => (words.has(word) ? textOf(word, row, result, settings) : '');
	const line = (word: LabelWord, content: string, size: keyof typeof sizes = 'other'): readonly LabelLine[] =>
		content === '' ? [] : [{ word, text: content, ...sizes[size], isBold: size === 'title', hasArrow: size === 'up' }];
	const joined = (...texts: string[]) => texts.filter((each) => each !== '').join(', ');
	return [
		...line('this way up', text('this way up'), 'up'),
		...line('title', text('title'), 'title'),
		...line('maker', text('maker')),
		...line('medium', joined(text('medium'), text('year'))),
		...line('size', text('size')),
		...line('edition', joined(text('number'), text('edition'))),
		...line('price', words.has('price') ? price : ''),
	];
}

function textOf(word: LabelWord, row: Row, { solved, words }: RowResult, settings: Settings): string {
	const cells: Readonly<Record<string, string | undefined>> = row.typed;
	const typed = (cells[word] ?? '').replace(/\s+/g, ' ').trim();
	if (word === 'this way up') return 'This way up';
	if (word === 'size') {
		const { pictureWidth: width, pictureHeight: height } = solved;
		const { ruler } = settings; // nobody reads a label to half a millimetre
		return width === undefined || height === undefined
			? ''
			: `${formatSize(onRuler(height, ruler), onRuler(width, ruler), settings)} (h × w)`;
	}
	if (typed === '') return '';
	if (word === 'number') return `No. ${typed}`;
	if (word === 'edition')
		return words.edition?.kind === 'numbered'
			? `Edition ${typed}`
			: words.edition?.kind === 'open'
				? 'Open edition'
				: capital(typed);
	return typed;
}
