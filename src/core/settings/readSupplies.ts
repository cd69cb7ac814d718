import { type Length, length, unitsPerInch, unitsPerMm } from '../length/length.ts';
import type { Reading } from '../length/reading.ts';
import type { StockContext } from './readBoards.ts';
import {
	isAbsent,
	numberAndUnit,
	optionalSettings,
	recordsOf,
	textSetting,
	valueOf,
	wholeSetting,
	wordSetting,
} from './settingValue.ts';
import { shown } from '../values/shownText.ts';
import { suppliesByLength, type Supply, supplyKinds } from './supply.ts';

/**
 * Reads what is used up with each print. An entry of no known kind is reported and left out; so is a second one of a kind,
 * for what a print needs of it is said once.
 */
export function readSupplies(value: unknown, context: StockContext): readonly Supply[] {
	const kinds = new Set<Supply['kind']>();
	return recordsOf(value, 'supplies', context).flatMap(([record, key]): readonly Supply[] => {
		const kind = valueOf(wordSetting(record['kind'], supplyKinds), `${key}.kind`, context);
		const name = isAbsent(record['name']) ? kind : valueOf(textSetting(record['name']), `${key}.name`, context);
		if (kind === undefined || name === undefined) return [];
		if (kinds.has(kind)) {
			context.report(`${key}.kind`, `“${kind}” is in the list before it too; put both into one entry`);
			return [];
		}
		kinds.add(kind);
		const amount =
			(least: number) =>
			(typed: unknown): Reading<number> =>
				suppliesByLength.includes(kind) ? metresSetting(typed, least > 0) : wholeSetting(typed, least);
		const rest = optionalSettings<Omit<Supply, 'kind' | 'name'>>(record, key, context, {
			each: ['each', amount(0)],
			price: ['price', context.price],
			pack: ['pack', amount(1)],
			count: ['count', amount(0)],
		});
		return [{ kind, name, ...rest }];
	});
}

const unitsOf: ReadonlyMap<string, number> = new Map([
	['', 1000 * unitsPerMm],
	['m', 1000 * unitsPerMm],
	['cm', 10 * unitsPerMm],
	['mm', unitsPerMm],
	['ft', 12 * unitsPerInch],
	['in', unitsPerInch],
]);

/** The longest roll that is read, in metres: far more than anyone buys. */
const longestMetres = 10_000;

/** A length of what comes on rolls: `50`, `50 m`, `164 ft`; a bare number is metres, whatever the show's unit. */
export function metresSetting(value: unknown, isAboveZero = false): Reading<Length> {
	const problem = `${shown(value)} is not a length in metres, such as 50`;
	if (typeof value !== 'string' && typeof value !== 'number') return { problem };
	const read = numberAndUnit(`${value}`, problem);
	if ('problem' in read) return read;
	const units = unitsOf.get(read.value.unit);
	const metres = Number(read.value.number) * (units ?? NaN);
	const isRead = metres >= 0 && metres <= longestMetres * 1000 * unitsPerMm && (metres > 0 || !isAboveZero);
	return isRead ? { value: length(Math.round(metres)) } : { problem };
}
