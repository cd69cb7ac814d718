import { isSameDecimal, decimalsOf } from '../imports/decimal.ts';
import { greatestWall, isSame } from '../length/length.ts';
import { parseLength } from '../length/parseLength.ts';
import { parsePixels } from '../length/parsePixels.ts';
import { parseShape } from '../length/parseShape.ts';
import { parseSize } from '../length/parseSize.ts';
import { parseWeight } from '../length/parseWeight.ts';
import { isProblem, type Reading, type Unit } from '../length/reading.ts';
import type { NamedSize } from '../length/size.ts';
import { type ColumnName, kindOf } from '../show/columns.ts';
import { isSameValue } from '../values/isSameValue.ts';
import { parseEdition } from './edition.ts';
import { readCount } from './readCount.ts';

/** A typed text with the unit in which it is read where it names none; undefined where it has all that it needs. */
export interface TypedText {
	readonly text: string;
	readonly unit: Unit | '%' | undefined;
}

/**
 * Whether two texts of a column have one value, however they are spelled: 51,2 cm is 512 mm, 03:02 is 3:2, `3 of 12` is
 * 3/12. Texts that have no value, and those that cannot be read, are the same only where they are one text.
 */
export function isSameTyped(column: ColumnName, a: TypedText, b: TypedText, sizes: readonly NamedSize[]): boolean {
	const both = <Value>(read: (typed: TypedText) => Reading<Value>, isOne: (a: Value, b: Value) => boolean) => {
		const [one, other] = [read(a), read(b)];
		return !isProblem(one) && !isProblem(other) && isOne(one.value, other.value);
	};
	const contextOf = ({ unit }: TypedText) => ({
		unit: unit === undefined || unit === '%' ? ('mm' as const) : unit,
		isUnitStated: unit !== undefined && unit !== '%',
	});
	switch (kindOf(column)) {
		case 'length':
		case 'space':
			return both(
				(typed) => parseLength(typed.text, { ...contextOf(typed), allowZero: true, greatest: greatestWall }),
				(one, other) => isSame(one.length, other.length),
			);
		case 'size':
		case 'mount':
			if (a.text.trim().toLowerCase() === b.text.trim().toLowerCase()) return a.unit === b.unit;
			return both(
				(typed) => parseSize(typed.text, { ...contextOf(typed), sizes }),
				(one, other) =>
					// A name is not its figures: what it stands for may change.
					one.name === other.name && isSame(one.width, other.width) && isSame(one.height, other.height),
			);
		case 'weight':
			return both(
				({ text, unit }) => parseWeight(text, unit === '%' ? undefined : unit),
				(one, other) => isSameValue(one, other),
			);
		case 'shape':
			return both(({ text }) => parseShape(text), isSameValue);
		case 'pixels':
			return both(({ text }) => parsePixels(text), isSameValue);
		case 'count':
			return both(({ text }) => readCount(text), Object.is);
		case 'edition': {
			const [one, other] = [parseEdition(a.text), parseEdition(b.text)];
			return one !== undefined && isSameValue(one, other);
		}
		case 'text':
			return false;
		case 'money':
			return isSamePrice(a.text, b.text);
	}
}

/** What stands before or behind an amount. */
const money = /^([^\d\s.,+-]{0,4})\s*([\d.,'’\s]*\d)\s*([^\d\s.,]{0,4})$/;

/** Whether two prices are one amount, in one currency where both name one. */
function isSamePrice(a: string, b: string): boolean {
	const [one, other] = [money.exec(a.trim()), money.exec(b.trim())];
	if (one === null || other === null) return false;
	const [currency, otherCurrency] = [`${one[1]}${one[3]}`, `${other[1]}${other[3]}`];
	if (currency !== '' && otherCurrency !== '' && currency !== otherCurrency) return false;
	const amounts = decimalsOf(one[2]!);
	return amounts.some((amount) => decimalsOf(other[2]!).some((each) => isSameDecimal(amount, each)));
}
