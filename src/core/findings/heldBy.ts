import { inches, type Length, mm } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';

/** How far paper must reach under the mount to be held: 5 mm, or 1/4 in in an inch show. Common practice. */
export const heldBy = (unit: Unit): Length => (unit === 'in' ? inches(1 / 4) : mm(5));
