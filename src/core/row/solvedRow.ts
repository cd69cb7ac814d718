import type { Length } from '../length/length.ts';
import { sizeKeys } from './cells.ts';

/** The nine results of a row and what the mount really covers; undefined where there is none. */
export interface SolvedRow {
	readonly mountWidth: Length | undefined;
	readonly mountHeight: Length | undefined;
	readonly windowWidth: Length | undefined;
	readonly windowHeight: Length | undefined;
	readonly pictureWidth: Length | undefined;
	readonly pictureHeight: Length | undefined;
	readonly side: Length | undefined;
	readonly top: Length | undefined;
	readonly bottom: Length | undefined;
	/** How far the mount covers the picture on each side; negative where it reveals. */
	readonly overlapSide: Length | undefined;
	readonly overlapTop: Length | undefined;
	readonly overlapBottom: Length | undefined;
}

/** A key of the results, in the order in which they are written. */
export type SolvedKey = keyof SolvedRow;

/** The keys of the results, in the order in which the CSV and the command line write them. */
export const solvedKeys = [
	...sizeKeys,
	'overlapSide',
	'overlapTop',
	'overlapBottom',
] as const satisfies readonly SolvedKey[];
