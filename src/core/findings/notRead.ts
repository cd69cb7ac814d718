import type { Finder } from './found.ts';

/** `not-read`: a cell that cannot be read. It stays as typed and counts as blank. */
export const notRead: Finder = ({ read }) =>
	read.unread.map(({ column, problem, readings }) => ({
		code: 'not-read',
		level: 'stop',
		cells: [column],
		message: () => `${column[0]!.toUpperCase()}${column.slice(1)}: ${problem}${/[.?!]$/.test(problem) ? '' : '.'}`,
		candidates: () => readings.map((text) => ({ label: () => `Read as ${text}`, change: { [column]: text } })),
	}));
