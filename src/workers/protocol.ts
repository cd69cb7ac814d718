import type { Harmony } from '../core/harmonise/harmonise.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/show/settings.ts';

/** What the harmonising worker is asked. */
export interface HarmoniseJob {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly most: number;
}

/** What it answers. */
export type HarmoniseReply = { readonly harmony: Harmony } | { readonly problem: string };
