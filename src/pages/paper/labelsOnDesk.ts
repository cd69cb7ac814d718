import { choosePrinting } from '../../core/commands/choosePrinting.ts';
import { startOn } from '../../core/labels/labelPlaces.ts';
import { groupStillThere, type LabelGroup, labelGroups, type LabelGroups } from '../../core/labels/labelGroups.ts';
import type { LabelKind } from '../../core/labels/onLabel.ts';
import { sheetsOf } from '../../core/labels/usualSheets.ts';
import type { LabelSheet } from '../../core/settings/labelSheet.ts';
import { type LabelPrinting, readPrinting } from '../../core/show/printing.ts';
import { named } from '../../core/values/named.ts';
import type { PaperSource } from './paperDocument.ts';

/** How labels of a kind come out: on which sheet, from where, and which. */
export interface LabelChoices {
	readonly sheets: readonly LabelSheet[];
	readonly sheet: LabelSheet;
	readonly start: number;
	readonly isOnlyNew: boolean;
	readonly group: LabelGroup;
	/** What can be chosen. */
	readonly groups: LabelGroups;
}

/** What is chosen for the labels of a kind; a sheet that is there no more is the first that there is. */
export function labelChoicesOf({ session, paper }: PaperSource, kind: LabelKind): LabelChoices {
	const { show, results, settings } = session;
	const { sheet: name, start = 1, isOnlyNew = false, ...chosen } = readPrinting(show.printing).labels[kind] ?? {};
	const sheets = sheetsOf(settings, paper);
	const sheet = named(name, sheets) ?? sheets[0]!;
	const groups = labelGroups(show.rows, results, settings);
	const group = groupStillThere(chosen, groups);
	return { sheets, sheet, start: startOn(sheet, start), isOnlyNew, group, groups };
}

/** Chooses something of how labels of a kind come out. */
export function chooseLabels({ session }: PaperSource, kind: LabelKind, choice: LabelPrinting): void {
	session.do((show) => {
		const { labels } = readPrinting(show.printing);
		return choosePrinting(show, { labels: { ...labels, [kind]: { ...labels[kind], ...choice } } }, 'Choose labels');
	});
}
