import { everyPart, heldOf } from './everyPart.ts';
import type { Show } from './show.ts';

/** The show as read again, with the objects of the old one wherever they hold the same: what was worked out holds. */
export function keepObjects(old: Show, read: Show): Show {
	const kept = everyPart
		.filter(([name]) => Object.hasOwn(read, name))
		.map(([name, part]) => [name, part.keepObjects(heldOf(old, name, part), heldOf(read, name, part))]);
	return { ...read, ...(Object.fromEntries(kept) as Partial<Show>) };
}
