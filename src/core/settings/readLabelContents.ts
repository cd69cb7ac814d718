import { isProblem, type Reading } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import { isAbsent, optionalSettings, type SettingContext, wordSetting } from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import { backLabelWords, type LabelContents, type LabelWord, wallLabelWords } from './labels.ts';

/** What stands on labels where nothing is said of it. */
export const usualContents: LabelContents = {
	back: ['this way up', 'title', 'maker', 'medium', 'year', 'size', 'number', 'edition'],
	wall: ['title', 'maker', 'medium', 'year', 'size', 'edition', 'price'],
};

/** Reads what stands on labels on the back and on the wall. */
export function readLabelContents(value: unknown, context: SettingContext): LabelContents {
	if (isAbsent(value)) return usualContents;
	if (!isRecord(value)) {
		context.report('labelContents', 'not a record of what stands on the back and on the wall');
		return usualContents;
	}
	const read = optionalSettings<LabelContents>(value, 'labelContents', context, {
		back: ['back', (typed) => wordsOnLabel(typed, backLabelWords)],
		wall: ['wall', (typed) => wordsOnLabel(typed, wallLabelWords)],
	});
	return { ...usualContents, ...read };
}

/** A list of words, or a text with commas between them: each once, in the order in which they stand on a label. */
function wordsOnLabel(value: unknown, words: readonly LabelWord[]): Reading<readonly LabelWord[]> {
	if (!Array.isArray(value) && typeof value !== 'string') return { problem: `${shown(value)} is not a list of words` };
	const list: readonly unknown[] = Array.isArray(value) ? value : value.split(',');
	const chosen = new Set<LabelWord>();
	for (const each of list) {
		const word = wordSetting(each, words);
		if (isProblem(word)) return word;
		chosen.add(word.value);
	}
	return { value: words.filter((word) => chosen.has(word)) };
}
