import type { RowResult } from '../findings/rowResult.ts';
import { titles } from '../findings/words/titles.ts';
import { toMm } from '../length/length.ts';
import { pricesOf } from '../record/pricesOf.ts';
import { priceText } from '../record/priceWords.ts';
import type { RecordSource } from '../record/recordSource.ts';
import { hangOrder } from '../row/hangOrder.ts';
import type { LabelSheet } from '../settings/labelSheet.ts';
import { nameOfPrint } from '../show/nameOfPrint.ts';
import type { Show } from '../show/show.ts';
import { listed } from '../values/listed.ts';
import { type FittedLabel, fitLabel, type MeasureText } from './fitLabel.ts';
import { isInGroup, type LabelGroup } from './labelGroups.ts';
import { labelLines } from './labelLines.ts';
import { onLabelSheets } from './labelPlaces.ts';
import { type LabelKind, onLabel } from './onLabel.ts';

/** A label of a copy of a print. */
export interface PrintLabel extends FittedLabel {
	/** The place of its row, from 0. */
	readonly place: number;
	/** Which of the row's copies, from 1. */
	readonly copy: number;
}

/** The labels of a show on their sheets. */
export interface LabelPages {
	/** A sheet each; a label that is left free is undefined. */
	readonly pages: readonly (readonly (PrintLabel | undefined)[])[];
	readonly count: number;
	/** What was shortened or found no room, and names that stand in other cells, in sentences. */
	readonly says: readonly string[];
}

/** Which labels are made, and where the first comes. */
export interface LabelRun extends Omit<RecordSource, 'rows'> {
	readonly show: Pick<Show, 'rows' | 'made'>;
	readonly kind: LabelKind;
	readonly sheet: LabelSheet;
	/** The first free label of the first sheet, from 1. */
	readonly start: number;
	/** Whether only copies get one that are not ticked off as labelled. */
	readonly isOnlyNew: boolean;
	/** Of which maker, on which wall; left out: of all. */
	readonly group?: LabelGroup;
}

/** Why a print can't be cut yet: the title of what is wrong, in brackets. */
function whyStopped({ findings }: RowResult): string {
	const stop = findings.find(({ level }) => level === 'stop');
	return stop ? ` (${titles[stop.code]})` : '';
}

/** How many prints are named that have no label. */
const mostNamed = 6;

function leftOutWords(names: readonly string[]): readonly string[] {
	if (names.length === 0) return [];
	const more = names.length - mostNamed;
	const named = [...names.slice(0, mostNamed), ...(more > 0 ? [`${more} more`] : [])];
	return [`Can’t be cut yet, so no label with a size: ${listed(named)}.`];
}

/**
 * The labels of all prints, one for each copy, in the order in which they hang. A print that can't be cut yet has none that
 * says its size.
 */
export function labelPages(run: LabelRun, measure: MeasureText): LabelPages {
	const { show, results, settings, kind, sheet, start, isOnlyNew, group = {} } = run;
	const words = onLabel(kind, settings);
	const size = [toMm(sheet.width), toMm(sheet.height)] as const;
	const made = new Set(
		(show.made ?? []).flatMap(({ row, copy, step }) => (step === 'labelled' ? [`${copy} ${row}`] : [])),
	);
	const prices = pricesOf({ ...run, rows: show.rows });
	const says: string[] = [];
	// Its size may be wrong, and a label is not looked at again once it is on a frame.
	const stopped: string[] = [];
	const labels = hangOrder(show.rows, results).flatMap((place): readonly PrintLabel[] => {
		const [row, result] = [show.rows[place]!, results[place]!];
		if (!isInGroup(group, row, result, settings)) return [];
		const copies = Array.from({ length: result.copies }, (_, copy) => copy + 1).filter(
			(copy) => !isOnlyNew || !made.has(`${copy} ${row.id}`),
		);
		if (copies.length === 0) return [];
		if (result.isStopped && words.has('size')) {
			stopped.push(`${nameOfPrint(row, place)}${whyStopped(result)}`);
			return [];
		}
		const lines = labelLines(row, result, words, settings, priceText(prices[place]!));
		const fitted = fitLabel(lines, ...size, measure);
		const name = nameOfPrint(row, place);
		if (fitted.shortened.length > 0) says.push(`${name}: ${listed(fitted.shortened)} shortened to fit its label.`);
		if (fitted.leftOut.length > 0) says.push(`${name}: no room on its label for ${listed(fitted.leftOut)}.`);
		const maker = (row.typed.maker ?? '').trim().toLowerCase();
		const shown = lines
			.map(({ text }) => text)
			.join(' ')
			.toLowerCase();
		if (kind === 'back' && settings.labels.name === 'forbidden' && maker !== '' && shown.includes(maker))
			says.push(`${name}: the maker’s name is in another cell that is printed, and the rules of the show forbid it.`);
		return copies.map((copy) => ({ ...fitted, place, copy }));
	});
	return {
		pages: onLabelSheets(labels, sheet, start),
		count: labels.length,
		says: [...leftOutWords(stopped), ...says],
	};
}
