import { formatTypeable } from '../core/length/formatLength.ts';
import { usualInBox } from '../core/settings/readPacking.ts';
import { usualInset } from '../core/settings/usualHanging.ts';
import { defaultSettings } from '../core/settings/defaults.ts';
import type { Unit } from '../core/length/reading.ts';
import type { TypedSettings } from '../core/settings/settings.ts';
import { isRecord } from '../core/values/isRecord.ts';
import type { SettingsSection } from './settingsSections.ts';

/** A setting that is typed into a field of its own. */
export interface SettingField {
	/** Where it stands: `border`, `limits.largest`. */
	readonly key: string;
	readonly label: string;
	readonly hint?: string;
	/** What undo calls it. */
	readonly action: string;
}

/** Fields that stand together under a heading. */
export interface SettingGroup {
	/** The section of the settings that they stand in. */
	readonly section: SettingsSection;
	readonly heading: string;
	readonly fields: readonly SettingField[];
}

const field = (key: string, label: string, hint?: string): SettingField => ({
	key,
	label,
	...(hint !== undefined && { hint }),
	action: `Change ${label.charAt(0).toLowerCase()}${label.slice(1)}`,
});

/** The fields of the settings screen, but for the name, the unit and the named sizes. */
export const settingGroups: readonly SettingGroup[] = [
	{
		section: 'mount',
		heading: 'Mount and borders',
		fields: [
			field(
				'mountSize',
				'Mount size',
				'A size, a name from the list below, or frame: the size that fits the show’s frame',
			),
			field('border', 'Border', 'What you’d like at the sides and top'),
			field('leastBorder', 'Smallest border', 'Warn below this'),
			field('bottomWeight', 'Bottom weight', 'A share (10 %), a length (6 mm), none, or optical centre'),
		],
	},
	{
		section: 'mount',
		heading: 'Window and picture',
		fields: [
			field('overlap', 'Overlap', 'How far the mount covers the picture, each side'),
			field('reveal', 'Reveal', 'Paper left showing round the picture, each side; replaces the overlap'),
			field('innerBlankSmaller', 'Inner blank smaller by', 'Each side'),
		],
	},
	{
		section: 'mount',
		heading: 'Tolerances',
		fields: [
			field('unevenTolerance', 'Uneven borders', 'How far side and top may differ, as a share of the smaller'),
			field('cuttingTolerance', 'Cutting', 'An overlap under this may let an edge show'),
			field('hingeMargin', 'Hinge margin', 'Room for hinges between the paper and the edge of the mount'),
		],
	},
	{
		section: 'frames',
		heading: 'In the frame',
		fields: [
			field('frame', 'Frame of the show', 'For prints that name none; blank: the first below that fits the mount'),
			field('frameClearance', 'Clearance', 'How much larger a rebate is than what goes in, both sides together'),
			field('saw', 'Saw cut', 'What each leg of a frame loses to the saw'),
			field('pointsRoom', 'Room for points', 'What must be left of the rebate’s depth behind the backing'),
			field('leastSpacer', 'Smallest spacer', 'What keeps the glazing off a print without a mount'),
		],
	},
	{
		section: 'papers',
		heading: 'Printing',
		fields: [
			field('proofs', 'Proofs', 'How many of each print, besides its copies'),
			field('pixelsAnInch', 'Fewest pixels an inch', 'Warn where a picture file has fewer at the size it is printed'),
		],
	},
	{
		section: 'walls',
		heading: 'Hanging',
		fields: [
			field('hanging.kind', 'Frames hang by', 'cord, two hooks, or rail'),
			field('hanging.rings', 'Rings below the frame’s top', 'A length, or a share of its height; blank: a third'),
			field('hanging.inset', 'Rings in from each side'),
			field('hanging.slack', 'Slack of the cord', 'How much longer it is than from ring to ring'),
			field('hanging.rating', 'A fixing holds', 'In kg, as its maker says: the hook, or a pair of rings'),
			field('hanging.nail', 'Nail above the hook', 'For a rail: its height above the floor'),
			field('stackGap', 'Gap between prints under each other'),
		],
	},
	{
		section: 'sales',
		heading: 'What the gallery keeps',
		fields: [
			field('commission', 'Commission', 'A share of the price, such as 40 %'),
			field('vat', 'VAT on the commission', 'A share of the commission; 0 where none is charged'),
		],
	},
	{
		section: 'sales',
		heading: 'Prices that are worked out',
		fields: [field('priceStep', 'Round up to a multiple of', 'With 5, a price of 441.18 becomes 445')],
	},
	{
		section: 'lists',
		heading: 'Catalogue',
		fields: [field('catalogue.prices', 'Prices', 'Shown, or left out; sold prints are marked either way')],
	},
	{
		section: 'lists',
		heading: 'Packing',
		fields: [field('packing.most', 'Prints in a box', 'At most; they go in pairs, face to face')],
	},
	{
		section: 'rules',
		heading: 'Rules of the show',
		fields: [
			field('limits.largest', 'Largest mount', 'Either way round'),
			field('limits.smallest', 'Smallest mount', 'Either way round'),
			field('limits.exact', 'Exact mount', 'Either way round'),
			field('limits.within', 'Tolerance ±'),
			field('limits.pictureArea', 'Minimum picture area'),
			field(
				'limits.thickness',
				'Maximum thickness',
				'Mounts, print and undermount together: 4 mm, 4000 micron, 12-ply',
			),
		],
	},
];

