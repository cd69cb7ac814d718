import type { Row } from './row.ts';
import type { TypedSettings } from './settings.ts';

/** A show: its rows, in order, and its settings as typed. */
export interface Show {
	readonly id: string;
	readonly name: string;
	readonly settings: TypedSettings;
	readonly rows: readonly Row[];
}
