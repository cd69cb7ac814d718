/**
 * How wide the signs from space to tilde are in the app's typeface, in thousandths of its size: measured in its heavier
 * weight (600), so that no weight that is printed is wider.
 */
const widths = [
	...[234, 268, 455, 610, 671, 923, 750, 255, 320, 324, 437, 573, 261, 386, 250, 368],
	...[630, 619, 618, 649, 644, 659, 643, 615, 661, 643, 250, 261, 563, 573, 563, 529],
	...[829, 719, 678, 705, 708, 629, 605, 747, 768, 297, 396, 701, 578, 903, 770, 749],
	...[645, 762, 687, 682, 606, 714, 690, 962, 704, 640, 655, 322, 368, 322, 479, 537],
	...[243, 560, 603, 546, 603, 572, 397, 626, 585, 258, 277, 572, 317, 882, 586, 571],
	...[602, 602, 403, 518, 404, 589, 513, 785, 577, 551, 489, 359, 266, 360, 592],
];

/** The widest sign of the typeface beside those, and of any other that may stand in for what it has not. */
const other = { inTypeface: 1140, elsewhere: 1400 };

const widthOf = (sign: string): number => {
	const code = sign.normalize('NFD').charCodeAt(0);
	return widths[code - 32] ?? (code < 0x2e80 ? other.inTypeface : other.elsewhere);
};

/** A millimetre in points, as type is measured. */
const pointsPerMm = 72 / 25.4;

/** How wide a text is at most on one line, in mm. */
export const textMm = (text: string, points: number): number =>
	([...text].reduce((sum, sign) => sum + widthOf(sign), 0) * points) / 1000 / pointsPerMm;

/**
 * In how many lines a text stands at most. Words, and what no-break spaces hold together, are kept whole where they fit; a
 * longer one is broken.
 * @param points size of the type
 * @param roomMm width of the lines
 */
export function textLines(text: string, points: number, roomMm: number): number {
	const room = ((roomMm * pointsPerMm) / points) * 1000;
	const space = widths[0]!;
	let lines = 1;
	let used = 0;
	for (const word of text.trim().split(/[ \t\n]+/)) {
		const signs = [...word].map(widthOf);
		const whole = signs.reduce((sum, width) => sum + width, 0);
		const gap = used > 0 ? space : 0;
		if (used + gap + whole <= room) {
			used += gap + whole;
			continue;
		}
		if (used > 0) lines++;
		used = 0;
		for (const width of signs) {
			if (used > 0 && used + width > room) {
				lines++;
				used = 0;
			}
			used += width;
		}
	}
	return lines;
}
