import { type Part, parts } from './parts.ts';
import type { Show } from './show.ts';

/** Every part of a show by its name, for what is done with each of them, whatever it holds. */
export const everyPart: readonly (readonly [name: string, part: Part<unknown, unknown>])[] = Object.entries(parts);

/** The values of parts by their names. */
export type PartValues = Readonly<Record<string, unknown>>;

/** What a show, or a form of one, holds of a part. */
export const heldOf = (show: object, name: string, { nothing }: Pick<Part<unknown, unknown>, 'nothing'>): unknown =>
	(show as PartValues)[name] ?? nothing;

/** A show with what is held of its parts: what every show has, and of the others those that are not nothing. */
export function showOf(held: PartValues): Omit<Show, 'id'> {
	const values = everyPart.flatMap(([name, part]) => {
		const value = heldOf(held, name, part);
		return part.isInEvery || part.compare(part.nothing, value) !== undefined ? [[name, value] as const] : [];
	});
	return Object.fromEntries(values) as unknown as Omit<Show, 'id'>;
}
