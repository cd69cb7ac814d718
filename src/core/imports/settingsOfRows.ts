import type { BottomWeight } from '../length/bottomWeight.ts';
import { formatSize, formatWithUnit, type Scale } from '../length/formatLength.ts';
import { readSettings } from '../settings/readSettings.ts';
import type { Settings, TypedSettings } from '../settings/settings.ts';
import { bareName } from '../length/paperSizes.ts';
import { splitSizeText } from '../length/parseSize.ts';
import { isSame } from '../length/length.ts';
import { isRecord } from '../values/isRecord.ts';
import { listed } from '../values/listed.ts';
import { shownText } from '../values/shownText.ts';
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

/** A setting that is said with its value. */
export type NamedSetting = (typeof named)[number]['key'];

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
	const here = readSettings(typed).settings;
	const ofSizes = sizesOfRows(first, typed, here);
	if (Object.keys(stated).length === 0) return ofSizes;
	// A reveal is said only where there is one.
	const meant: TypedSettings = { reveal: 'none', ...stated };
	const { settings: there, problems } = readSettings({ ...typed, ...meant });
	if (problems.some(({ key }) => Object.hasOwn(meant, key))) return undefined;
	const differing = named.filter(({ key }) => Object.hasOwn(meant, key) && !isSameValue(there[key], here[key]));
	if (differing.length === 0) return ofSizes;
	const words = differing.map(({ key, label }) => `${label} ${inWords(key, there)} (here ${inWords(key, here)})`);
	return {
		sentence: `The rows of the file were worked out with other settings: ${words.join(', ')}.${ofSizes ? ` ${ofSizes.sentence}` : ''}`,
		change: { ...Object.fromEntries(differing.map(({ key }) => [key, stated[key]])), ...ofSizes?.change },
	};
}

/** What stands before the name of a size in the line of settings: `size Small=400 x 300 mm`. */
export const sizeWord = 'size ';

/** The name of a size as it stands in the line of settings, whose parts its signs must not part. */
export const escapedName = (name: string): string =>
	name.replaceAll(/[;=%]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`);

const unescapedName = (name: string): string =>
	name.replaceAll(/%(3b|3d|25)/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** The named sizes that rows of a file need and that are not here, or are others here. */
function sizesOfRows(text: string, typed: TypedSettings, here: Settings): SettingsOfRows | undefined {
	const stated = text.split(';').flatMap((part) => {
		const [word = '', value = '', ...rest] = part.split('=');
		const name = unescapedName(word.trim().slice(sizeWord.length)).trim();
		const sides = rest.length > 0 || !word.trim().startsWith(sizeWord) ? undefined : splitSizeText(value);
		return name === '' || sides === undefined ? [] : [{ name, ...sides }];
	});
	const there = readSettings({ ...typed, sizes: stated }).settings.sizes;
	const missing = there.filter((size) => {
		const own = here.sizes.find(({ name }) => bareName(name) === bareName(size.name));
		return !own || !isSame(own.width, size.width) || !isSame(own.height, size.height);
	});
	if (missing.length === 0) return undefined;
	const names = new Set(missing.map(({ name }) => bareName(name)));
	const others = Array.isArray(typed['sizes'])
		? (typed['sizes'] as readonly unknown[]).filter(
				(size) => !(isRecord(size) && typeof size['name'] === 'string' && names.has(bareName(size['name']))),
			)
		: [];
	const words = missing.map((size) => {
		const own = here.sizes.find(({ name }) => bareName(name) === bareName(size.name));
		const isHere = own ? `, here ${formatSize(own.width, own.height, here)}` : '';
		return `“${shownText(size.name)}” (${formatSize(size.width, size.height, here)}${isHere})`;
	});
	return {
		sentence: `The rows name ${missing.length === 1 ? 'a size' : 'sizes'} that this show does not have: ${listed(words)}.`,
		change: { sizes: [...others, ...stated.filter(({ name }) => names.has(bareName(name)))] },
	};
}

/** The parts of `key=value; key=value` that are known. */
function statedSettings(text: string): TypedSettings {
	const parts = text.split(';').flatMap((part): [NamedSetting, string][] => {
		const [word = '', ...rest] = part.split('=');
		const found = named.find((each) => each.word === word.trim().toLowerCase());
		const value = rest.join('=').trim();
		return found && value !== '' ? [[found.key, value]] : [];
	});
	return Object.fromEntries(parts);
}

function inWords(key: NamedSetting, settings: Settings): string {
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
