import Fraction from 'fraction.js';

/** What an inch show without settings of its own has: see the table of settings in README.md. */
const show = { mount: [20, 16], overlap: '1/8', bottomWeight: '1/10', ruler: 16 } as const;

const onRuler = (value: Fraction, round: 'round' | 'ceil') =>
	new Fraction(value.mul(show.ruler)[round](0)).div(show.ruler);

/** Inches as the app writes them: whole ones and a fraction in lowest terms, to the nearest 64th. */
export const inchText = (value: Fraction): string => value.mul(64).round(0).div(64).toFraction(true);

/**
 * Window and borders of a picture in an inch show, in exact fractions and apart from the program: the picture lies wide
 * or tall like the mount, is typed on both sides, and covers its window by the overlap. The side and the bottom go up to
 * the ruler, the top to its nearest graduation, and the window is what is left.
 */
export function inchRow(width: string, height: string) {
	const picture = [new Fraction(width), new Fraction(height)] as const;
	const lies = picture[0].compare(picture[1]) >= 0;
	const [mountWidth, mountHeight] = (lies ? show.mount : show.mount.toReversed()) as [number, number];
	const cover = new Fraction(show.overlap).mul(2);
	const side = onRuler(new Fraction(mountWidth).sub(picture[0]).add(cover).div(2), 'ceil');
	const free = new Fraction(mountHeight).sub(picture[1]).add(cover);
	const top = onRuler(free.div(new Fraction(2).add(show.bottomWeight)), 'round');
	const bottom = onRuler(free.sub(top), 'ceil');
	return {
		'window width': inchText(new Fraction(mountWidth).sub(side.mul(2))),
		'window height': inchText(new Fraction(mountHeight).sub(top).sub(bottom)),
		side: inchText(side),
		top: inchText(top),
		bottom: inchText(bottom),
	};
}
