import type { Tick } from '../bench/ticks.ts';
import type { Row } from './row.ts';
import type { TypedSettings } from './settings.ts';

/** A show: its rows, in order, and its settings as typed, and what is ticked off at the bench. */
export interface Show {
	readonly id: string;
	readonly name: string;
	readonly settings: TypedSettings;
	readonly rows: readonly Row[];
	/** What is ticked off at the bench; absent where nothing is. */
	readonly ticks?: readonly Tick[];
}
