import { expect, test } from 'vitest';
import { fillPages } from '../../../../src/core/order/fillPages.ts';

const section = (head: string, ...sizes: number[]) => ({
	head,
	headMm: 10,
	items: sizes.map((mm, place) => ({ item: `${head}${place + 1}`, mm })),
});
const inWords = (pages: ReturnType<typeof fillPages<string, string>>) =>
	pages.map((parts) =>
		parts.map(({ head, isContinued, items }) => `${head}${isContinued ? '…' : ''}: ${items.join(' ')}`),
	);

test.each([
	{ what: 'one after the other', sections: [section('a', 20, 20), section('b', 30)], pages: [['a: a1 a2', 'b: b1']] },
	{
		what: 'a section that goes on has its head again',
		sections: [section('a', 40, 40, 40)],
		pages: [['a: a1 a2'], ['a…: a3']],
	},
	{
		what: 'a head goes with its first item',
		sections: [section('a', 40, 35), section('b', 15)],
		pages: [['a: a1 a2'], ['b: b1']],
	},
	{ what: 'to the last millimetre', sections: [section('a', 45, 45)], pages: [['a: a1 a2']] },
	{
		what: 'what is larger than a page has its own',
		sections: [section('a', 20, 200, 20)],
		pages: [['a: a1'], ['a…: a2'], ['a…: a3']],
	},
	{ what: 'a section without items has no head', sections: [section('a'), section('b', 1)], pages: [['b: b1']] },
	{ what: 'nothing', sections: [], pages: [] },
])('$what', ({ sections, pages }) => expect(inWords(fillPages(sections, 100))).toEqual(pages));
