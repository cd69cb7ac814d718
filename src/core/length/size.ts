import type { Length } from './length.ts';

/** A width and a height, in that order. */
export interface Size {
	readonly width: Length;
	readonly height: Length;
}

/** A size that the show has given a name, such as "small frame". */
export interface NamedSize extends Size {
	readonly name: string;
}
