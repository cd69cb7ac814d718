import type { BoardPlan } from '../core/sheets/boardPlan.ts';
import type { PackingJob } from '../core/sheets/packingJob.ts';
import type { SetUpOrder } from '../core/bench/fewestSettings.ts';
import type { BoardSetUp } from '../core/bench/setUps.ts';
import type { Harmony } from '../core/harmonise/harmonise.ts';
import type { ColumnMatching } from '../core/show/columnMatching.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/show/settings.ts';
import type { RowsOfFile } from '../files/csv.ts';

/** What a worker answers that is asked one thing. */
export type Reply<Answer> = { readonly answer: Answer } | { readonly problem: string };

/** What the harmonising worker is asked. */
export interface HarmoniseJob {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly most: number;
}

/** What it answers. */
export type HarmoniseReply = Reply<Harmony>;

/** What the packing worker is asked. */
export interface PackingRequest {
	readonly jobs: readonly PackingJob[];
	/** The most time that all of them may take together. */
	readonly seconds: number;
}

/** What it answers: better plans as they come, each with the place of its job, then the last ones. */
export type PackingReply =
	| { readonly place: number; readonly plan: BoardPlan }
	| { readonly plans: readonly BoardPlan[] }
	| { readonly problem: string };

/** What the worker that orders set-ups is asked. */
export interface OrderJob {
	/** All different. */
	readonly setUps: readonly BoardSetUp[];
}

/** What it answers. */
export type OrderReply = Reply<SetUpOrder>;

/** What the reading worker is asked. */
export interface ReadJob {
	readonly file: Uint8Array<ArrayBuffer> | string;
	readonly settings: Pick<Settings, 'unit' | 'sizes'>;
	readonly matching: ColumnMatching | undefined;
}

/** What of the rows is told at once; large lists come in parts, so that the page never waits for all of them. */
export type RowsPart = Pick<RowsOfFile, 'rows' | 'lines' | 'results'>;

/** What it answers: how far it is, then the rows in parts, then what there is to say of all of them. */
export type ReadReply =
	| { readonly done: number; readonly of: number }
	| { readonly part: RowsPart }
	| { readonly end: Omit<RowsOfFile, keyof RowsPart> }
	| { readonly problem: string };
