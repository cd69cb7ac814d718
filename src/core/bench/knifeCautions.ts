/**
 * The cautions for cutting sheets with a knife, in sentences; screens, paper and README say it alike. Windows have
 * their own: windowCautions.ts.
 *
 * Held against published texts on knives and straight edges:
 * - National Society for Education in Art and Design, Health and safety: cutting tools: the hand that holds the card stays
 *   behind the blade and the direction of the cut; a straight edge that guards the hand; a blunt blade is pressed too hard.
 * - Illinois Institute of Technology, College of Architecture, third-year studio, Safety procedures: several passes, for the
 *   more force is used the less the knife is under control; the other hand out of the path of the cut; a blade that tilts
 *   climbs over the straight edge.
 *
 * Texts for small knives say to cut away from the body: no blade can be pushed further than an arm is long, and over a
 * sheet of 1200 mm whoever tries leans over the blade. What they are after is kept: no part of anybody in the path. That one
 * stands beside a long line and draws the blade past one's side is common practice, as is lifting a large sheet by two.
 */
export const knifeCautions = {
	/** What is drawn on the pieces: sheets of one board look alike, and are cut a measure at a time. */
	marking:
		'Pencil each sheet’s number on the back of all its pieces. On the back of each blank as it comes free pencil the print’s number, and an arrow pointing at its bottom edge, as in the drawing.',
	/** Where one stands and how the blade goes. */
	stance:
		'Stand beside the line, not at its end, and draw the blade past your side. No hand and no knee in front of it, and nobody else either.',
	/** What holds the straight edge. */
	straightEdge: 'A straight edge longer than the cut, its rubber side down, clamped or held from behind the blade.',
	/** How hard one presses. */
	strokes: 'Each stroke light, two or three of them, the blade upright against the straight edge, never a hard one.',
	/** How large sheets are moved. */
	lifting: 'Two people lift a large sheet, upright, with its edge away from your face.',
	/** What comes before all of this. */
	rules: 'Your local rules and your training come first.',
	/** What is said beside each cut. */
	atStep: 'A straight edge longer than the cut, your hand off the line, nobody in front of the blade.',
	/** All of it for the foot of a page. */
	inShort:
		'Stand beside the line and draw the blade past your side; no hand or knee in front of it; light strokes. Local rules and training first.',
} as const;
