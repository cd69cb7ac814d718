import type { Unit } from './reading.ts';

/** Regions that measure in inches: the system "US" of Unicode CLDR's measurement data (from memory). */
const inchRegions: readonly string[] = ['US', 'LR', 'MM'];

/** The unit that people of a region most likely measure in; `region` is two letters, or undefined where none is known. */
export const unitOfRegion = (region: string | undefined): Unit =>
	region !== undefined && inchRegions.includes(region.toUpperCase()) ? 'in' : 'mm';
