import type { Length } from '../length/length.ts';
import type { RowContext } from './found.ts';

/** A size in a sentence, with the unit once: "600 × 450 mm". */
export const sizeText = ({ figure, say }: RowContext, width: Length | number, height: Length | number): string =>
	`${figure(width)} × ${say(height)}`;
