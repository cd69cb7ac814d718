import { judgingPart } from '../app/judging.ts';
import { LatePart, together } from '../app/latePart.svelte.ts';
import { idle } from './idle.ts';

/** What is done in the grid: asked for as the page starts, before there is a grid that a key can be pressed in. */
export const handsPart = new LatePart(() => import('../ui/grid/handsPart.ts'));

/** What stands beside the grid, and in its place where a show is empty: asked for once the grid is painted. */
export const besidePart = new LatePart(() =>
	together(handsPart, () => together(judgingPart, () => import('./besidePart.ts'))),
);

/** All other places, and the ways in and out: asked for once the page has nothing else to do, or earlier where wanted. */
export const othersPart = new LatePart(() => together(judgingPart, () => import('./othersPart.ts')));

/** The places of what is printed, with every document, and of what is sold: asked for after all others. */
export const paperPart = new LatePart(() => import('./paperPart.ts'));

/** How long the page may be busy before the other parts are loaded nonetheless, in milliseconds. */
const longestBusy = 2000;

/** Has all parts in memory before they are wanted. Call it once the first screen is painted. */
export async function loadParts(): Promise<void> {
	await judgingPart.load();
	await besidePart.load();
	await idle({ timeout: longestBusy });
	await othersPart.load();
	await paperPart.load();
}
