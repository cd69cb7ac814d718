import { expect, test } from 'vitest';
import { saidTwice, suggestColumns } from '../../../../src/core/imports/columnMatching.ts';

test('a column in doubt is suggested to be what no other is', () => {
	expect(
		suggestColumns(
			[
				['picture width', 'mount width'],
				['picture width', 'mount width'],
				['picture width', 'mount width'],
				['mount height'],
				[],
			],
			['mount height'],
		),
	).toEqual(['picture width', 'mount width', 'none', 'none', 'none']);
});

test('two columns that are said to be the same are told by name', () => {
	expect(saidTwice('side')).toBe(
		'Two columns are said to be side. Choose another for one of them, or leave one as it is.',
	);
});
