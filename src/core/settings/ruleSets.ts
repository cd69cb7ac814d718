import type { TypedSettings } from './settings.ts';

/** The settings that are the rules of an exhibition, chosen as one and edited one by one. */
export const ruleKeys = ['limits', 'leastBorder', 'labels'] as const;

/** Rules of an exhibition, ready to be chosen. */
export interface RuleSet {
	readonly name: string;
	/** What they are, in a few words. */
	readonly about: string;
	/** The settings that they change; a key that is absent goes back to its default. */
	readonly settings: Partial<Record<(typeof ruleKeys)[number], unknown>>;
}

/** A few generic sets: what exhibitions commonly ask. None is the rule of any one of them. */
export const ruleSets: readonly RuleSet[] = [
	{ name: 'No rules', about: 'A wall of your own', settings: {} },
	{
		name: 'One metric size',
		about: 'Every mount 500 × 400 mm to 2 mm, 4 mm thick at most, name on the back',
		settings: {
			limits: { exact: '500 x 400 mm', within: '2 mm', thickness: '4 mm' },
			labels: { name: 'required', corner: 'top left' },
		},
	},
	{
		name: 'Up to 16 × 20 in',
		about: 'Mounts to 16 × 20 in with borders of 2 in or more',
		settings: { limits: { largest: '20 x 16 in' }, leastBorder: '2 in' },
	},
	{
		name: 'Judged without names',
		about: 'No name anywhere, mounts to 600 × 500 mm, the picture at least 300 cm²',
		settings: {
			limits: { largest: '600 x 500 mm', pictureArea: '300 cm2' },
			labels: { name: 'forbidden', corner: 'top right' },
		},
	},
	{
		name: 'Open wall',
		about: 'From 300 × 200 mm to 1000 × 800 mm',
		settings: { limits: { smallest: '300 x 200 mm', largest: '1000 x 800 mm' } },
	},
];

/** The change of settings that chooses a set: every rule that it does not name goes back to its default. */
export const chooseRules = ({ settings }: RuleSet): Readonly<Record<string, unknown>> =>
	Object.fromEntries(ruleKeys.map((key) => [key, settings[key]]));

/** The set whose rules a show has, if it has those of one. */
export const rulesOf = (typed: TypedSettings): RuleSet | undefined =>
	ruleSets.find(({ settings }) =>
		ruleKeys.every((key) => JSON.stringify(settings[key] ?? null) === JSON.stringify(typed[key] ?? null)),
	);
