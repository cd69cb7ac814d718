import fc from 'fast-check';

/** A place in a document: the keys and places of lists that lead there. */
export type Path = readonly (string | number)[];

/** One way to harm a document. */
export interface Mutation {
	readonly name: string;
	readonly text: string;
}

/** Every place in a document but its whole. */
export function placesIn(value: unknown, path: Path = []): readonly Path[] {
	if (typeof value !== 'object' || value === null) return [];
	const keys: readonly (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
	return keys.flatMap((key) => [
		[...path, key],
		...placesIn((value as Record<string | number, unknown>)[key], [...path, key]),
	]);
}

/** What a place holds. */
export const at = (document: unknown, path: Path): unknown =>
	path.reduce<unknown>((value, key) => (value as Record<string | number, unknown>)[key], document);

/** A copy of a document in which a place holds something else; `gone` takes it out. */
export function withAt(document: unknown, [key, ...rest]: Path, value: unknown): unknown {
	if (key === undefined) return value;
	const next = (each: unknown) => (rest.length === 0 ? value : withAt(each, rest, value));
	if (Array.isArray(document)) {
		const list: readonly unknown[] = document;
		return list.flatMap((each, place) =>
			place !== key ? [each] : rest.length === 0 && value === gone ? [] : [next(each)],
		);
	}
	const entries = Object.entries(document as object).flatMap(([name, each]) =>
		name !== key ? [[name, each]] : rest.length === 0 && value === gone ? [] : [[name, next(each)]],
	);
	return Object.fromEntries(entries) as unknown;
}

/** In the place of a value: it is not there. */
export const gone = Symbol('gone');

/** Stands in a document for a text of JSON that no value gives: nested without end, with keys of prototypes. */
const raw = '%raw%';
const withRaw = (document: unknown, path: Path, json: string): string =>
	JSON.stringify(withAt(document, path, raw)).replace(`"${raw}"`, () => json);

const nested = (depth: number, open: string, close: string) => `${open.repeat(depth)}0${close.repeat(depth)}`;

/** Values of every kind, and such as are hardly one. */
const otherValues: readonly unknown[] = [
	null,
	true,
	false,
	0,
	-1,
	1.5,
	1e308,
	-0,
	'',
	' ',
	'x',
	'\0',
	'\ud800',
	'999999999999999999999',
	'__proto__',
	'constructor',
	'x'.repeat(100_000),
	[],
	[null],
	[[]],
	{},
	{ length: 1e9 },
	{ toString: 1, valueOf: 1, toJSON: 1, then: 1 },
];

const rawValues: readonly (readonly [name: string, json: string])[] = [
	['lists 10,000 deep', nested(10_000, '[', ']')],
	['records 10,000 deep', nested(10_000, '{"a":', '}')],
	['a number beyond all numbers', '1e999'],
	['keys of prototypes', '{"__proto__":{"polluted":"yes"},"constructor":{"prototype":{"polluted":"yes"}}}'],
	['one key twice', '{"id":"a","id":1}'],
];

/**
 * A document harmed in one of every way: a key dropped, twice, renamed or of a prototype, a value of another type, two
 * values swapped, nested 10,000 deep, the text cut off, or signs in it changed.
 */
export function mutationOf(document: unknown): fc.Arbitrary<Mutation> {
	const places = placesIn(document);
	const text = JSON.stringify(document, null, '\t');
	const place = fc.constantFrom(...places);
	const named = (what: string, path: Path) => `${what}: ${path.join('.')}`;
	const json = (name: string, changed: unknown): Mutation => ({ name, text: JSON.stringify(changed) });
	return fc.oneof(
		place.map((path) => json(named('dropped', path), withAt(document, path, gone))),
		fc
			.tuple(place, fc.constantFrom(...otherValues))
			.map(([path, value]) =>
				json(named(`is now ${JSON.stringify(value).slice(0, 30)}`, path), withAt(document, path, value)),
			),
		fc.tuple(place, place).map(([a, b]) => {
			const [first, second] = [at(document, a), at(document, b)];
			const isInside = a.every((key, i) => b[i] === key) || b.every((key, i) => a[i] === key);
			const changed = isInside ? withAt(document, a, second) : withAt(withAt(document, a, second), b, first);
			return json(`${named('swapped', a)} and ${b.join('.')}`, changed);
		}),
		fc.tuple(place, fc.constantFrom(...rawValues)).map(([path, [what, value]]) => ({
			name: named(`holds ${what}`, path),
			text: withRaw(document, path, value),
		})),
		fc
			.tuple(place, fc.constantFrom('__proto__', 'constructor', 'toString', 'hasOwnProperty', 'then'))
			.map(([path, key]) => {
				const value = at(document, path);
				const holds = JSON.stringify(value);
				if (typeof value !== 'object' || value === null || Array.isArray(value))
					return { name: named(`is a record of ${key}`, path), text: withRaw(document, path, `{"${key}":${holds}}`) };
				const inside = holds.slice(1, -1);
				const more = `{"${key}":${holds}${inside === '' ? '' : `,${inside}`}}`;
				return { name: named(`has ${key} too`, path), text: withRaw(document, path, more) };
			}),
		place.map((path) => {
			const list = at(document, path.slice(0, -1));
			if (!Array.isArray(list)) return json(named('dropped', path), withAt(document, path, gone));
			const twice: unknown[] = [...(list as readonly unknown[]), at(document, path)];
			return json(named('stands twice', path), path.length === 1 ? twice : withAt(document, path.slice(0, -1), twice));
		}),
		fc.nat(text.length - 1).map((end) => ({ name: `cut off after ${end} signs`, text: text.slice(0, end) })),
		fc
			.tuple(
				fc.nat(text.length - 1),
				fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '\0', '\n', '0', '-', '\\', '\ufffd'),
			)
			.map(([index, sign]) => ({
				name: `sign ${index} is now ${JSON.stringify(sign)}`,
				text: text.slice(0, index) + sign + text.slice(index + 1),
			})),
	);
}
