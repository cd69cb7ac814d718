import { readSettings } from '../settings/readSettings.ts';
import type { Settings, TypedSettings } from '../settings/settings.ts';
import { everyPart, heldOf } from '../show/everyPart.ts';
import type { Show } from '../show/show.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { listed } from '../values/listed.ts';
import { type SettingsOfRows, settingsOfRows } from './settingsOfRows.ts';

/** The settings of which it is only said that they differ; `settingsOfRows` says the others with their values. */
const others = [
	{ key: 'sizes', read: 'sizes', label: 'sizes by name' },
	{ key: 'leastBorder', read: 'leastBorder', label: 'smallest border' },
	{ key: 'unevenTolerance', read: 'unevenTolerancePercent', label: 'uneven borders' },
	{ key: 'cuttingTolerance', read: 'cuttingTolerance', label: 'cutting tolerance' },
	{ key: 'hingeMargin', read: 'hingeMargin', label: 'hinge margin' },
	{ key: 'innerBlankSmaller', read: 'innerBlankSmaller', label: 'inner blank' },
	{ key: 'limits', read: 'limits', label: 'rules of the show' },
	{ key: 'labels', read: 'labels', label: 'labels' },
	{ key: 'labelContents', read: 'labelContents', label: 'what stands on labels' },
	{ key: 'labelSheets', read: 'labelSheets', label: 'sheets of labels' },
	{ key: 'boards', read: 'boards', label: 'boards' },
	{ key: 'offcuts', read: 'offcuts', label: 'offcuts' },
	{ key: 'dropOuts', read: 'hasDropOuts', label: 'drop-outs as stock' },
	{ key: 'spares', read: 'sparesPercent', label: 'spares' },
	{ key: 'undermount', read: 'undermount', label: 'undermount' },
	{ key: 'glazing', read: 'glazing', label: 'glazing' },
	{ key: 'backing', read: 'backing', label: 'backing' },
	{ key: 'backingSmaller', read: 'backingSmaller', label: 'size of the backing' },
	{ key: 'supplies', read: 'supplies', label: 'supplies' },
	{ key: 'currency', read: 'currency', label: 'currency' },
	{ key: 'frames', read: 'frames', label: 'frames' },
	{ key: 'frame', read: 'frame', label: 'frame of the show' },
	{ key: 'frameClearance', read: 'frameClearance', label: 'clearance of frames' },
	{ key: 'saw', read: 'saw', label: 'saw cut' },
	{ key: 'papers', read: 'papers', label: 'papers' },
	{ key: 'proofs', read: 'proofs', label: 'proofs' },
	{ key: 'pointsRoom', read: 'pointsRoom', label: 'room for points' },
	{ key: 'leastSpacer', read: 'leastSpacer', label: 'smallest spacer' },
	{ key: 'bench', read: 'bench', label: 'bench' },
] as const satisfies readonly { key: string; read: keyof Settings; label: string }[];

/**
 * Compares the settings of a show in a file with those of the show that is open, stock and rules among them.
 * @param stated those of the file on which its sizes hang, in words that can be typed again: `unit=mm; border=65 mm`
 * @param here the settings as typed
 * @param there those of the file as typed
 * @returns undefined if they are the same
 */
export function settingsOfShow(stated: string, here: TypedSettings, there: TypedSettings): SettingsOfRows | undefined {
	const ofRows = settingsOfRows([stated], here);
	const [ours, theirs] = [readSettings(here).settings, readSettings(there).settings];
	const differing = others.filter(({ read }) => !isSameValue(ours[read], theirs[read]));
	if (differing.length === 0) return ofRows;
	const names = listed(differing.map(({ label }) => label));
	return {
		sentence: `${ofRows ? `${ofRows.sentence} ` : ''}These settings differ in the file: ${names}.`,
		change: { ...ofRows?.change, ...Object.fromEntries(differing.map(({ key }) => [key, there[key]])) },
	};
}

/** What of a show in a file is left where only its prints are compared, in sentences: nothing is lost unseen. */
export function leftOfShow(here: Omit<Show, 'id'>, there: Omit<Show, 'id'>): readonly string[] {
	const left = everyPart.flatMap(([name, part]) => {
		const diff = part.compare(heldOf(here, name, part), heldOf(there, name, part));
		return diff === undefined ? [] : [part.left(diff)];
	});
	const done = left.flatMap((each) => each.done ?? []);
	return [
		...left.flatMap(({ sentence }) => sentence ?? []),
		...(done.length === 0
			? []
			: [
					`Work done differs in the file: ${listed(done)}. Yours stays. To have the file’s, open it as a show of its own.`,
				]),
	];
}
