import { formatLength } from '../length/formatLength.ts';
import { isSame, nearestLength } from '../length/length.ts';
import { seenBorders } from '../row/seenBorders.ts';
import type { RowResult } from '../findings/rowResult.ts';
import type { Settings } from '../settings/settings.ts';

/** The columns of how a row hangs: nothing can be typed in them. */
export const framingColumns = [
	'framed width',
	'framed height',
	'play',
	'seen border',
	'stack',
	'weight',
	'hinges',
] as const;

/** The columns of where a row hangs in which nothing can be typed. */
export const placeColumns = ['hook height'] as const;

/** A column of how or where a row hangs. */
export type FramingColumn = (typeof framingColumns)[number] | (typeof placeColumns)[number];

/** Whether a column is one of how or where a row hangs. */
export const isFramingColumn = (column: string): column is FramingColumn =>
	[...framingColumns, ...placeColumns].some((each) => each === column);

/** What a column of how a row hangs sorts by; undefined where it is not known. */
export function framingValue(column: FramingColumn, worked: RowResult): number | undefined {
	const { framed, frame, hinges } = worked;
	switch (column) {
		case 'framed width':
			return framed.size?.width;
		case 'framed height':
			return framed.size?.height;
		case 'play':
			return frame.seat && Math.min(frame.seat.play.width, frame.seat.play.height);
		case 'seen border':
			return seenBorders(worked)?.side;
		case 'stack':
			return frame.inside && framed.depth;
		case 'weight':
			return framed.weightKg;
		case 'hinges':
			return hinges?.count;
		case 'hook height':
			return worked.hung?.hooks?.hooks[0]?.height;
	}
}

/** A weight in words: "2.6 kg", "about 2.6 kg" where a usual thickness stands for one that is not known. */
export const weightWords = (kg: number, isAbout: boolean): string => `${isAbout ? 'about ' : ''}${kg.toFixed(1)} kg`;

/** What a column of how a row hangs shows; blank where it is not known. */
export function framingText(column: FramingColumn, worked: RowResult, settings: Settings): string {
	const n = (value: number) => formatLength(nearestLength(value), settings);
	const value = framingValue(column, worked);
	if (value === undefined) return '';
	const { framed, frame } = worked;
	switch (column) {
		case 'play': {
			const { width, height } = frame.seat!.play;
			return isSame(width, height) ? n(width) : `${n(width)} × ${n(height)}`;
		}
		case 'seen border':
			return Object.values(seenBorders(worked)!).map(n).join(', ');
		case 'weight':
			return weightWords(value, framed.isAbout);
		case 'hinges':
			return `${value}`;
		default:
			return n(value);
	}
}
