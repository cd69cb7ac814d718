/** Whether this is the soak, which tries in full what `npm test` tries in part. */
export const isSoak = process.env.EVENHANG_SOAK === '1';

/** All there is in the soak, else these few of them. */
export const allOr = <T>(all: readonly T[], few: readonly T[]): readonly T[] => (isSoak ? all : few);

/** How often something is tried: in `npm test`, and in the soak. */
export const runs = (inTest: number, inSoak: number): number => (isSoak ? inSoak : inTest);
