/**
 * The cautions for sawing a moulding, in sentences. That the piece is clamped, eyes and ears are protected and the hands stay
 * out of the line of the blade is common practice, and stands in the instructions that come with saws. So is that the two
 * legs of a pair are sawn against one stop, for a mitre closes only where they are alike, and that corners are tried dry.
 */
export const sawCautions = {
	/** What holds the moulding, what is worn, and where the hands are. */
	sawing: 'A saw bites. Clamp the moulding, wear eye and hearing protection, keep hands clear of the blade.',
	/** What comes before all of this. */
	rules: "Follow the saw's own instructions and your local rules.",
	/** All of it, and how mitres come to close, for the foot of a page. */
	inShort:
		'Clamp the moulding. Wear eye and hearing protection. Mitres at 45°, pairs against one stop, corners tried dry. Gloves for glass. Local rules and training first.',
} as const;
