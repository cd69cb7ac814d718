import { saidColumn } from '../core/imports/columnMatching.ts';
import { everyPart } from '../core/show/everyPart.ts';
import { isSameValue } from '../core/values/isSameValue.ts';
import type { KeyedItems } from '../core/show/keyedList.ts';
import type { Part } from '../core/show/parts.ts';
import { isRecord } from '../core/values/isRecord.ts';

/** What is wrong with a record as it is kept. */
export interface Damage {
	/** In words, without its place: `order is not a number`. */
	readonly problem: string;
	/** What of it can still be used; undefined: nothing. */
	readonly instead?: unknown;
}

type Check = (key: IDBValidKey, value: unknown) => Damage | undefined;
type AnyPart = Part<unknown, unknown>;

const parts = new Map(everyPart);

/**
 * What is wrong with a record of a store, and what of it can still be used. Whatever reads a store asks this first: no
 * record of another form gets further.
 */
export function damageIn(store: string, key: IDBValidKey, value: unknown): Damage | undefined {
	const items = parts.get(store)?.apart;
	const check = checks[store] ?? (items && checkItem(store, parts.get(store)!, items));
	try {
		return check?.(key, value);
	} catch (cause) {
		return { problem: `it has no known form (${(cause as Error).message})` };
	}
}

/** What is wrong with a part's value, by the way in which it is written to files and read; a damaged one may not even be written. */
function problemIn(name: string, part: AnyPart, value: unknown): string | undefined {
	try {
		const read = part.read(part.write(value));
		return 'problem' in read ? read.problem : undefined;
	} catch {
		return `${name} has no known form`;
	}
}

const checkItem =
	(name: string, part: AnyPart, items: KeyedItems<object>): Check =>
	(key, value) => {
		const read = part.read(part.write([value]));
		if ('problem' in read)
			return {
				problem: read.problem
					.slice(`${name}[0]`.length)
					.replace(/^ (?=is )/, 'it ')
					.replace(/^\./, ''),
			};
		const [item] = read.value as readonly [object];
		const [, ...ofItem] = Array.isArray(key) ? (key as readonly unknown[]) : [];
		if (!isSameValue(ofItem, items.keyOf(item))) return { problem: 'it lies under the key of another' };
		const missing = Object.keys(item).filter((entry) => !Object.hasOwn(value as object, entry));
		return missing.length > 0 ? { problem: `${missing.join(' and ')} is missing`, instead: item } : undefined;
	};

const isText = (value: unknown): value is string => typeof value === 'string';
const isNumber = (value: unknown): value is number => Number.isFinite(value);
const isRevision = (value: unknown): boolean => Number.isSafeInteger(value) && (value as number) >= 1;

/** What is known of a show beside its parts, and what it has to be where it is there. */
const aboutShow: Readonly<Record<string, (value: unknown) => boolean>> = {
	revision: isRevision,
	atBench: isText,
	atKnife: isText,
	blankRows: isNumber,
	openedAt: isNumber,
	isArchived: (value) => typeof value === 'boolean',
	deletedAt: isNumber,
	left: (value) => isRecord(value) && (value['place'] === undefined || isText(value['place'])),
	copied: (value) =>
		isRecord(value) &&
		isNumber(value['at']) &&
		isNumber(value['revision']) &&
		(value['what'] === 'rows' || value['what'] === 'show'),
	takenBack: isNumber,
};

/** A show's record is mended part by part: what cannot be read is left out, the rest stays. */
const checkShow: Check = (key, value) => {
	if (!isText(key) || key === '') return { problem: 'its id is not a text' };
	if (!isRecord(value)) return { problem: 'it is not a record' };
	const problems: string[] = [];
	const mended = new Map(Object.entries(value));
	for (const [name, isRight] of Object.entries(aboutShow)) {
		if (mended.has(name) ? isRight(value[name]) || value[name] === undefined : name !== 'revision') continue;
		problems.push(`${name} is ${mended.has(name) ? 'of the wrong kind' : 'missing'}`);
		mended.delete(name);
	}
	if (!isRevision(mended.get('revision'))) mended.set('revision', 1);
	for (const [name, part] of everyPart) {
		if (part.apart) continue;
		const held = mended.get(name);
		if (held === undefined && !part.isInEvery) continue;
		const problem = held === undefined ? `${name} is missing` : problemIn(name, part, held);
		if (problem === undefined) continue;
		problems.push(problem);
		mended.set(name, Array.isArray(part.nothing) && Array.isArray(held) ? itemsRead(name, part, held) : part.nothing);
	}
	if (problems.length === 0) return undefined;
	return { problem: problems.join('; '), instead: Object.fromEntries(mended) };
};

/** The items of a list that can be read together; of two of one name, the first. */
const itemsRead = (name: string, part: AnyPart, list: readonly unknown[]): readonly unknown[] =>
	list.reduce<readonly unknown[]>(
		(sound, item) => (problemIn(name, part, [...sound, item]) === undefined ? [...sound, item] : sound),
		[],
	);

const checkExchange: Check = (key, value) => {
	if (!isRecord(value)) return { problem: 'it is not a record' };
	const { id, direction, fileName, at, unit, columns, rows, stands } = value;
	const wrong = Object.entries({
		id: isText(id) && Array.isArray(key) && key[1] === id,
		direction: direction === 'given' || direction === 'taken',
		fileName: isText(fileName),
		at: isNumber(at),
		unit: unit === 'mm' || unit === 'cm' || unit === 'in',
		columns: columns === undefined || (Array.isArray(columns) && columns.every(isText)),
		stands: typeof stands === 'boolean',
	}).find(([, isRight]) => !isRight);
	if (wrong) return { problem: `${wrong[0]} is of the wrong kind` };
	const problem = problemIn('rows', parts.get('rows')!, rows);
	return problem === undefined ? undefined : { problem };
};

const checkMatching: Check = (key, value) => {
	if (!isText(key)) return { problem: 'its headers are not a text' };
	if (!isRecord(value)) return { problem: 'it is not a record' };
	const isMeant = (column: unknown) => column === 'none' || (isText(column) && saidColumn(column) !== undefined);
	const wrong = Object.entries(value).find(([, column]) => !isMeant(column));
	return wrong && { problem: `the column “${wrong[0]}” means no column` };
};

const checks: Readonly<Record<string, Check>> = {
	shows: checkShow,
	exchanges: checkExchange,
	matchings: checkMatching,
};
