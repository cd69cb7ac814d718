import { type Frame, unframed } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { named, nameKey } from '../values/named.ts';

/** What is said of a row's frame, by the row or else by the show. */
export interface NamedFrame {
	/** Who says it; undefined where nobody does: then the frame goes by the size of what goes in. */
	readonly by: 'row' | 'show' | undefined;
	/** Whether it is said that there is no frame. */
	readonly isUnframed: boolean;
	/** The frame of the show's list that is named. */
	readonly listed: Frame | undefined;
	/** The name, where the show's list has no such frame. */
	readonly missing: string | undefined;
}

const unnamed: NamedFrame = { by: undefined, isUnframed: false, listed: undefined, missing: undefined };

/** What is said of a row's frame. */
export function nameFrame({ typed }: Row, { frame, frames }: Settings): NamedFrame {
	const own = typed.frame?.trim() ?? '';
	const name = own === '' ? frame : own;
	if (name === undefined) return unnamed;
	const isUnframed = nameKey(name) === unframed;
	const listed = isUnframed ? undefined : named(name, frames);
	const missing = isUnframed || listed ? undefined : name;
	return { by: own === '' ? 'show' : 'row', isUnframed, listed, missing };
}
