import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { listed } from '../values/listed.ts';
import { isSameWord, offeredWords } from '../values/words.ts';
import type { UnreadCell } from './readCells.ts';
import { type WordColumn, wordColumns } from './wordColumns.ts';

/** In one order for all rows: that in which cells were typed, or stand in a file, says nothing. */
const closedColumns = (Object.entries(wordColumns) as [ColumnName, WordColumn][]).filter(
	([, { isClosed }]) => isClosed,
);

/** The cells that hold a word which means nothing in their column. They stay as typed and count as blank. */
export function unreadWords({ typed }: Row, settings: Settings): readonly UnreadCell[] {
	return closedColumns.flatMap(([column, words]): UnreadCell | readonly [] => {
		const text = typed[column]?.trim() ?? '';
		if (text === '') return [];
		const choices = words.choices(settings);
		if (choices.length === 0 || choices.some((choice) => isSameWord(choice, text))) return [];
		const problem = `“${text}” is not ${words.word}. Choose ${listed(choices, 'or')}`;
		return { column, problem, readings: offeredWords(choices, text) };
	});
}
