/** A day that a text may name. Where no day stands in it, the first of the month is meant; where no year does, any. */
export interface NamedDay {
	readonly day: number | undefined;
	/** From 1. */
	readonly month: number;
	/** In full, or only its last two figures. */
	readonly year: number | undefined;
}

/** The months in English, German, French, Italian, Spanish and Dutch, without accents. */
const monthNames = [
	'january januar jaenner janner janvier gennaio enero januari',
	'february februar fevrier febbraio febrero februari',
	'march marz maerz mrz mars marzo maart mrt',
	'april avril aprile abril',
	'may mai maggio mayo mei',
	'june juni juin giugno junio',
	'july juli juillet luglio julio',
	'august aout agosto augustus',
	'september septembre settembre septiembre setiembre',
	'october oktober octobre ottobre octubre',
	'november novembre noviembre',
	'december dezember decembre dicembre diciembre',
].map((names) => names.split(' '));

const lastDay = 31;
const lastMonth = 12;
const yearsOfCentury = 100;

/** A text in lower case, without accents. */
export const folded = (text: string): string => text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();

/** Which month a word names, from 1, by three letters and more that begin its name and that of no other; undefined where none. */
function monthOf(word: string): number | undefined {
	const letters = folded(word);
	if (!/^[a-z]{3,}$/.test(letters)) return undefined;
	const found = monthNames.flatMap((names, at) => (names.some((name) => name.startsWith(letters)) ? [at + 1] : []));
	return found.length === 1 ? found[0] : undefined;
}

const isDay = (value: number) => value >= 1 && value <= lastDay;
const isMonth = (value: number) => value >= 1 && value <= lastMonth;

/** What two or three numbers may name, in every order in which a date is written. */
function daysOfNumbers(numbers: readonly number[]): readonly NamedDay[] {
	const [a, b, c] = numbers as [number, number, number | undefined];
	const days: NamedDay[] =
		c === undefined
			? [
					{ day: a, month: b, year: undefined },
					{ day: b, month: a, year: undefined },
					{ day: undefined, month: a, year: b },
					{ day: undefined, month: b, year: a },
				]
			: [
					{ day: a, month: b, year: c },
					{ day: b, month: a, year: c },
					{ day: c, month: b, year: a },
				];
	return days.filter(
		({ day, month, year }) =>
			isMonth(month) && (day === undefined || isDay(day)) && (year === undefined || isYear(year)),
	);
}

/** A year is written with two figures or with four. */
const isYear = (value: number) => value < yearsOfCentury || (value >= 1000 && value <= 9999);

/** The longest text that is looked at: no date is longer. */
const longestDate = 40;

/** What stands behind a date where its cell had no time. */
const midnight = /[\sT]+0{1,2}:00(?::00)?(?:[.,]0+)?$/;

/** The days that a text may name with a month in letters: `12-Mar`, `3. Dez`, `Mar 25`, `March 12, 2026`. */
export function daysInWords(text: string): readonly NamedDay[] {
	if (text.length > longestDate) return [];
	const words = text
		.replace(midnight, '')
		.split(/[\s./,-]+/)
		.filter((word) => word !== '');
	const months = words.map(monthOf);
	const at = months.findIndex((month) => month !== undefined);
	const others = words.filter((_, place) => place !== at);
	if (at < 0 || others.length === 0 || others.length > 2 || !others.every((word) => /^\d{1,4}$/.test(word))) return [];
	const month = months[at]!;
	const [first, second] = others.map(Number) as [number, number | undefined];
	if (second === undefined)
		return [
			...(isDay(first) ? [{ day: first, month, year: undefined }] : []),
			...(isYear(first) ? [{ day: undefined, month, year: first }] : []),
		];
	return [
		{ day: first, month, year: second },
		{ day: second, month, year: first },
	].filter(({ day, year }) => isDay(day) && isYear(year));
}

/** The days that a text of figures in three groups may name: `20.02.2026`, `2026-02-20`, `2/20/26`. */
export function daysInFigures(text: string): readonly NamedDay[] {
	if (text.length > longestDate) return [];
	const [, a, b, c] = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})\.?$/.exec(text.trim().replace(midnight, '')) ?? [];
	return c === undefined ? [] : daysOfNumbers([Number(a), Number(b), Number(c)]);
}

/** The days that two numbers may be read as, whoever typed them: `3/12`, `1.5`, `2-10`. */
export function daysInPair(text: string): readonly NamedDay[] {
	const [, a, b] = /^(\d{1,4})\s?[./-]\s?(\d{1,4})$/.exec(text.trim()) ?? [];
	return b === undefined ? [] : daysOfNumbers([Number(a), Number(b)]);
}

/** Days between two beginnings of counting: some spreadsheets count from 1900, some from 1904. */
const daysTo1904 = 1462;
/** Serial numbers of days are looked for between these: from 1927 to 2118. */
const [firstSerial, lastSerial] = [10_000, 80_000];

/** The days that a serial number may stand for: a spreadsheet counts them, and shows the count in a cell without format. */
export function daysOfSerial(text: string): readonly NamedDay[] {
	const [, figures] = /^(\d{5})(?:[.,]0+)?$/.exec(text.trim()) ?? [];
	if (figures === undefined) return [];
	const serial = Number(figures);
	if (serial < firstSerial || serial > lastSerial) return [];
	return [dayOfSerial(serial), dayOfSerial(serial + daysTo1904)];
}

/**
 * The day of a serial number of 1900, by the rule of the Gregorian calendar.
 * Source: the algorithm for civil dates from a count of days, in public use; day 25,569 is 1 January 1970.
 */
function dayOfSerial(serial: number): NamedDay {
	const sinceMarch0 = serial - 25_569 + 719_468; // days since 1 March of the year 0
	const era = Math.floor(sinceMarch0 / 146_097);
	const ofEra = sinceMarch0 - era * 146_097;
	const yearOfEra = Math.floor(
		(ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
	);
	const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
	const fromMarch = Math.floor((5 * ofYear + 2) / 153);
	const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
	return {
		day: ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
		month,
		year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
	};
}

/** Whether one day, as somebody typed it, is what a spreadsheet may have made another of. */
export function isSameDay(typed: NamedDay, made: NamedDay): boolean {
	if (typed.month !== made.month) return false;
	const isYearSame =
		typed.year === undefined || made.year === undefined || typed.year % yearsOfCentury === made.year % yearsOfCentury;
	if (typed.day === undefined) return isYearSame && made.year !== undefined && (made.day ?? 1) === 1;
	return isYearSame && typed.day === made.day;
}
