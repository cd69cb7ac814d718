import { isRecord } from '../values/isRecord.ts';
import type { TypedSettings } from './settings.ts';

/**
 * The change of settings that removes what cannot be read at a key, such as `views.list[1].name` or `labels.corner`:
 * of a list its entry, else the value of the key itself.
 */
export function dropSetting(typed: TypedSettings, key: string): TypedSettings {
	const steps = [...key.matchAll(/[^.[\]]+/g)].map(([step]) => step);
	const entry = steps.findLastIndex((step) => /^\d+$/.test(step));
	const [first = key, ...inner] = entry < 0 ? steps : steps.slice(0, entry + 1);
	return { [first]: inner.length === 0 ? undefined : without(typed[first], inner) };
}

/** A value without what stands in it at the end of some steps. */
function without(value: unknown, [step = '', ...inner]: readonly string[]): unknown {
	if (Array.isArray(value)) {
		const list: readonly unknown[] = value;
		const isWanted = (place: number) => place === Number(step);
		return inner.length === 0
			? list.filter((_, place) => !isWanted(place))
			: list.map((each, place) => (isWanted(place) ? without(each, inner) : each));
	}
	if (!isRecord(value)) return undefined;
	return Object.fromEntries(
		Object.entries(value).flatMap(([name, each]) => {
			if (name !== step) return [[name, each]];
			return inner.length === 0 ? [] : [[name, without(each, inner)]];
		}),
	);
}
