import type { Reading } from '../length/reading.ts';
import { unframed } from '../settings/frame.ts';
import { isRecord } from '../values/isRecord.ts';
import { shown, shownText } from '../values/shownText.ts';
import { type PartName, parts } from './parts.ts';

/** A stored form of a show, of any version, not yet looked into. */
export type Stored = Readonly<Record<string, unknown>>;

/** Makes a stored form one version newer. */
export type Upgrade = (stored: Stored) => Stored;

/** A part that no show had before: there is nothing of it. */
const added =
	(name: PartName): Upgrade =>
	(stored) => ({ ...stored, [name]: parts[name].nothing });

/** Settings of the third form: the size of a frame was its rebate, and prices were typed in the smallest coin. */
export const fromThirdForm = <Settings>(settings: Settings): Settings => withCoins(withRebates(settings));

/** Settings whose prices were typed in the smallest coin: those are numbers now, for a text is read as it would be said. */
function withCoins<Settings>(settings: Settings): Settings {
	if (!isRecord(settings)) return settings;
	const inCoins = (entry: unknown) =>
		isRecord(entry) && typeof entry['price'] === 'string' && /^\s*\d{1,15}\s*$/.test(entry['price'])
			? { ...entry, price: Number(entry['price']) }
			: entry;
	const lists = ['boards', 'frames'].filter((key) => Array.isArray(settings[key]));
	return { ...settings, ...Object.fromEntries(lists.map((key) => [key, (settings[key] as unknown[]).map(inCoins)])) };
}

/** Settings whose frames were measured by their rebate: their width and height are the rebate's. */
function withRebates<Settings>(settings: Settings): Settings {
	if (!isRecord(settings) || !Array.isArray(settings['frames'])) return settings;
	const frames = settings['frames'].map((frame: unknown) => (isRecord(frame) ? byRebate(frame) : frame));
	return { ...settings, frames };
}

const byRebate = (frame: Stored): Stored =>
	Object.fromEntries(
		Object.entries(frame).map(([key, value]) => [{ width: 'rebateWidth', height: 'rebateHeight' }[key] ?? key, value]),
	);

/** A frame's width and height were its rebate, and prices were typed in the smallest coin. */
const settingsNamed: Upgrade = ({ settings, ...stored }) => ({
	...stored,
	...(settings !== undefined && { settings: fromThirdForm(settings) }),
});

/** How a show is looked at stood among its settings; who writes settings by hand may still put it there. */
export function viewsApart(stored: Stored): Stored {
	const { settings, views } = stored;
	if (!isRecord(settings) || !Object.hasOwn(settings, 'views')) return stored;
	const { views: among, ...others } = settings;
	return { ...stored, settings: others, views: views ?? among };
}

/** The window of an inner mount was cut on its own blank; where one is ticked off, what is cut stays right. */
const withInnerCut: Upgrade = (stored) =>
	hasInnerCut(stored['ticks']) ? { ...stored, settings: withOwnBlanks(stored['settings']) } : stored;

const hasInnerCut = (ticks: unknown): boolean =>
	Array.isArray(ticks) &&
	ticks.some((tick: unknown) => isRecord(tick) && tick['part'] === 'inner mount' && tick['side'] !== 'spoilt');

/** Settings under which inner mounts are cut on their own blanks. */
export function withOwnBlanks<Settings>(settings: Settings): Settings {
	if (!isRecord(settings)) return settings;
	const { bench } = settings;
	const typed = isRecord(bench) ? bench : typeof bench === 'string' ? { kind: bench } : {};
	return { ...settings, bench: { ...typed, inner: 'own blank' } };
}

/** The word of a mount cell for what its frame takes; a size of the show's could have that name until then. */
const frameWord = 'frame';
const isFrameWord = (value: unknown): boolean =>
	typeof value === 'string' && value.replace(/\s+/g, '').toLowerCase() === frameWord;

