import { daysInFigures, daysInWords, daysOfSerial, type NamedDay } from './namedDays.ts';

/** What a text may have been before a spreadsheet made something else of it. */
export interface BeforeSpreadsheet {
	/** What it looks like now. */
	readonly looksLike: 'date' | 'time' | 'number';
	/** What was typed, perhaps; the likeliest first. */
	readonly texts: readonly string[];
}

const two = 100;

/** A year as it was typed, with two figures. */
const short = (year: number) => year % two;

/** The days that a text names, none where it names none; a serial number only where nothing else is to be expected. */
const daysOf = (text: string): readonly NamedDay[] => [...daysInWords(text), ...daysInFigures(text)];

/** What an edition may have been that reads like a date now: its number is no greater than its size. */
export function editionBefore(text: string): BeforeSpreadsheet | undefined {
	const days = daysOf(text);
	const serials = days.length > 0 ? [] : daysOfSerial(text).slice(0, 1);
	const pairs = [...days, ...serials].flatMap(({ day, month, year }): [number, number][] => [
		...(day === undefined ? [] : ([[Math.min(day, month), Math.max(day, month)]] as [number, number][])),
		// Where the first of a month stands there, its day may never have been typed.
		...(year !== undefined && (day ?? 1) === 1 && short(year) >= month
			? ([[month, short(year)]] as [number, number][])
			: []),
	]);
	return made(
		'date',
		pairs.map(([number, size]) => `${number}/${size}`),
	);
}

/** What a shape may have been that reads like a date or a time now. */
export function shapeBefore(text: string): BeforeSpreadsheet | undefined {
	const [, hours, minutes] = /^0*(\d{1,2}):0*(\d{1,2}):0{1,2}$/.exec(text.trim()) ?? [];
	if (minutes !== undefined) return made('time', [`${hours}:${minutes}`]);
	const ofDay = timeOfPart(text);
	if (ofDay !== undefined) return made('time', [ofDay]);
	const texts = daysOf(text).flatMap(({ day, month }) =>
		day === undefined ? [] : [`${day}.${month}`, `${day}/${month}`, `${month}/${day}`],
	);
	return made('date', texts);
}

const minutesOfDay = 1440;
/** How far from a whole minute a part of a day may be, in minutes: it is written with seven figures and more. */
const nearMinute = 0.002;

/** The hours and minutes that a part of a day is: a spreadsheet writes a time so in a cell without format. */
function timeOfPart(text: string): string | undefined {
	if (!/^0[.,]\d{5,}$/.test(text.trim())) return undefined;
	const minutes = Number(text.trim().replace(',', '.')) * minutesOfDay;
	const whole = Math.round(minutes);
	if (Math.abs(minutes - whole) > nearMinute || whole % 60 === 0 || whole < 60) return undefined;
	return `${Math.floor(whole / 60)}:${whole % 60}`;
}

/** A shape whose second figure has got a zero, as times have: `04:03` for 4:3; it means the same. */
export const shapeWithoutNoughts = (text: string): string =>
	text.trim().replace(/^0*(\d{1,2}):0(\d)$/, (_, width: string, height: string) => `${width}:${height}`);

/** What a length may have been that reads like a date, or like a number with a power of ten, now. */
export function lengthBefore(text: string): BeforeSpreadsheet | undefined {
	const [, whole, part, power] = /^(\d)(?:[.,](\d{1,8}))?e\+?0*(\d{1,2})$/i.exec(text.trim()) ?? [];
	if (power !== undefined) {
		const figures = `${whole}${part ?? ''}`;
		const zeros = Number(power) - (part?.length ?? 0);
		return zeros < 0 || zeros > 6 ? undefined : made('number', [`${figures}${'0'.repeat(zeros)}`]);
	}
	const texts = daysOf(text).flatMap(({ day, month, year }) => [
		...(day === undefined ? [] : [`${day}.${month}`, `${Math.min(day, month)}/${Math.max(day, month)}`]),
		...(year !== undefined && (day ?? 1) === 1 ? [`${month}.${short(year)}`] : []),
	]);
	return made('date', texts);
}

const made = (looksLike: BeforeSpreadsheet['looksLike'], texts: readonly string[]): BeforeSpreadsheet | undefined =>
	texts.length === 0 ? undefined : { looksLike, texts: [...new Set(texts)] };

/** What is said of such a cell. */
export function saidOfBefore(text: string, { looksLike, texts }: BeforeSpreadsheet): string {
	const what = {
		date: 'looks like a date that a spreadsheet has made of something else',
		time: 'looks like a time that a spreadsheet has made of a shape',
		number: 'looks like a number that a spreadsheet has cut short',
	}[looksLike];
	return `${text} ${what}${texts.length === 1 ? `, perhaps of ${texts[0]}` : ''}: look at the print, and type what it was`;
}
