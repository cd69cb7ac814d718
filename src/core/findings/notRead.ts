import { glazingMaterials } from '../settings/settings.ts';
import { asTyped } from '../show/asTyped.ts';
import type { Finder, Found, RowContext } from './found.ts';

/** `not-read`: a cell that cannot be read, or names what is in no list. It stays as typed and counts as blank. */
export const notRead: Finder = (context) => [...unread(context), ...unlisted(context)];

const unread = ({ read }: RowContext): readonly Found[] =>
	read.unread.map(({ column, problem, readings }) => ({
		code: 'not-read',
		level: 'stop',
		cells: [column],
		figures: () => ({ column, problem }),
		candidates: () => readings.map((text) => ({ offer: { kind: 'read as text', text }, change: { [column]: text } })),
	}));

/** The words that a cell may hold besides the names of its list. */
const wordsOf = { glazing: ['none', ...glazingMaterials], backing: ['none'] } as const;

/** Glazing or backing that the show does not list. */
function unlisted({ row, words, settings }: RowContext): readonly Found[] {
	return (['glazing', 'backing'] as const).flatMap((column): readonly Found[] => {
		const text = words.texts[column];
		const known: readonly string[] = wordsOf[column];
		const names = [...new Set(settings[column].map(({ name }) => name))];
		if (text === '' || known.includes(text) || names.some((name) => name.trim().toLowerCase() === text)) return [];
		const problem = `“${asTyped(row, column).trim()}” is not in the show’s list of ${column}`;
		return [
			{
				code: 'not-read',
				level: 'stop',
				cells: [column],
				figures: () => ({ column, problem }),
				candidates: () =>
					[...names, ...known].map((name) => ({
						offer: { kind: 'read as text', text: name },
						change: { [column]: name },
					})),
			},
		];
	});
}
