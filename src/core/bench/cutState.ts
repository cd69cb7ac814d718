import type { RowResult } from '../findings/rowResult.ts';
import type { Settings } from '../settings/settings.ts';
import type { Row } from '../show/row.ts';
import { cutSides, type Tick } from '../show/tick.ts';
import { cutsThatStand } from './ticks.ts';
import { cutMounts } from './windowCuts.ts';

/** How far the windows of a row are cut: no cut of it stands, some do, all do. A row without windows is never cut. */
export type CutState = 'not cut' | 'partly cut' | 'cut';

/** @param ticks those of the row */
export function cutStateOf(row: Row, result: RowResult, settings: Settings, ticks: readonly Tick[]): CutState {
	if (ticks.length === 0) return 'not cut';
	const asked = cutMounts(result, settings).length * cutSides.length * result.copies;
	const { length } = cutsThatStand(row, result, settings, ticks).standing;
	return length === 0 ? 'not cut' : length < asked ? 'partly cut' : 'cut';
}
