import type { Length } from '../length/length.ts';
import type { Size } from '../length/size.ts';
import type { Hooks } from './fixing.ts';
import type { Wall } from '../settings/wall.ts';

/** A print on a wall. */
export interface HungPrint {
	/** The print's place in the show, from 0. */
	readonly place: number;
	/** Of the frame, where that is known; else of the mount, or of what stands for it. */
	readonly size: Size;
	/** From the wall's left edge to the print's, seen from the room: typed, or on the ruler. */
	readonly left: Length;
	/** The same before it went to the ruler, in units, not whole. */
	readonly exactLeft: number;
	/** Of its middle above the floor. */
	readonly centre: Length;
	/** Which column of the wall it is in, from 0 at the left. */
	readonly column: number;
	readonly isLeftTyped: boolean;
	readonly isCentreTyped: boolean;
	/** How far it is past the end of what is free for it, or of the wall's left; undefined where it is not. */
	readonly past: Length | undefined;
	/** Whether it is past the left of the wall: a part of a column may be, beside one with a place typed. */
	readonly isPastLeft: boolean;
}

/** A print on a wall, with what holds it. */
export interface HungRow extends HungPrint {
	/** Undefined where it has no frame, or no room for its rings. */
	readonly hooks: Hooks | undefined;
}

/** A run of a wall in which columns stand evenly. */
export interface HungStretch {
	/** Its ends from the wall's left edge, in units. */
	readonly from: number;
	readonly to: number;
	/** The columns in it, counted as `HungPrint.column` does. */
	readonly columns: readonly number[];
	/** Between its columns, in units; undefined where nothing hangs in it, below zero where they do not fit. */
	readonly gap: number | undefined;
	/** Whether its columns do not fit, with the gap asked for, and stand edge to edge. */
	readonly isCrowded: boolean;
	/** At its two ends, in units. */
	readonly ends: number | undefined;
}

/** A wall with what hangs on it. */
export interface HungWall {
	readonly wall: Wall;
	/** From the left, in a column from the top. */
	readonly prints: readonly HungPrint[];
	readonly stretches: readonly HungStretch[];
}

/** The walls of a show. */
export interface Hanging {
	readonly walls: readonly HungWall[];
	/** The places of the prints that hang on none, from 0. */
	readonly unhung: readonly { readonly place: number; readonly why: 'no wall' | 'no size' }[];
}
