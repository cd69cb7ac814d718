import type { Session } from '../../app/session.svelte.ts';
import { onPages } from '../../core/bench/paper.ts';
import { hangOrder } from '../../core/row/hangOrder.ts';
import { nameOfPrint } from '../../core/show/nameOfPrint.ts';
import { levelWord } from '../../ui/grid/cellView.ts';
import { drawnPrint } from '../../ui/mount/drawnPrint.ts';

/** Prints on a page of the contact sheet, and the room that the largest of them has there, in CSS pixels. */
const perPage = 12;
const room = { width: 210, height: 174 };

/** The show on pages of a contact sheet, in the order in which it hangs, with the scale that all of its prints share. */
export function contactPages({ show, results, pictures }: Session) {
	const prints = hangOrder(show.rows, results).map((place) => {
		const row = show.rows[place]!;
		const gravest = results[place]!.findings.find(({ level }) => level !== 'note')?.level;
		return {
			name: nameOfPrint(row, place),
			drawn: drawnPrint(results[place]!),
			address: pictures.addressOf(row),
			level: gravest === undefined ? '' : levelWord(gravest).toLowerCase(),
		};
	});
	const sides = prints.flatMap(({ drawn }) => drawn?.outer ?? []);
	const largest = (of: (side: (typeof sides)[number]) => number) => Math.max(1, ...sides.map(of));
	const scale = Math.min(
		room.width / largest(({ left, right }) => right - left),
		room.height / largest(({ top, bottom }) => bottom - top),
	);
	return { pages: onPages(prints, perPage), scale };
}
