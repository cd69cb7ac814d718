import type { Size } from '../length/size.ts';
import { takes } from '../row/frame.ts';
import type { Frame } from '../settings/frame.ts';
import type { Settings } from '../settings/settings.ts';
import type { Candidate, RowContext } from './found.ts';
import type { Offer } from './offers.ts';

/** The frames of the list that take what goes in: those of its size, and mouldings, which are made to it. */
export const framesThatTake = (inside: Size, settings: Settings): readonly Frame[] =>
	settings.frames.filter((frame) => !frame.size || takes(frame, inside, settings));

/** Has a print in another frame of the list. */
export const useFrame = ({ name }: Frame): Candidate & { offer: Offer } => ({
	offer: { kind: 'set name', column: 'frame', name },
	change: { frame: name },
});

/** Has the print in another frame of the list, each that takes it. */
export const otherFrames = ({ frame: { frame: now, inside }, settings }: RowContext): Candidate[] =>
	inside
		? framesThatTake(inside, settings)
				.filter((frame) => frame !== now)
				.map(useFrame)
		: [];

/** Has a print that is glazed or backed behind or before another glazing or backing of the list. */
export const otherMaterials = ({ materials, settings }: RowContext): Candidate[] =>
	(['glazing', 'backing'] as const).flatMap((what) =>
		materials[what]
			? settings[what].map(({ name }) => ({
					offer: { kind: 'set name' as const, column: what, name },
					change: { [what]: name },
				}))
			: [],
	);