/** The settings that are shares, and per cent where they are a number. */
const sharesInNumbers = new Set(['bottomWeight', 'unevenTolerance', 'hanging.slack', 'commission', 'vat']);

/** A setting as a text to be edited: numbers, which files may hold, with the unit that they are in. */
export function settingText(settings: TypedSettings, key: string): string {
	const value = key
		.split('.')
		.reduce<unknown>((within, part) => (isRecord(within) ? within[part] : undefined), settings);
	if (typeof value === 'string') return value;
	if (isRecord(value)) return `${inMm(value['width'])} x ${inMm(value['height'])}`;
	if (typeof value !== 'number') return '';
	if (['proofs', 'pixelsAnInch', 'priceStep', 'packing.most'].includes(key)) return `${value}`;
	if (key === 'hanging.rating') return `${value} kg`;
	if (sharesInNumbers.has(key)) return `${value} %`;
	return key === 'limits.pictureArea' ? `${value} mm²` : `${value} mm`;
}

const inMm = (value: unknown) => (typeof value === 'number' ? `${value} mm` : typeof value === 'string' ? value : '');

/** The change of settings that types a text into a field; a blank one puts the setting back to its default. */
export function settingChange(settings: TypedSettings, key: string, text: string): Record<string, unknown> {
	const value = text === '' ? undefined : text;
	const [name, inner] = key.split('.');
	if (name === undefined || inner === undefined) return { [key]: value };
	const whole = settings[name];
	// What frames hang by may be its kind alone.
	const { [inner]: _, ...others } = isRecord(whole) ? whole : name === 'hanging' && whole ? { kind: whole } : {};
	const record = value === undefined ? others : { ...others, [inner]: value };
	return { [name]: Object.keys(record).length > 0 ? record : undefined };
}

/** The value of a field while nothing is typed in it. */
export function byDefault(key: string, unit: Unit): string {
	const usual = {
		'hanging.kind': 'cord',
		'hanging.rings': 'a third',
		'hanging.inset': formatTypeable(usualInset(unit), unit),
		'hanging.slack': '5 %',
		'hanging.rating': 'not asked',
		'hanging.nail': '0',
		'catalogue.prices': 'shown',
		'packing.most': `${usualInBox}`,
	};
	const text: string | undefined = { ...defaultSettings(unit), ...usual, reveal: 'none', frame: '' }[key];
	return (text ?? 'none').replace(' x ', ' × ').replace(/(\d)%/, '$1 %');
}

/** The settings that have a field of another kind, by their keys or by what their keys begin with. */
const otherFields: readonly (readonly [SettingsSection, RegExp])[] = [
	['mount', /^sizes\[/],
	['boards', /^(?:(?:boards|offcuts)\[|undermount$|spares$)/],
	['frames', /^frames\[/],
	['materials', /^(?:(?:glazing|backing|supplies)\[|backingSmaller$|currency$)/],
	['papers', /^papers\[/],
	['sales', /^costInPrice$/],
	['walls', /^walls\[/],
	['lists', /^(?:catalogue|packing)$/],
	['labels', /^label(?:Contents(?:\.|$)|Sheets\[)/],
	['bench', /^bench\.(?:greatest|least|correction|overcut|slipBoard|bladeEvery)$/],
];

/** The section in which a setting can be typed again, beside which its problem is said; undefined where it has no field. */
export function sectionOf(key: string): SettingsSection | undefined {
	const group = settingGroups.find(({ fields }) =>
		fields.some((each) => key === each.key || key.startsWith(`${each.key}.`)),
	);
	return group?.section ?? otherFields.find(([, keys]) => keys.test(key))?.[0];
}
