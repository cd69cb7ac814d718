import type { Tick } from '../bench/ticks.ts';
import type { CutSheet } from '../sheets/cutSheet.ts';
import type { Row } from './row.ts';
import type { TypedSettings } from './settings.ts';

/** A show: its rows, in order, its settings as typed, what is ticked off at the bench, and the sheets that are cut. */
export interface Show {
	readonly id: string;
	readonly name: string;
	readonly settings: TypedSettings;
	readonly rows: readonly Row[];
	/** What is ticked off at the bench; absent where nothing is. */
	readonly ticks?: readonly Tick[];
	/** The sheets of board that the knife has begun; absent where there is none. */
	readonly cutSheets?: readonly CutSheet[];
}
