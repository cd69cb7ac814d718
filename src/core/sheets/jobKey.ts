import type { PackingJob } from './packingJob.ts';

/**
 * Names all of a job that a plan depends on: two jobs of one key have the same plans. Where a row stands in the show is
 * not in it, nor how a sheet that is cut lies.
 */
export const jobKey = ({ board, material, stock, blanks, cutSheets }: PackingJob): string =>
	JSON.stringify([
		board,
		stock,
		blanks.map(({ rowId, copy, part, width, height }) => [rowId, copy, part, width, height]),
		cutSheets.map(({ stock: piece, blanks: given, offcuts }) => [piece, given.length, offcuts.length]),
		...(material ? [material] : []),
	]);
