/** So many changes. */
export const changesInWords = (count: number): string => (count === 1 ? '1 change' : `${count} changes`);

/**
 * What reminds of changes in no file; nothing where there are none. Before the first file all of the show is at risk, however
 * few the changes: a count would sound nearly safe.
 */
export const reminder = (changesSince: number, hasFile: boolean): string =>
	changesSince === 0 ? '' : hasFile ? `${changesInWords(changesSince)} not backed up` : 'Never backed up';
