import type { Bench } from '../core/settings/bench.ts';
import type { TypedSettings } from '../core/settings/settings.ts';
import { isRecord } from '../core/values/isRecord.ts';

/** The settings that say which kind of cutter it is. */
const cutterKeys = ['head', 'guideSide', 'endStop'];

/** The bench as typed, in a record: a bare word is its kind. */
export function typedBench({ bench }: TypedSettings): Readonly<Record<string, unknown>> {
	if (isRecord(bench)) return bench;
	return typeof bench === 'string' ? { kind: bench } : {};
}

/** The change of settings that types something of the bench; a blank text or undefined puts it back to its default. */
export function benchChange(
	settings: TypedSettings,
	key: string,
	value: string | undefined,
): { readonly bench: unknown } {
	const { [key]: _, ...others } = typedBench(settings);
	const bench = value === undefined || value.trim() === '' ? others : { ...others, [key]: value };
	return { bench: Object.keys(bench).length > 0 ? bench : undefined };
}

/** Whether it is still to be asked which kind of cutter the end stops are on. */
export const isCutterUnknown = (settings: TypedSettings, { kind }: Bench): boolean =>
	kind === 'guide and stops' && !cutterKeys.some((key) => benchText(settings, key) !== '');

/** What answers it: what is chosen, the rest as it mostly is. */
export const usualCutter = (settings: TypedSettings): { readonly bench: unknown } => ({
	bench: { head: 'push', guideSide: 'left', endStop: 'from the end', ...typedBench(settings) },
});

/** What is typed of the bench, as a text to be edited; a number of a file is mm. */
export function benchText(settings: TypedSettings, key: string): string {
	const value = typedBench(settings)[key];
	if (typeof value === 'number') return key === 'bladeEvery' ? `${value}` : `${value} mm`;
	return typeof value === 'string' ? value : '';
}
