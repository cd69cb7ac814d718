import Papa from 'papaparse';
import { encode, encodeWindows, type TestEncoding } from './encode.ts';

/** A kind of spreadsheet program, by what it does to a list that it opens with a double click and saves again. */
export interface Program {
	readonly name: string;
	/** What it writes between cells. */
	readonly delimiter: ',' | ';' | '\t';
	readonly lineEnd: '\r\n' | '\n';
	readonly encoding: TestEncoding | 'windows-1252';
	/** Whether its decimals have a comma: then a point parts day and month, and it knows no 1.5. */
	readonly hasDecimalComma: boolean;
	readonly isMonthFirst: boolean;
	/** How it saves a day. A day without a year was typed without one. */
	readonly saveDay: (day: Day) => string;
	/** How it saves a time. */
	readonly saveTime: (hours: number, minutes: number) => string;
	/** Whether large numbers are saved with three figures and a power of ten. */
	readonly isScientific: boolean;
	/** Whether every cell is quoted. */
	readonly quotesAll: boolean;
}

/** A day as a spreadsheet keeps it. */
export interface Day {
	readonly day: number;
	readonly month: number;
	readonly year: number;
	readonly isYearTyped: boolean;
}

/** The year in which the lists are opened. */
const thisYear = 2026;
const two = (value: number) => String(value).padStart(2, '0');
const english = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const german = 'Jan Feb Mrz Apr Mai Jun Jul Aug Sep Okt Nov Dez'.split(' ');

/** Days since the last day of 1899, as most count them. */
const serialOf = ({ day, month, year }: Day) => Math.round(Date.UTC(year, month - 1, day) / 86_400_000) + 25_569;

/** Five kinds of program, by what they do; none is a product. */
export const programs: readonly Program[] = [
	{
		name: 'comma, decimal point, months first, day and month in letters',
		delimiter: ',',
		lineEnd: '\r\n',
		encoding: 'utf-8 bom',
		hasDecimalComma: false,
		isMonthFirst: true,
		saveDay: ({ day, month, year, isYearTyped }) =>
			isYearTyped ? `${english[month - 1]!}-${two(year % 100)}` : `${day}-${english[month - 1]!}`,
		saveTime: (hours, minutes) => `${hours}:${two(minutes)}`,
		isScientific: false,
		quotesAll: false,
	},
	{
		name: 'semicolon, decimal comma, days first, old encoding',
		delimiter: ';',
		lineEnd: '\r\n',
		encoding: 'windows-1252',
		hasDecimalComma: true,
		isMonthFirst: false,
		saveDay: ({ day, month, year, isYearTyped }) =>
			isYearTyped ? `${german[month - 1]!} ${two(year % 100)}` : `${two(day)}. ${german[month - 1]!}`,
		saveTime: (hours, minutes) => `${two(hours)}:${two(minutes)}`,
		isScientific: false,
		quotesAll: false,
	},
	{
		name: 'UTF-16, tabs, whole dates and times',
		delimiter: '\t',
		lineEnd: '\r\n',
		encoding: 'utf-16le bom',
		hasDecimalComma: true,
		isMonthFirst: false,
		saveDay: ({ day, month, year }) => `${two(day)}.${two(month)}.${year}`,
		saveTime: (hours, minutes) => `${two(hours)}:${two(minutes)}:00`,
		isScientific: false,
		quotesAll: false,
	},
	{
		name: 'comma, all in quotes, dates with the year first',
		delimiter: ',',
		lineEnd: '\n',
		encoding: 'utf-8',
		hasDecimalComma: false,
		isMonthFirst: false,
		saveDay: ({ day, month, year }) => `${year}-${two(month)}-${two(day)}`,
		saveTime: (hours, minutes) => `${two(hours)}:${two(minutes)}:00`,
		isScientific: true,
		quotesAll: true,
	},
	{
		name: 'semicolon, cells without format: serial numbers, parts of a day, powers of ten',
		delimiter: ';',
		lineEnd: '\r\n',
		encoding: 'utf-8 bom',
		hasDecimalComma: true,
		isMonthFirst: false,
		saveDay: (day) => `${serialOf(day)}`,
		saveTime: (hours, minutes) => ((hours * 60 + minutes) / 1440).toFixed(9).replace('.', ',').replace(/0+$/, ''),
		isScientific: true,
		quotesAll: false,
	},
];

