import type { RowResult } from '../findings/rowResult.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { nameKey } from '../values/named.ts';

/** Which prints get labels: those of one maker, of one wall, or both; what is left out asks for nothing. */
export interface LabelGroup {
	/** As typed, whatever its capitals. */
	readonly maker?: string | undefined;
	/** The name of a wall of the show. */
	readonly wall?: string | undefined;
}

/** What labels of a show can be chosen by. */
export interface LabelGroups {
	/** In the order of the show, each as it is typed first. */
	readonly makers: readonly string[];
	/** Those on which a print hangs, in the order of the show's list. */
	readonly walls: readonly string[];
}

/** The makers and the walls of the prints that get labels. */
export function labelGroups(rows: readonly Row[], results: readonly RowResult[], { walls }: Settings): LabelGroups {
	const makers = new Map<string, string>();
	const used = new Set<number>();
	rows.forEach(({ typed }, place) => {
		const { copies, hangs } = results[place]!;
		if (copies === 0) return;
		const maker = nameKey(typed.maker ?? '');
		if (maker !== '' && !makers.has(maker)) makers.set(maker, typed.maker!.trim());
		if (hangs.wall !== undefined) used.add(hangs.wall);
	});
	return {
		makers: [...makers.values()],
		walls: walls.filter((_, place) => used.has(place)).map(({ name }) => name),
	};
}

/** What is chosen and still there: a maker or a wall that no print has any more is no choice. */
export function groupStillThere({ maker, wall }: LabelGroup, { makers, walls }: LabelGroups): LabelGroup {
	return {
		maker: makers.find((each) => maker !== undefined && nameKey(each) === nameKey(maker)),
		wall: walls.find((each) => wall !== undefined && nameKey(each) === nameKey(wall)),
	};
}

/** Whether a print is one of those that are asked for. */
export const isInGroup = ({ maker, wall }: LabelGroup, row: Row, { hangs }: RowResult, { walls }: Settings): boolean =>
	(maker === undefined || nameKey(row.typed.maker ?? '') === nameKey(maker)) &&
	(wall === undefined || (hangs.wall !== undefined && nameKey(walls[hangs.wall]!.name) === nameKey(wall)));
