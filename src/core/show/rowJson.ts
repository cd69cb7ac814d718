import { isProblem, type Reading, type Unit } from '../length/reading.ts';
import { isRecord } from '../values/isRecord.ts';
import { nestingProblem } from '../values/nesting.ts';
import { shownText } from '../values/shownText.ts';
import { isColumnName } from './columns.ts';
import { byOrder } from './orderNumbers.ts';
import type { PictureOfRow, Row } from './row.ts';

/** Reads the rows of a show file, which has them as they are. @returns a problem that names the place */
export function readRowsJson(stored: unknown): Reading<readonly Row[]> {
	if (!Array.isArray(stored)) return { problem: 'rows is not a list' };
	const rows: Row[] = [];
	const places = new Map<string, number>();
	for (const [place, each] of stored.entries()) {
		const row = readRow(each, place);
		if (isProblem(row)) return { problem: `rows[${place}]${row.problem}` };
		const before = places.get(row.value.id);
		if (before !== undefined) return { problem: `rows[${place}].id is that of rows[${before}] too` };
		places.set(row.value.id, place);
		rows.push(row.value);
	}
	return { value: inOrder(rows) };
}

/** Rows by their order numbers; by their place where these are not all different. */
function inOrder(rows: readonly Row[]): readonly Row[] {
	if (rows.length < 2) return rows;
	if (new Set(rows.map(({ order }) => order)).size < rows.length)
		return rows.map((row, place) => ({ ...row, order: place + 1 }));
	return rows.toSorted(byOrder);
}

/** A row with all that is stored of it, what this version does not know among it. */
function readRow(stored: unknown, place: number): Reading<Row> {
	if (!isRecord(stored)) return { problem: ' is not a record' };
	const { id, order = place + 1, typed, units, extra, picture, ...others } = stored;
	if (typeof id !== 'string' || id === '') return { problem: '.id is not a text' };
	if (typeof order !== 'number' || !Number.isFinite(order)) return { problem: '.order is not a number' };
	const texts = readTexts(typed, '.typed');
	if (isProblem(texts)) return texts;
	const foreign = readTexts(extra, '.extra');
	if (isProblem(foreign)) return foreign;
	const ownUnits = readTexts(units, '.units');
	if (isProblem(ownUnits)) return ownUnits;
	const odd = ownUnits.value.find(([column, unit]) => !isColumnName(column) || !isUnit(unit));
	if (odd !== undefined) return { problem: `.units gives “${shownText(odd[0])}” the unit “${shownText(odd[1])}”` };
	const tooDeep = Object.keys(others).find((key) => nestingProblem(others[key]) !== undefined);
	if (tooDeep !== undefined) return { problem: `.${tooDeep}${nestingProblem(others[tooDeep])!}` };
	const given = readPicture(picture);
	// A column that this version does not have is kept as one of another program.
	const ours = texts.value.filter(([column, text]) => isColumnName(column) && text.trim() !== '');
	const theirs = [...texts.value.filter(([column]) => !isColumnName(column)), ...foreign.value];
	return {
		value: {
			...others,
			id,
			order,
			typed: Object.fromEntries(ours),
			...(ownUnits.value.length > 0 && { units: Object.fromEntries(ownUnits.value) }),
			...(given && { picture: given }),
			...(theirs.length > 0 && { extra: Object.fromEntries(theirs) }),
		},
	};
}

/** Which picture a row was given; nothing where that says nothing of use. */
function readPicture(stored: unknown): PictureOfRow | undefined {
	if (!isRecord(stored)) return undefined;
	const { hash, file } = stored;
	return isHash(hash) && typeof file === 'string' ? { hash, file } : undefined;
}

/** Whether a value is the hash of a picture's bytes. */
export const isHash = (value: unknown): value is string => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);

const isUnit = (text: string): text is Unit => text === 'mm' || text === 'cm' || text === 'in';

function readTexts(stored: unknown, key: string): Reading<[string, string][]> {
	if (stored === undefined) return { value: [] };
	if (!isRecord(stored)) return { problem: `${key} is not a record` };
	const entries = Object.entries(stored);
	const odd = entries.find(([, text]) => typeof text !== 'string');
	return odd === undefined
		? { value: entries as [string, string][] }
		: { problem: `${key}[${JSON.stringify(shownText(odd[0]))}] is not a text` };
}
