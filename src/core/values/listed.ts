/** Words as a sentence lists them: `one, two and three`. @param joint the word before the last, `and` or `or` */
export const listed = (words: readonly string[], joint: 'and' | 'or' = 'and'): string =>
	words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1)!}`;
