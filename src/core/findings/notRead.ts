import type { Finder } from './found.ts';
import { saidOfUnread } from './saidOfUnread.ts';

/** `not-read`: a cell that cannot be read, or names what is in no list. It stays as typed and counts as blank. */
export const notRead: Finder = ({ read, row }) =>
	read.unread.map((cell) => {
		const { column, problem, readings } = saidOfUnread(cell, row);
		return {
			code: 'not-read',
			level: 'stop',
			cells: [column],
			figures: () => ({ column, problem }),
			candidates: () =>
				readings.map((text) => ({ offer: { kind: 'set text', column, text }, change: { [column]: text } })),
		};
	});
