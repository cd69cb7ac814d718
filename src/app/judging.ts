import { LatePart } from './latePart.svelte.ts';

/** What is found in the rows of a show, their cutting order, and what is asked where they are cut: the grid is painted before it. */
export const judgingPart = new LatePart(() => import('./judgingPart.ts'));

/** As it is loaded. */
export type Judging = NonNullable<(typeof judgingPart)['part']>;
