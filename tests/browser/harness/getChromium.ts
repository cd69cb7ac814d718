import { findChromium } from './findChromium.ts';

/** Before any file of browser tests: gets a Chromium where there is none, once, for two files would get in each other's way. */
export function setup(): void {
	findChromium();
}
