import { type Length, minus, plus } from '../length/length.ts';
import type { Settings } from '../settings/settings.ts';

/** Whether inner mounts are taped behind their outer ones before their windows are cut. */
export const isInnerTaped = ({ bench }: Settings): boolean => bench.inner !== 'own blank';

/**
 * What an inner mount that shows `innerMount` beside one of the outer is cut at: from the edges of the outer one that it is
 * taped behind, or from those of its own, smaller blank.
 */
export const innerBorder = (border: Length, innerMount: Length, settings: Settings): Length =>
	isInnerTaped(settings) ? plus(border, innerMount) : minus(plus(border, innerMount), settings.innerBlankSmaller);
