/** So many boxes stand beside each other on paper; of more things it is written down how many are done. */
export const mostBoxes = 10;

/** How wide the boxes of a line are, in mm, as `TickBoxes.svelte` draws them. */
export const boxesMm = (count: number): number => (count <= mostBoxes ? count * 4.5 - 1 : 8);
