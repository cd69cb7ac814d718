import { isRecord } from '../values/isRecord.ts';
import { isAbsent, optionalSettings, type SettingContext, wordSetting } from './settingValue.ts';
import { cataloguePriceWords, type CatalogueSettings } from './settings.ts';

/** Reads what the catalogue says; blank: prices are shown. */
export function readCatalogue(value: unknown, context: SettingContext): CatalogueSettings {
	const usual: CatalogueSettings = { prices: 'shown' };
	if (isAbsent(value)) return usual;
	if (!isRecord(value)) {
		context.report('catalogue', 'not a record of what it says of prices');
		return usual;
	}
	const prices = (typed: unknown) => wordSetting(typed, cataloguePriceWords);
	return {
		...usual,
		...optionalSettings<CatalogueSettings>(value, 'catalogue', context, { prices: ['prices', prices] }),
	};
}
