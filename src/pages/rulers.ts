import { inches, isSame, type Length, mm } from '../core/length/length.ts';
import type { Unit } from '../core/length/reading.ts';

/** The rulers to choose from, as they are typed into the settings. */
export const rulers = [
	{ value: '1 mm', label: '1 mm', length: mm(1) },
	{ value: '0.5 mm', label: '0.5 mm', length: mm(0.5) },
	{ value: '1/8 in', label: '1/8 in', length: inches(1 / 8) },
	{ value: '1/16 in', label: '1/16 in', length: inches(1 / 16) },
	{ value: '1/32 in', label: '1/32 in', length: inches(1 / 32) },
] as const;

/** The choice that a ruler is; empty where it is another one. */
export const rulerChoice = (ruler: Length): string => rulers.find(({ length }) => isSame(length, ruler))?.value ?? '';

/** Whether a ruler is of inches: whole 64ths of one. */
export const isInchRuler = (ruler: Length): boolean => ruler % inches(1 / 64) === 0;

/** The ruler that goes with a unit: 1 mm or 1/16 in. */
export const rulerFor = (unit: Unit): (typeof rulers)[number] =>
	rulers.find(({ value }) => value === (unit === 'in' ? '1/16 in' : '1 mm'))!;
