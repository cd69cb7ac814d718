import type { RowResult } from '../../core/findings/rowResult.ts';
import { isHingedToMount } from '../../core/reasons/framedWords.ts';
import { layHinges } from '../../core/row/layHinges.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { layOutFramed } from '../mount/layOutFramed.ts';

/** How many drawings stand on the card of a print: its mount, its frame, and its back where that is shown. */
export const cardFigures = (result: RowResult, settings: Settings): number =>
	1 + Number(layOutFramed(result) !== undefined) + Number(isBackShown(result, settings));

/** Where a print is hinged to the mount itself left is on the right: words alone are misread there. */
export const isBackShown = (result: RowResult, settings: Settings): boolean =>
	isHingedToMount(result, settings) && layHinges(result, settings) !== undefined;
