import type { Unit } from '../core/length/reading.ts';

/** A unit in a sentence. */
export const unitWords: Readonly<Record<Unit, string>> = { mm: 'mm', cm: 'cm', in: 'inches' };

/** The units to choose from. */
export const unitChoices: readonly { readonly value: Unit; readonly label: string }[] = (
	['mm', 'cm', 'in'] as const
).map((value) => ({ value, label: unitWords[value] }));
