import type { Unit } from '../core/length/reading.ts';
import { unitOfRegion } from '../core/length/unitOfRegion.ts';

/** The unit of the very first show: by the region of the browser's language, where it says one. It can be changed there. */
export function guessedUnit(languages: readonly string[] = 'navigator' in globalThis ? navigator.languages : []): Unit {
	for (const language of languages)
		try {
			const { region } = new Intl.Locale(language);
			if (region !== undefined) return unitOfRegion(region);
		} catch {
			// no language tag: the next one may be
		}
	return unitOfRegion(undefined);
}
