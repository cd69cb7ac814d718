/** So many changes. */
export const changesInWords = (count: number): string => (count === 1 ? '1 change' : `${count} changes`);

/**
 * What reminds of changes since the last file; nothing where there are none. Before the first file all of the show is at
 * risk, however few the changes: a count would sound nearly safe.
 */
export const reminder = ({ changes, last }: { readonly changes: number; readonly last?: object | undefined }): string =>
	changes === 0 ? '' : last ? `${changesInWords(changes)} not backed up` : 'Never backed up';
