/** So many changes. */
export const changesInWords = (count: number): string => (count === 1 ? '1 change' : `${count} changes`);

/** The count that reminds of changes in no file; nothing where there are none. */
export const reminder = (changesSince: number): string =>
	changesSince === 0 ? '' : `${changesInWords(changesSince)} not backed up`;
