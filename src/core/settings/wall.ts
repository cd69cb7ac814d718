import type { Length } from '../length/length.ts';

/** What is in the way on a wall: a door, a window, a radiator. Lengths as seen from the room. */
export interface Obstacle {
	readonly name: string;
	/** From the wall's left edge. */
	readonly left: Length;
	/** Above the floor. */
	readonly bottom: Length;
	readonly width: Length;
	/** Undefined: up to the ceiling. */
	readonly height: Length | undefined;
}

/** A wall to hang prints on. */
export interface Wall {
	readonly name: string;
	readonly length: Length;
	/** Undefined where it is not known: then nothing is too high. */
	readonly height: Length | undefined;
	/** The line that the middles of the prints hang on, above the floor. */
	readonly centre: Length;
	/** Between two prints. Undefined: what makes all gaps, and the ends, alike. */
	readonly gap: Length | undefined;
	readonly obstacles: readonly Obstacle[];
}
