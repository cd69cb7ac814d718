/** The papers that a list may be printed on, in mm. */
export const papers = {
	A4: { widthMm: 210, heightMm: 297 },
	Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;

/** One of `papers`. */
export type Paper = keyof typeof papers;

/** Room that a page keeps free round what is on it, and for its head and foot, in mm. */
export const paperRoom = { margin: 15, head: 10, foot: 10 } as const;

/** What a page holds in mm, inside its margins and between head and foot. */
export const pageRoom = (paper: Paper): { readonly width: number; readonly height: number } => ({
	width: papers[paper].widthMm - 2 * paperRoom.margin,
	height: papers[paper].heightMm - 2 * paperRoom.margin - paperRoom.head - paperRoom.foot,
});

/** The same for a list, with 3 mm to spare: its last line must not touch the foot. */
export const listRoom = (paper: Paper): { readonly width: number; readonly height: number } => ({
	width: pageRoom(paper).width,
	height: pageRoom(paper).height - 3,
});
