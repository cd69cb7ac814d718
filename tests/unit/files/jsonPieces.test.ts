import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonPieces } from '../../../src/files/jsonPieces.ts';

test('the pieces are what JSON.stringify gives, however long and deep, with what it leaves out', () => {
	const rows = Array.from({ length: 120 }, (_, at) => ({ id: `p${at}`, typed: { title: 'a\nb', note: undefined } }));
	fc.assert(
		fc.property(fc.jsonValue(), fc.nat(3), (value, depth) => {
			let document: unknown = { value, nothing: undefined, rows, none: [], empty: {} };
			for (let at = 0; at < depth; at++) document = at % 2 ? { document } : [document, undefined, 7];
			expect([...jsonPieces(document)].join('')).toBe(JSON.stringify(document, null, '\t'));
			expect([...jsonPieces(value)].join('')).toBe(JSON.stringify(value, null, '\t'));
		}),
	);
});

test('a long list is written item by item, wherever it stands', () => {
	const rows = Array.from({ length: 5000 }, (_, at) => ({ id: at }));
	const longest = Math.max(...[...jsonPieces({ shows: [{ rows }] })].map(({ length }) => length));
	expect(longest).toBeLessThan(100);
});
