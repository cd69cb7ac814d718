import { type KnifeStep, knifeSteps } from '../core/sheets/knifeSteps.ts';
import { isWholeCut } from '../core/show/cutSheet.ts';
import type { FrameMaterial } from '../core/settings/frame.ts';
import type { BoardInView } from './boardsInView.ts';

/** A knife step as the screens show it. */
export interface NumberedKnifeStep extends KnifeStep {
	/** From 1. */
	readonly number: number;
	/** Names it for as long as its measure is among those that are set. */
	readonly key: string;
	/** What is cut in it; undefined: board. */
	readonly material: FrameMaterial | undefined;
	/** Whether its sheets are drop-outs: there once the windows that they fall out of are cut. */
	readonly isLater: boolean;
}

/** The knife's work on all boards. */
export interface KnifeWork {
	readonly steps: readonly NumberedKnifeStep[];
	/** Names of the sheets, by their ids: “Chalk, sheet 3”. */
	readonly names: ReadonlyMap<string, string>;
	readonly made: number;
	readonly all: number;
}

/** The words of the way to the knife. */
export const knifeLinkWords = (isBegun: boolean): string =>
	isBegun ? 'Carry on cutting sheets' : 'Start cutting sheets';

/** The knife steps of all boards together; sheets that are spoilt, or were cut whole from an earlier plan, are left out. */
export function knifeWork(boards: readonly BoardInView[]): KnifeWork {
	const names = new Map(
		boards.flatMap(({ name, sheets }) =>
			sheets.map(({ sheet, number }) => {
				const word = sheet.stock.kind === 'sheet' ? 'sheet' : sheet.stock.kind;
				return [sheet.id, `${name === '' ? 'Board' : name}, ${word} ${number}`] as const;
			}),
		),
	);
	const sheets = boards.flatMap(({ planned, sheets }) => {
		const ofPlan = new Set(planned?.sheets.map(({ id }) => id));
		return sheets
			.map(({ sheet }) => sheet)
			.filter((sheet) => !sheet.isSpoilt && (ofPlan.has(sheet.id) || !isWholeCut(sheet)));
	});
	const isLater = ({ stock }: (typeof sheets)[number]) => stock.kind === 'drop-out';
	// Glass is not cut with the knife of the boards: what is of another material has steps of its own.
	const ofOne = (material: FrameMaterial | undefined, isAfter: boolean) =>
		knifeSteps(sheets.filter((sheet) => sheet.stock.material === material && isLater(sheet) === isAfter)).map(
			(step) => ({
				...step,
				material,
				isLater: isAfter,
			}),
		);
	const steps = [
		...ofOne(undefined, false),
		...ofOne(undefined, true),
		...ofOne('backing', false),
		...ofOne('glazing', false),
	];
	const times = new Map<string, number>();
	return {
		steps: steps.map((step, place) => {
			const setting = `${step.isLater ? 'later ' : ''}${step.material ? `${step.material} ` : ''}${step.measure}`;
			const time = (times.get(setting) ?? 0) + 1;
			times.set(setting, time);
			return { ...step, number: place + 1, key: `${setting} #${time}` };
		}),
		names,
		made: sheets.reduce((sum, { made }) => sum + made.length, 0),
		all: sheets.reduce((sum, { cuts }) => sum + cuts.length, 0),
	};
}

/** The key of the page before the first step, which says what to do before the first cut. */
export const beforeTheFirst = 'before';

/**
 * The number of the active step: the one that is named, else the first in which something is left to cut; 0 before the
 * first cut, as long as nobody has gone on from there.
 */
export function activeKnifeStep({ steps, made }: KnifeWork, key: string | undefined): number {
	if (key === beforeTheFirst) return 0;
	const named = steps.find((step) => step.key === key);
	if (named) return named.number;
	if (made === 0 && key === undefined) return 0;
	const isDone = ({ sheets }: NumberedKnifeStep) =>
		sheets.every(({ sheet, places }) => places.every((place) => sheet.made.includes(place)));
	return steps.find((step) => !isDone(step))?.number ?? steps.length;
}
