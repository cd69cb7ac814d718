import { type Length, length, sameWithin } from './length.ts';

/** How far the exact value of a border may be from a tie and still count as one: far above the error of a double. */
const tieWithin = 0.001;

/**
 * The graduation of the ruler nearest to an exact value, the upper one if it lies half way.
 * @param exact in units of a `Length`, not rounded
 */
export const onRuler = (exact: number, ruler: Length): Length =>
	length(Math.floor((exact + tieWithin) / ruler + 0.5) * ruler);

/** The graduation at or above an exact value; one that lies less than 1 µm over a graduation counts as on it. */
export const upToRuler = (exact: number, ruler: Length): Length =>
	length(Math.ceil((exact - sameWithin) / ruler) * ruler);

/** The graduation at or under an exact value; one that lies less than 1 µm under a graduation counts as on it. */
export const downToRuler = (exact: number, ruler: Length): Length =>
	length(Math.floor((exact + sameWithin) / ruler) * ruler);

/** Whether a length lies on the ruler, to 1 µm. */
export const isOnRuler = (value: Length, ruler: Length): boolean => {
	const past = Math.abs(value % ruler);
	return past <= sameWithin || ruler - past <= sameWithin;
};