const daysOfMonth = (month: number, year: number) => new Date(Date.UTC(year, month, 0)).getUTCDate();
/** Two figures are a year of this century up to 29. */
const yearOf = (value: number) => (value >= 1000 ? value : value + (value < 30 ? 2000 : 1900));

/** A cell as the program reads it and writes it again, by the rules that such programs have for typed text. */
export function turned(cell: string, program: Program): string {
	if (cell.startsWith("'")) return cell; // text, mark and all: an apostrophe in a file is a sign like others
	const text = cell.trim();
	const date = dayOf(text, program);
	if (date !== undefined) return program.saveDay(date);
	const [, hours, minutes] = /^(\d{1,2}):(\d{1,2})$/.exec(text) ?? [];
	if (minutes !== undefined && Number(hours) < 24 && Number(minutes) < 60)
		return program.saveTime(Number(hours), Number(minutes));
	const [, whole, numerator, denominator] = /^(\d{1,4}) (\d{1,2})\/(\d{1,2})$/.exec(text) ?? [];
	if (denominator !== undefined && Number(denominator) > 0)
		return number(Number(whole) + Number(numerator) / Number(denominator), program);
	const decimal = program.hasDecimalComma
		? /^[+-]?\d+(?:,\d+)?(?:e[+-]?\d{1,2})?$/i
		: /^[+-]?\d+(?:\.\d+)?(?:e[+-]?\d{1,2})?$/i;
	if (decimal.test(text)) return number(Number(text.replace(',', '.')), program);
	return cell;
}

function number(value: number, { hasDecimalComma, isScientific }: Program): string {
	const large =
		isScientific && value >= 1e5
			? value
					.toExponential(2)
					.replace('e+', 'E+')
					.replace(/\+(\d)$/, '+0$1')
			: undefined;
	const text = large ?? (value >= 1e11 ? value.toExponential(5).replace('e', 'E') : `${Number(value.toPrecision(10))}`);
	return hasDecimalComma ? text.replace('.', ',') : text;
}

function dayOf(text: string, { hasDecimalComma, isMonthFirst }: Program): Day | undefined {
	const parts = hasDecimalComma ? /^(\d{1,2})[./-](\d{1,4})\.?$/ : /^(\d{1,2})[/-](\d{1,4})$/;
	const [, one, other] = parts.exec(text) ?? [];
	if (other === undefined) return undefined;
	const [a, b] = [Number(one), Number(other)];
	const [day, month] = isMonthFirst ? [b, a] : [a, b];
	if (month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(month, thisYear))
		return { day, month, year: thisYear, isYearTyped: false };
	// No such day: the other way round, else a month and a year.
	if (a >= 1 && a <= 12 && (b >= 1000 || (b > 12 && b < 100))) {
		return { day: 1, month: a, year: yearOf(b), isYearTyped: true };
	}
	return undefined;
}

/** The text of a list as a program saves it, before it is encoded. */
export function savedText(
	text: string,
	program: Program,
	edit: (rows: string[][]) => string[][] = (rows) => rows,
): string {
	const { data } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: true });
	const rows = data.map((cells, at) => (at === 0 ? cells : cells.map((cell) => turned(cell, program))));
	return (
		Papa.unparse(edit(rows), { delimiter: program.delimiter, newline: program.lineEnd, quotes: program.quotesAll }) +
		program.lineEnd
	);
}

/** The bytes of a list as a program saves it. */
export function saved(text: string, program: Program, edit?: (rows: string[][]) => string[][]): Uint8Array {
	const again = savedText(text, program, edit);
	return program.encoding === 'windows-1252' ? encodeWindows(again) : encode(again, program.encoding);
}
