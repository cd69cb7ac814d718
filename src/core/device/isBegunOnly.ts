/** Whether nothing was ever typed into a show: there is nothing to lose. @param show as it is on the shelf */
export const isBegunOnly = (show: {
	readonly prints: number;
	readonly revision: number;
	/** Says whether it is of a file, which may hold settings and no prints. */
	readonly copied?: object;
}): boolean => show.prints === 0 && show.revision <= 1 && show.copied === undefined;
