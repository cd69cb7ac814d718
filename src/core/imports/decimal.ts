/** A number as figures and a power of ten, without zeros behind: 450 is 45 and 1. */
export interface Decimal {
	readonly figures: bigint;
	readonly power: number;
}

const longestNumber = 60;
/** No cell of a list is further from one than this power of ten. */
const mostPower = 40;

/**
 * What a text may be as a number: `450`, `4,5E+02`, `1 250,00`, `+7`. A comma or point before three figures may part
 * thousands or be that of a decimal: then it is both.
 * @returns none where it is no number
 */
export function decimalsOf(text: string): readonly Decimal[] {
	const plain = text.trim();
	if (plain.length > longestNumber) return [];
	const [, sign, whole, part, exponent] =
		/^([+-]?)(\d*)(?:[.,](\d+))?(?:e([+-]?\d{1,3}))?$/i.exec(plain.replace(/^−/, '-')) ?? [];
	const found: Decimal[] = [];
	if (sign !== undefined && (whole !== '' || part !== undefined)) {
		const power = Number(exponent ?? 0) - (part?.length ?? 0);
		if (Math.abs(power) <= mostPower) found.push(normal(BigInt(`${whole}${part ?? ''}`), power, sign));
	}
	const [, minus, grouped, separator, rest] =
		/^([+-]?)(\d{1,3}(?:([ .,'’\u00a0\u2009\u202f])\d{3})(?:\3\d{3})*)(?:[.,](\d+))?$/.exec(plain) ?? [];
	if (grouped !== undefined && !(rest !== undefined && plain.at(-rest.length - 1) === separator)) {
		const figures = `${grouped.replaceAll(/\D/g, '')}${rest ?? ''}`;
		found.push(normal(BigInt(figures), -(rest?.length ?? 0), minus!));
	}
	return found;
}

function normal(figures: bigint, power: number, sign: string): Decimal {
	if (figures === 0n) return { figures: 0n, power: 0 };
	let [left, at] = [figures, power];
	while (left % 10n === 0n) [left, at] = [left / 10n, at + 1];
	return { figures: sign === '-' ? -left : left, power: at };
}

/** Whether two numbers are the same. */
export const isSameDecimal = (a: Decimal, b: Decimal): boolean => a.figures === b.figures && a.power === b.power;

const magnitude = (value: bigint) => (value < 0n ? -value : value);

/** Whether a number is another rounded, to fewer figures than that has. */
export function isRounded(exact: Decimal, rounded: Decimal): boolean {
	const lost = rounded.power - exact.power;
	if (lost <= 0 || lost > longestNumber || rounded.figures === 0n) return false;
	const step = 10n ** BigInt(lost);
	const [whole, rest] = [exact.figures / step, magnitude(exact.figures % step)];
	const up = exact.figures < 0n ? -1n : 1n;
	const nearest = rest * 2n >= step ? whole + up : whole;
	return nearest === rounded.figures || whole === rounded.figures;
}

/** How many figures a number has, without zeros at either end. */
export const countFigures = ({ figures }: Decimal): number => magnitude(figures).toString().length;