/** The name that a size called `frame` has from then on. */
const frameSizeName = 'frame size';

/** Settings of the sixth form: a size of the show's could be called `frame`. */
export function withoutFrameSize<Settings>(settings: Settings): Settings {
	if (!isRecord(settings) || !Array.isArray(settings['sizes'])) return settings;
	const sizes: readonly unknown[] = settings['sizes'];
	if (!sizes.some((size) => isRecord(size) && isFrameWord(size['name']))) return settings;
	const named = sizes.map((size) =>
		isRecord(size) && isFrameWord(size['name']) ? { ...size, name: frameSizeName } : size,
	);
	return { ...settings, sizes: named, ...(isFrameWord(settings['mountSize']) && { mountSize: frameSizeName }) };
}

/** Whether settings of the sixth form have a size called `frame`. */
export const hasFrameSize = (settings: unknown): boolean => withoutFrameSize(settings) !== settings;

/**
 * A row of the sixth form: a blank mount cell was the show's mount beside any frame; now it is what the frame takes, and
 * `show` says what it was. Paper and mount cells that name a size called `frame` have its new name.
 * @returns the same object if nothing changes
 */
export function rowBeforeFrames<Row>(row: Row, hasSize: boolean): Row {
	const stored: unknown = row;
	const typed = isRecord(stored) ? stored['typed'] : undefined;
	if (!isRecord(typed)) return row;
	const isBlank = (column: string) => typeof typed[column] !== 'string' || typed[column].trim() === '';
	const isFramed = !isBlank('frame') && (typed['frame'] as string).trim().toLowerCase() !== unframed;
	const renamed = ['mount', 'paper'].filter((column) => hasSize && isFrameWord(typed[column]));
	const changed: Record<string, string> = {
		...(isFramed && isBlank('mount') && { mount: 'show' }),
		...Object.fromEntries(renamed.map((column): [string, string] => [column, frameSizeName])),
	};
	return Object.keys(changed).length === 0 ? row : { ...row, typed: { ...typed, ...changed } };
}

/** Mounts were never made to their frames. */
const beforeFrames: Upgrade = ({ settings, rows, ...stored }) => ({
	...stored,
	...(settings !== undefined && { settings: withoutFrameSize(settings) }),
	...(rows !== undefined && {
		rows: Array.isArray(rows) ? rows.map((row: unknown) => rowBeforeFrames(row, hasFrameSize(settings))) : rows,
	}),
});

/** The version of the stored form that is written. */
export const storedVersion = 10;

/**
 * What makes each version into the next, by the older version's number; a change of the stored form raises
 * `storedVersion` and adds the way there.
 */
export const upgrades: Readonly<Record<number, Upgrade>> = {
	1: added('ticks'),
	2: added('cutSheets'),
	3: settingsNamed,
	4: viewsApart,
	5: withInnerCut,
	6: beforeFrames,
	7: added('hung'),
	8: added('made'),
	9: added('printing'),
};

/**
 * A stored form in the version that is written today.
 * @returns a problem where the version is newer, or none that there ever was
 */
export function upgrade(stored: Stored, newest = storedVersion, steps = upgrades): Reading<Stored> {
	const { version } = stored;
	if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
		return {
			problem: `its version is ${versionWords(version)}, which is no version of a show file`,
		};
	if (version > newest)
		return {
			problem: `it is a show file of version ${version}, newer than the ${newest} that this app opens. Update the app, then open it again`,
		};
	let current = stored;
	for (let from = version; from < newest; from++) {
		const step = steps[from];
		if (step === undefined) throw new RangeError(`no way from version ${from} to ${from + 1}`);
		current = { ...step(current), version: from + 1 };
	}
	return { value: current };
}

/** A version that is none, for a sentence. */
export function versionWords(version: unknown): string {
	if (version === undefined) return 'not given';
	return typeof version === 'string' ? JSON.stringify(shownText(version)) : shown(version);
}
