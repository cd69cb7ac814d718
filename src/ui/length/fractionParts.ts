/** A piece of a text with lengths in it. */
export interface TextPart {
	readonly text: string;
	/** Whether it is a fraction, to be drawn as one. */
	readonly isFraction: boolean;
}

/** What cuts a text with lengths in it so that every second piece is a fraction. */
export const fractions = /(\d+\/\d+)/;

/** A text with lengths in it, cut into fractions and what stands between them: `top 3 5/32` has two parts. */
export const fractionParts = (text: string): readonly TextPart[] =>
	text
		.split(fractions)
		.map((part, place) => ({ text: part, isFraction: place % 2 === 1 }))
		.filter((part) => part.text !== '');
