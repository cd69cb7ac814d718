import type { Session } from '../app/session.svelte.ts';
import type { PlacedBlank } from '../core/show/cutSheet.ts';
import { type DrawnPrint, drawnPrint } from '../ui/mount/drawnPrint.ts';

/** The pictures of the prints that blanks are for: those of mounts, whose window is cut from the blank itself. */
export function blankPictures({ show, results, pictures }: Session) {
	const places = new Map(show.rows.map(({ id }, place) => [id, place]));
	return ({ rowId, part }: PlacedBlank): { drawn: DrawnPrint; address: string } | undefined => {
		const place = rowId === undefined || part !== 'mount' ? undefined : places.get(rowId);
		if (place === undefined) return undefined;
		const address = pictures.addressOf(show.rows[place]!, 'small');
		const drawn = address === undefined ? undefined : drawnPrint(results[place]!);
		return drawn && address !== undefined ? { drawn, address } : undefined;
	};
}
