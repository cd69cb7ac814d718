/** The papers that a list may be printed on, in mm. */
export const papers = {
	A4: { widthMm: 210, heightMm: 297 },
	Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;

/** One of `papers`. */
export type Paper = keyof typeof papers;

/** Room that a page keeps free round what is on it, and for its head and foot, in mm. */
export const paperRoom = { margin: 15, head: 16, foot: 10 } as const;
