import { formatTypeable } from '../length/formatLength.ts';
import { inches, type Length, mm } from '../length/length.ts';
import type { Unit } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import { isAbsent } from './settingValue.ts';
import type { TypedSettings } from './settings.ts';

/** Common practice: the middle of a print at the height of the eyes. */
export const usualCentre = (unit: Unit): Length => (unit === 'in' ? inches(57) : mm(1450));

/** How far the rings are in from each side of a frame, where nobody says. */
export const usualInset = (unit: Unit): Length => (unit === 'in' ? inches(1.25) : mm(30));

/**
 * Settings in which what walls and hanging leave blank is typed: each has a default of its own in another unit, and
 * stays what it is when the show changes its unit.
 */
export function withUsualHanging(typed: TypedSettings, unit: Unit): TypedSettings {
	const { walls, hanging } = typed;
	const centre = formatTypeable(usualCentre(unit), unit);
	const inset = formatTypeable(usualInset(unit), unit);
	const own = isRecord(hanging) ? hanging : isAbsent(hanging) ? {} : { kind: hanging };
	return {
		...typed,
		...(Array.isArray(walls) && {
			walls: walls.map((wall: unknown) => (isRecord(wall) && isAbsent(wall['centre']) ? { ...wall, centre } : wall)),
		}),
		hanging: isAbsent(own['inset']) ? { ...own, inset } : own,
	};
}
