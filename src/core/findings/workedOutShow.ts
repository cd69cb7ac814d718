import type { Settings } from '../settings/settings.ts';
import type { Show } from '../show/show.ts';
import type { RowResult } from './rowResult.ts';

/** A show, and what it works out. */
export interface WorkedOutShow {
	readonly show: Show;
	readonly settings: Settings;
	readonly results: readonly RowResult[];
}
