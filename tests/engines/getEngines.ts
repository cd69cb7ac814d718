import { getEngines } from './openTab.ts';

/** Before any play: gets the browsers that are not there, once. */
export function setup(): void {
	getEngines();
}
