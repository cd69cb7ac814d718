import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bytesOfId, isMadeId, madeId } from '../../../../src/core/values/madeId.ts';

test('every name that is made is known as one, and by itself', () =>
	fc.assert(
		fc.property(fc.uint8Array({ minLength: bytesOfId, maxLength: bytesOfId }), (bytes) => {
			const id = madeId(bytes);
			expect(id).toMatch(/^p[2-9a-z_]{9}$/); // in shows that are kept, whatever is changed here
			expect(isMadeId(id)).toBe(true);
			for (const other of [id.slice(1), `${id}2`, id.slice(0, -1), id.toUpperCase()])
				expect(isMadeId(other)).toBe(false);
		}),
	));

test.each(['', 'P-17', 'pier', 'p12345678', 'p0abcdefgh', 'p2345-6789', 'p234il6789'])('“%s” was typed', (text) =>
	expect(isMadeId(text)).toBe(false),
);
