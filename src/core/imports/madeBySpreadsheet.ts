import { countFigures, type Decimal, decimalsOf, isRounded, isSameDecimal } from './decimal.ts';
import { daysInFigures, daysInPair, daysInWords, daysOfSerial, isSameDay, type NamedDay } from './namedDays.ts';

/** What a spreadsheet has done to a cell that nobody meant to change. */
export type SpreadsheetChange = 'date' | 'time' | 'number' | 'letters' | 'lines' | 'error';

/** Longer texts are not looked into at all: a cell of a megabyte must not hold up the page. */
const longestLookedAt = 5000;
/** No cell that a spreadsheet turns into something else is longer; only letters that are lost are looked for in longer ones. */
const longestTurned = 80;

/**
 * What a spreadsheet has done to a text: `3/12` comes back as `12-Mar`, `3:2` as `03:02:00`, `450` as `4,5E+02`, `007` as
 * `7`, `Müller` as `MÃ¼ller`.
 * @param before the text as it went out
 * @param after the text as it came back, not the same
 * @returns undefined where no spreadsheet makes the one of the other
 */
export function madeBySpreadsheet(before: string, after: string): SpreadsheetChange | undefined {
	if (Math.max(before.length, after.length) > longestLookedAt) return undefined;
	const [was, is] = [before.trim(), after.trim()];
	if (was === '' || is === '' || was === is) return undefined;
	if (isErrorValue(is)) return 'error';
	if (was.length <= longestTurned && is.length <= longestTurned) {
		if (isDateOf(was, is)) return 'date';
		if (isTimeOf(was, is)) return 'time';
		if (isNumberOf(was, is) || isTruthOf(was, is)) return 'number';
	}
	if (isSpoiled(was, is)) return 'letters';
	return inOneLine(was) === inOneLine(is) ? 'lines' : undefined;
}

/** What stands in a cell that a spreadsheet cannot work out or show. */
const isErrorValue = (text: string): boolean => /^(?:#(?:[A-ZÄÖÜ]{2,9}[!?]?|DIV\/0!|N\/A)|#{3,}|Err:\d{3})$/.test(text);

function isDateOf(before: string, after: string): boolean {
	const made: readonly NamedDay[] = [...daysInWords(after), ...daysInFigures(after), ...daysOfSerial(after)];
	if (made.length === 0) return false;
	const typed = [...daysInPair(before), ...daysInWords(before), ...daysInFigures(before)];
	return typed.some((one) => made.some((other) => isSameDay(one, other)));
}

/** Minutes of the day, from a time with hours and minutes, and perhaps seconds; undefined where it is none. */
function minutesOf(text: string): number | undefined {
	const plain = text
		.trim()
		.replace(/^(?:1899-12-3[01]|3[01][./]12[./](?:18)?99|1900-01-00|01[./]01[./]1900)[T\s]+/, '');
	const [, hours, minutes, seconds, half] =
		/^(\d{1,3}):(\d{1,2})(?::(\d{1,2})(?:[.,]0+)?)?\s?([ap])?\.?\s?(?:m\.?)?$/i.exec(plain) ?? [];
	if (minutes === undefined || Number(minutes) >= 60 || (seconds !== undefined && Number(seconds) > 0))
		return undefined;
	const isAfternoon = half?.toLowerCase() === 'p';
	const hour = half === undefined ? Number(hours) : (Number(hours) % 12) + (isAfternoon ? 12 : 0);
	return hour * 60 + Number(minutes);
}

const minutesOfDay = 24 * 60;
/** How far a part of a day may be from the time that it is: spreadsheets write seven figures and more. */
const dayTolerance = 1e-5;

function isTimeOf(before: string, after: string): boolean {
	const typed = minutesOf(before);
	if (typed === undefined || !/^\d{1,3}:\d{1,2}(?::0{1,2})?$/.test(before)) return false;
	const made = minutesOf(after);
	if (made !== undefined) return typed % minutesOfDay === made % minutesOfDay;
	const partOfDay = /^\d{1,2}[.,]\d{3,}$/.test(after) ? Number(after.replace(',', '.')) : undefined;
	return partOfDay !== undefined && Math.abs(partOfDay - typed / minutesOfDay) < dayTolerance;
}

/** From so many figures on a spreadsheet shows or keeps fewer of a number. */
const manyFigures = 10;
/** To so few decimals a cell with a format of numbers is rounded, where more were typed. */
const shownDecimals = 2;

function isNumberOf(before: string, after: string): boolean {
	const made = decimalsOf(after);
	if (made.length === 0) return isPercentOf(before, after);
	const typed = [...decimalsOf(before), ...valueOfFraction(before)];
	const isExponent = /\de[+-]?\d/i.test(after);
	return (
		typed.some((one) =>
			made.some(
				(other) =>
					isSameDecimal(one, other) ||
					((isExponent || countFigures(one) >= manyFigures || isShownShort(one, other)) && isRounded(one, other)),
			),
		) || isPercentOf(before, after)
	);
}

const isShownShort = (exact: Decimal, shown: Decimal): boolean =>
	exact.power < -shownDecimals && shown.power >= -shownDecimals;

/** `12 %` as a share of one, and the other way round. */
function isPercentOf(before: string, after: string): boolean {
	const share = (text: string): readonly Decimal[] => {
		const [, number] = /^(.*\d)\s*%$/.exec(text) ?? [];
		return number === undefined ? [] : decimalsOf(number).map(({ figures, power }) => ({ figures, power: power - 2 }));
	};
	const [typed, made] = [share(before), share(after)];
	if (typed.length === 0) return false;
	const others = made.length > 0 ? made : decimalsOf(after);
	return typed.some((one) => others.some((other) => isSameDecimal(one, other)));
}

const signsOfFractions: Readonly<Record<string, string>> = {
	...{ '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3' },
};

/** The number that a fraction is, `20 1/2`, `2⅝`, where it ends after some decimals. */
function valueOfFraction(text: string): readonly Decimal[] {
	const plain = text.replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/, (sign) => ` ${signsOfFractions[sign]!}`).trim();
	const [, whole, numerator, denominator] = /^(?:(\d{1,6})[\s-]+)?(\d{1,4})[/⁄](\d{1,4})$/.exec(plain) ?? [];
	if (denominator === undefined || Number(denominator) === 0) return [];
	const scale = 12;
	const [top, below] = [BigInt(numerator!), BigInt(denominator)];
	const figures = BigInt(whole ?? 0) * 10n ** 12n + (top * 10n ** 12n) / below;
	return [trimmed({ figures, power: -scale })];
}

