import { LatePart } from './latePart.svelte.ts';

/** What is found in the rows of a show, and their cutting order: the grid is painted before it. */
export const judgingPart = new LatePart(() => import('./judgingPart.ts'));

/** As it is loaded. */
export type Judging = NonNullable<(typeof judgingPart)['part']>;
