import type { BoardPlan } from '../core/sheets/boardPlan.ts';
import type { PackingJob } from '../core/sheets/packingJob.ts';
import type { SetUpOrder } from '../core/bench/fewestSettings.ts';
import type { Harmony } from '../core/harmonise/harmonise.ts';
import type { ColumnMatching } from '../core/imports/columnMatching.ts';
import type { FrameChoice } from '../core/frameChoice/giveFrames.ts';
import type { StickJob, StickPlan } from '../core/sticks/stickPlan.ts';
import type { Row } from '../core/show/row.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { Reading } from '../core/length/reading.ts';
import type { PackedPicture, PackedRecord } from '../files/packShow.ts';
import type { UnpackedShow } from '../files/unpackShow.ts';
import type { ReadPicture } from './readPicture.ts';
import type { RowsOfFile } from '../files/csv.ts';
import type { OpenedText } from '../files/openText.ts';

/** What a worker says that is asked one thing: news on the way, if it has any, then its answer or what went wrong. */
export type Reply<Answer, News = never> =
	| { readonly news: News }
	| { readonly answer: Answer }
	| { readonly problem: string };

/** The answer of a kind of reply. */
export type AnswerOf<Any> = Any extends { readonly answer: infer Answer } ? Answer : never;

/** The news of a kind of reply. */
export type NewsOf<Any> = Any extends { readonly news: infer News } ? News : never;

/** What the harmonising worker is asked. */
export interface HarmoniseJob {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	readonly most: number;
}

/** What it answers. */
export type HarmoniseReply = Reply<Harmony>;

/** What the worker that gives frames out is asked. */
export interface FramesJob {
	readonly rows: readonly Row[];
	readonly settings: Settings;
	/** The most time that it may take once every frame has been tried. */
	readonly seconds: number;
}

/** How many prints have been tried in every frame, of how many. */
export interface FramesNews {
	readonly done: number;
	readonly of: number;
}

/** What it answers. */
export type FramesReply = Reply<FrameChoice, FramesNews>;

/** What the worker that plans sticks is asked. */
export interface SticksRequest {
	readonly jobs: readonly StickJob[];
	/** The most time that all of them may take together. */
	readonly seconds: number;
}

/** What it answers: the plan of each job. */
export type SticksReply = Reply<readonly StickPlan[]>;

/** What the packing worker is asked. */
export interface PackingRequest {
	readonly jobs: readonly PackingJob[];
	/** The most time that all of them may take together. */
	readonly seconds: number;
}

/** A better plan on the way, with the place of its job. */
export interface PackingNews {
	readonly place: number;
	readonly plan: BoardPlan;
}

/** What it answers: better plans as they come, then the last ones. */
export type PackingReply = Reply<readonly BoardPlan[], PackingNews>;

/** What the worker that orders set-ups answers. */
export type OrderReply = Reply<SetUpOrder>;

/** What the reading worker is asked first: to open what came, which it holds as text from then on. */
export interface OpenJob {
	readonly open: Blob | string;
}

/** What it was found to be, or why it cannot be read. */
export type OpenReply = Reply<Reading<OpenedText>>;

/** What the reading worker is asked then, once or again: the rows of the text that it holds. */
export interface ReadJob {
	readonly settings: Pick<Settings, 'unit' | 'sizes'>;
	readonly matching: ColumnMatching | undefined;
}

/** What of the rows is sent at once; large lists come in parts, so that the page never waits for all of them. */
export type RowsPart = Pick<RowsOfFile, 'rows' | 'lines' | 'results'>;

/** How far it is, or a part of the rows. */
export type ReadNews = { readonly done: number; readonly of: number } | { readonly part: RowsPart };

/** What there is to say of all rows, or why none could be read. */
export type ReadEnd = Omit<RowsOfFile, keyof RowsPart> | { readonly problem: string };

/** What it answers then: how far it is, then the rows in parts, then the rest. */
export type ReadReply = Reply<ReadEnd, ReadNews>;

/** What the worker that reads pictures is asked, once a file. */
export interface PicturesJob {
	readonly file: Blob;
}

/** What it answers: the picture, or why the file is none. */
export type PicturesReply = Reply<Reading<ReadPicture>>;

/** What the worker that packs is asked: a show, then its pictures, then the end; or to unpack one, then for each of its pictures. */
export type ArchiveJob =
	| { readonly begin: { readonly text: string; readonly list: readonly PackedRecord[] } }
	| { readonly picture: PackedPicture }
	| { readonly end: true }
	| { readonly unpack: Blob }
	| { readonly place: number };

/** What it answers while it packs: parts of the file. */
export type PackReply = Reply<true, { readonly part: Uint8Array<ArrayBuffer> }>;

/** What it answers where it unpacks: how many pictures were looked at, then the text of the show's file, or why it is refused. */
export type UnpackReply = Reply<
	Reading<Pick<UnpackedShow, 'text' | 'count'>>,
	{ readonly done: number; readonly of: number }
>;

/** What it answers where it is asked for a picture of what it has unpacked. */
export type UnpackedPictureReply = Reply<Reading<PackedPicture>>;
