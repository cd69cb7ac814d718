import fc from 'fast-check';
import { isSoak } from '../soak.ts';

/**
 * A fixed seed, so that a red run is red again; fast-check prints it with the path of what it found, and what it finds
 * becomes a named test of its own. `npm run soak` takes another seed each time, and many more runs where a property
 * does not name its own.
 */
const seed = isSoak ? Date.now() % 2 ** 31 : 20_261_125;

fc.configureGlobal({ seed, numRuns: isSoak ? 20_000 : 50 });
