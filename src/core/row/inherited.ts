import type { BottomWeight } from '../length/bottomWeight.ts';
import { isSame, type Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Settings } from '../settings/settings.ts';
import { type Cells, hasMount } from './cells.ts';
import type { Solution } from './solution.ts';

/** What holds in a row without being typed there: it comes from the show. Undefined where it does not. */
export interface Inherited {
	readonly mount: Size | undefined;
	readonly bottomWeight: BottomWeight | undefined;
	readonly overlap: Length | undefined;
	readonly reveal: Length | undefined;
}

const nothing: Inherited = { mount: undefined, bottomWeight: undefined, overlap: undefined, reveal: undefined };

/** What stands in for a blank mount cell: the show's size, or what the row's frame takes. */
function mountOf({ mount }: Cells, shows: Size | undefined): Size | undefined {
	if (mount.kind === 'size') return mount.isOfFrame ? mount.size : undefined;
	return mount.kind === 'show' ? shows : undefined;
}

/**
 * What a row has from the show. A reveal, the row's or the show's, replaces the show's overlap; a row's overlap
 * that of the show's reveal.
 */
export function inheritedBy(cells: Cells, { solved, cover }: Solution, settings: Settings): Inherited {
	if (!hasMount(cells)) return nothing;
	const { mountSize, bottomWeight } = settings;
	const is = (value: Length | undefined, wanted: Length) => value === undefined || isSame(value, wanted);
	const lies = (width: Length, height: Length) => is(solved.mountWidth, width) && is(solved.mountHeight, height);
	const isShows =
		mountSize !== undefined && (lies(mountSize.width, mountSize.height) || lies(mountSize.height, mountSize.width));
	return {
		mount: mountOf(cells, isShows ? mountSize : undefined),
		bottomWeight: cells.bottomWeight === undefined ? bottomWeight : undefined,
		overlap: cover.isOverlapInherited ? cover.overlap : undefined,
		reveal: cells.reveal === undefined ? cover.reveal : undefined,
	};
}
