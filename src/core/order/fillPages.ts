/** Things that belong under one head, each with the room that it takes, in mm. */
export interface PageSection<Head, Item> {
	readonly head: Head;
	readonly headMm: number;
	readonly items: readonly { readonly item: Item; readonly mm: number }[];
}

/** A section, or what of it comes on one page. */
export interface PagePart<Head, Item> {
	readonly head: Head;
	/** Whether its first items are on a page before. */
	readonly isContinued: boolean;
	readonly items: readonly Item[];
}

/**
 * Sections on pages, one after the other. A head never stands alone at the foot of a page: it goes with its first item, and
 * stands again over what comes on the next page.
 * @param room of a page, in mm; what is larger by itself has a page of its own
 */
export function fillPages<Head, Item>(
	sections: readonly PageSection<Head, Item>[],
	room: number,
): readonly (readonly PagePart<Head, Item>[])[] {
	const pages: { head: Head; isContinued: boolean; items: Item[] }[][] = [[]];
	let used = 0;
	for (const { head, headMm, items } of sections) {
		let isBegun = false;
		let isOnPage = false;
		for (const { item, mm } of items) {
			if (used > 0 && used + mm + (isOnPage ? 0 : headMm) > room) {
				pages.push([]);
				used = 0;
				isOnPage = false;
			}
			if (!isOnPage) {
				pages.at(-1)!.push({ head, isContinued: isBegun, items: [] });
				used += headMm;
				isOnPage = isBegun = true;
			}
			pages.at(-1)!.at(-1)!.items.push(item);
			used += mm;
		}
	}
	return pages.filter((parts) => parts.length > 0);
}