function trimmed({ figures, power }: Decimal): Decimal {
	let [left, at] = [figures, power];
	while (left !== 0n && left % 10n === 0n) [left, at] = [left / 10n, at + 1];
	return { figures: left, power: left === 0n ? 0 : at };
}

const truths = ['true wahr vrai vero verdadero waar', 'false falsch faux falso onwaar'];

function isTruthOf(before: string, after: string): boolean {
	const among = (text: string) => truths.findIndex((words) => words.split(' ').includes(text.toLowerCase()));
	return after === after.toUpperCase() && among(after) >= 0 && among(before) === among(after);
}

const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ');

/** Windows-1252 from 80 to 9F; see `decodeText`, which reads it. */
const upperSigns = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** What comes of a letter of UTF-8 that is read as Windows-1252: `ü` as `Ã¼`. */
function misread(sign: string): string {
	const code = sign.codePointAt(0)!;
	if (code < 0x80) return sign;
	const bytes =
		code < 0x800
			? [0xc0 | (code >> 6), 0x80 | (code & 0x3f)]
			: code < 0x10000
				? [0xe0 | (code >> 12), 0x80 | ((code >> 6) & 0x3f), 0x80 | (code & 0x3f)]
				: [0xf0 | (code >> 18), 0x80 | ((code >> 12) & 0x3f), 0x80 | ((code >> 6) & 0x3f), 0x80 | (code & 0x3f)];
	return bytes
		.map((byte) => (byte >= 0x80 && byte < 0xa0 ? upperSigns[byte - 0x80]! : String.fromCharCode(byte)))
		.join('');
}

/** A text as it is where it was written in UTF-8 and read as Windows-1252. */
export const misreadText = (text: string): string => Array.from(text.normalize('NFC'), misread).join('');

/** Whether letters were lost: read in another encoding, or replaced by question marks. */
function isSpoiled(before: string, after: string): boolean {
	if (!/[^\0-\x7f]/.test(before)) return false;
	const plain = before.normalize('NFC');
	const bare = (text: string) => text.replaceAll('\u00a0', ' ');
	if (bare(misreadText(plain)) === bare(after)) return true;
	if (!/[?_\ufffd]/.test(after)) return false;
	const letters = Array.from(plain);
	const others = Array.from(after);
	let at = 0;
	for (const letter of letters) {
		if (others[at] === letter) at++;
		else if (letter > '\x7f' && /^[?_\ufffd]$/.test(others[at] ?? '')) {
			at++;
			// A letter of several bytes may leave a mark for each.
			while (at < others.length && others[at] === '\ufffd') at++;
		} else return false;
	}
	return at === others.length;
}
