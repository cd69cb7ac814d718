import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { listed } from '../values/listed.ts';
import { isSameWord, offeredWords } from '../values/words.ts';
import type { UnreadCell } from './readCells.ts';
import { wordColumns } from './wordColumns.ts';

/** The cells that hold a word which means nothing in their column. They stay as typed and count as blank. */
export function unreadWords({ typed }: Row, settings: Settings): readonly UnreadCell[] {
	return (Object.entries(typed) as [ColumnName, string][]).flatMap(([column, text]): UnreadCell | readonly [] => {
		const words = wordColumns[column];
		if (!words?.isClosed || text.trim() === '') return [];
		const choices = words.choices(settings);
		if (choices.length === 0 || choices.some((choice) => isSameWord(choice, text))) return [];
		const problem = `“${text.trim()}” is not ${words.word}. Choose ${listed(choices, 'or')}`;
		return { column, problem, readings: offeredWords(choices, text) };
	});
}
