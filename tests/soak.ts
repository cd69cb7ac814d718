import { test } from 'vitest';

/** Whether this is the soak, which tries in full what `npm test` tries in part. */
export const isSoak = process.env.EVENHANG_SOAK === '1';

/** All there is in the soak, else these few of them. */
export const allOr = <T>(all: readonly T[], few: readonly T[]): readonly T[] => (isSoak ? all : few);

/** How often something is tried: in `npm test`, and in the soak. */
export const runs = (inTest: number, inSoak: number): number => (isSoak ? inSoak : inTest);

/**
 * A test of the soak alone: what it shows, shorter tests of `npm test` show in parts, or in one form of several.
 * It is not passed over there, which would count as a failure; it is not defined.
 */
export const testInSoak = (name: string, play: () => unknown, timeout?: number): void => {
	if (isSoak) test(name, play, timeout);
};
