import { readSettings, type SettingKey } from '../settings/readSettings.ts';
import type { Settings, TypedSettings } from '../settings/settings.ts';
import { everyPart, heldOf } from '../show/everyPart.ts';
import type { Show } from '../show/show.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { listed } from '../values/listed.ts';
import { type NamedSetting, type SettingsOfRows, settingsOfRows } from './settingsOfRows.ts';

/**
 * The settings of which it is only said that they differ; `settingsOfRows` says the others with their values, and views are
 * a part of the show. All the rest are here, or this does not compile.
 */
const others: Readonly<
	Record<Exclude<SettingKey, NamedSetting | 'views'>, readonly [read: keyof Settings, label: string]>
> = {
	sizes: ['sizes', 'sizes by name'],
	leastBorder: ['leastBorder', 'smallest border'],
	unevenTolerance: ['unevenTolerancePercent', 'uneven borders'],
	cuttingTolerance: ['cuttingTolerance', 'cutting tolerance'],
	hingeMargin: ['hingeMargin', 'hinge margin'],
	innerBlankSmaller: ['innerBlankSmaller', 'inner blank'],
	limits: ['limits', 'rules of the show'],
	labels: ['labels', 'labels'],
	labelContents: ['labelContents', 'what labels say'],
	labelSheets: ['labelSheets', 'label sheets'],
	boards: ['boards', 'boards'],
	offcuts: ['offcuts', 'offcuts'],
	dropOuts: ['hasDropOuts', 'drop-outs as stock'],
	spares: ['sparesPercent', 'spares'],
	undermount: ['undermount', 'undermount'],
	glazing: ['glazing', 'glazing'],
	backing: ['backing', 'backing'],
	backingSmaller: ['backingSmaller', 'size of the backing'],
	supplies: ['supplies', 'supplies'],
	currency: ['currency', 'currency'],
	frames: ['frames', 'frames'],
	frame: ['frame', 'frame of the show'],
	frameClearance: ['frameClearance', 'clearance of frames'],
	saw: ['saw', 'saw cut'],
	papers: ['papers', 'papers'],
	pixelsAnInch: ['pixelsAnInch', 'fewest pixels'],
	proofs: ['proofs', 'proofs'],
	pointsRoom: ['pointsRoom', 'room for points'],
	leastSpacer: ['leastSpacer', 'smallest spacer'],
	bench: ['bench', 'bench'],
	walls: ['walls', 'walls'],
	hanging: ['hanging', 'hanging'],
	stackGap: ['stackGap', 'gap between prints under each other'],
	commission: ['commission', 'commission'],
	vat: ['vat', 'VAT'],
	priceStep: ['priceStep', 'rounding of prices'],
	costInPrice: ['isCostInPrice', 'cost in the price'],
	catalogue: ['catalogue', 'catalogue'],
	packing: ['packing', 'packing'],
};

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
	const differing = Object.entries(others).filter(([, [read]]) => !isSameValue(ours[read], theirs[read]));
	if (differing.length === 0) return ofRows;
	const names = listed(differing.map(([, [, label]]) => label));
	return {
		sentence: `${ofRows ? `${ofRows.sentence} ` : ''}These settings differ in the file: ${names}.`,
		change: { ...ofRows?.change, ...Object.fromEntries(differing.map(([key]) => [key, there[key]])) },
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
			: [`Work done differs in the file: ${listed(done)}. Yours stays. To have the file’s, open it as a new show.`]),
	];
}
