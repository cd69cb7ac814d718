/**
 * The cautions for sawing a moulding, in sentences. That the piece is clamped, the eyes are covered and the hands stay
 * out of the line of the blade is common practice, and stands in the instructions that come with saws.
 */
export const sawCautions = {
	/** What holds the moulding, what is worn, and where the hands are. */
	sawing: 'A saw bites: clamp the moulding, wear eye protection, keep hands clear of the blade.',
	/** What comes before all of this. */
	rules: "Follow the saw's own instructions and your local rules.",
} as const;
