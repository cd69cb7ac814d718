import type { BottomWeight } from '../length/bottomWeight.ts';
import { formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import { readSettings } from '../settings/readSettings.ts';
import type { Settings, TypedSettings } from '../settings/settings.ts';
import { isSameValue } from '../values/isSameValue.ts';

/** How the settings that rows of a file were worked out with differ from those of the show. */
export interface SettingsOfRows {
	/** What differs, in a sentence. */
	readonly sentence: string;
	/** The change that makes the show's settings those of the file; undefined where the rows do not agree on one. */
	readonly change?: Readonly<Record<string, unknown>>;
}

/** The settings that a file says of its rows, by the word it says them with. */
const named = [
	{ word: 'unit', key: 'unit', label: 'unit' },
	{ word: 'ruler', key: 'ruler', label: 'ruler' },
	{ word: 'mount', key: 'mountSize', label: 'mount size' },
	{ word: 'border', key: 'border', label: 'border' },
	{ word: 'weight', key: 'bottomWeight', label: 'bottom weight' },
	{ word: 'overlap', key: 'overlap', label: 'overlap' },
	{ word: 'reveal', key: 'reveal', label: 'reveal' },
] as const;

type NamedKey = (typeof named)[number]['key'];

/**
 * Compares the settings that rows came with, `unit=mm; border=65 mm; ...`, with those of the show.
 * @param texts what each row says; blank ones say nothing
 * @param typed the show's settings as typed
 * @returns undefined if they are the same, or none can be read
 */
export function settingsOfRows(texts: readonly string[], typed: TypedSettings): SettingsOfRows | undefined {
	const distinct = [...new Set(texts.map((text) => text.trim()).filter((text) => text !== ''))];
	const [first, ...others] = distinct;
	if (first === undefined) return undefined;
	if (others.length > 0)
		return { sentence: 'The rows of the file were worked out with settings that differ from row to row.' };
	const stated = statedSettings(first);
	if (Object.keys(stated).length === 0) return undefined;
	const here = readSettings(typed).settings;
	// A reveal is said only where there is one.
	const meant: TypedSettings = { reveal: 'none', ...stated };
	const { settings: there, problems } = readSettings({ ...typed, ...meant });
	if (problems.some(({ key }) => Object.hasOwn(meant, key))) return undefined;
	const differing = named.filter(({ key }) => Object.hasOwn(meant, key) && !isSameValue(there[key], here[key]));
	if (differing.length === 0) return undefined;
	const words = differing.map(({ key, label }) => `${label} ${inWords(key, there)} (here ${inWords(key, here)})`);
	return {
		sentence: `The rows of the file were worked out with other settings: ${words.join(', ')}.`,
		change: Object.fromEntries(differing.map(({ key }) => [key, stated[key]])),
	};
}

/** The parts of `key=value; key=value` that are known. */
function statedSettings(text: string): TypedSettings {
	const parts = text.split(';').flatMap((part): [NamedKey, string][] => {
		const [word = '', ...rest] = part.split('=');
		const found = named.find((each) => each.word === word.trim().toLowerCase());
		const value = rest.join('=').trim();
		return found && value !== '' ? [[found.key, value]] : [];
	});
	return Object.fromEntries(parts);
}

function inWords(key: NamedKey, settings: Settings): string {
	if (key === 'unit') return settings.unit;
	if (key === 'mountSize') {
		const { mountSize } = settings;
		return mountSize ? formatSize(mountSize.width, mountSize.height, settings) : 'that of the frame';
	}
	if (key === 'bottomWeight') return weightWords(settings.bottomWeight, settings);
	const length = settings[key];
	return length === undefined ? 'none' : formatWithUnit(length, settings);
}

function weightWords(weight: BottomWeight, scale: Scale): string {
	if (weight.kind === 'optical centre') return weight.kind;
	if (weight.kind === 'length') return formatWithUnit(weight.more, scale);
	return `${Number(((weight.numerator / weight.denominator) * 100).toFixed(2))} %`;
}
