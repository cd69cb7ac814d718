/**
 * The cautions for cutting glass or acrylic, in sentences. That glass is scored once and snapped at once, on a flat
 * bench, in gloves and with the eyes covered, is common practice of glaziers; that acrylic is scored several times, too.
 */
export const glazingCautions = {
	/** What is worn, and where it is done. */
	protection:
		'Glass and acrylic: cut-resistant gloves, eye protection and a flat, padded bench swept clean of splinters.',
	/** How it is parted. */
	scoring:
		'Score from edge to edge along the straight edge, glass once, with a glass wheel; acrylic with a scoring blade, in several strokes. Then lay the line over a straight batten and snap it. Never score glass twice.',
	/** What is not cut here. */
	leave:
		'Toughened and laminated glass, and sheets too large for your bench, are for a glazier. Two people carry a large sheet, upright.',
	/** What comes before all of this. */
	rules: 'Your local rules and your training come first.',
} as const;
