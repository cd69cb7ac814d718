import { expect, test } from 'vitest';
import { codesOf, resultOf, rowOf, wideShow } from './rowOf.ts';
import { describeRules } from './ruleCases.ts';

describeRules([
	{
		code: 'uneven',
		level: 'note',
		told: 'shape 1:1',
		says: 'Side 149 and top 70 differ by 79 mm',
		not: 'shape 1:1, bottom weight optical centre',
	},
	{
		code: 'uneven',
		level: 'note',
		told: 'shape 1:1, mount 500 x 400',
		says: 'differ by',
		not: 'shape 3:2, mount 500 x 400',
	},
	{
		code: 'uneven',
		level: 'note',
		told: 'shape 1:1, side 149, top 70, bottom 78, window width 302', // as shown: typing that changes nothing
		says: 'Side 149 and top 70 differ by 79 mm',
		not: 'shape 1:1, bottom weight optical centre',
	},
	{
		code: 'uneven',
		level: 'look',
		told: 'picture 300 x 300',
		says: 'Side 153 and top 74 differ by 79 mm',
		not: 'picture 456 x 306',
	},
	{
		code: 'uneven',
		level: 'look',
		told: 'shape 1:1, top 60',
		says: 'and top 60 differ by',
		not: 'shape 3:2, top 70',
	},
	{
		code: 'bottom-heavy',
		level: 'look',
		told: 'picture 456 x 306, top 60',
		says: 'The bottom 90 is 30 mm wider than the top 60',
		mend: 'Set top to 71',
		not: 'picture 456 x 306, bottom 90', // the same, but somebody chose it
	},
	{
		code: 'weight-lost',
		level: 'note',
		told: 'picture 456 x 306, top 70, bottom weight 10 %',
		says: 'The bottom 80 is 10 mm over the top 70; it should be 7 mm wider',
		mend: 'Set top to 71',
		not: 'picture 456 x 306, top 71, bottom weight 10 %',
	},
	{
		code: 'weight-lost',
		level: 'note',
		told: 'picture 456 x 306, top 75, bottom weight 12 %',
		says: 'The bottom is 75, as wide as the top; it should be 9 mm wider',
		not: 'picture 456 x 306, top 75, bottom weight none',
	},
	{
		code: 'weight-lost',
		level: 'note',
		told: 'picture 456 x 306, top 80, bottom weight 10 %',
		says: 'The bottom 70 is 10 mm under the top 80; it should be 8 mm wider',
		not: 'picture 456 x 306, top 80, bottom weight none',
	},
	{
		code: 'weight-lost',
		level: 'note',
		told: 'picture 456 x 306, top 72, bottom 78, bottom weight 9 mm',
		says: 'it should be 9 mm wider',
		not: 'picture 456 x 306, top 72, bottom 80, bottom weight 9 mm, mount fit', // within a graduation
	},
	{
		code: 'weight-lost',
		level: 'note',
		told: 'window 400 x 260, top 90, bottom weight optical centre',
		says: 'The bottom 100 is 10 mm over the top 90; it should be',
		not: 'window 400 x 260, bottom weight optical centre',
	},
]);

test('a border that is lost to rounding alone is no weight lost', () => {
	for (let width = 200; width <= 500; width += 7)
		for (const weight of ['5 %', '10 %', '40 %', '110 %', '17 mm'])
			expect(codesOf(`picture ${width} x ${Math.round(width / 1.4)}, bottom weight ${weight}`)).not.toContain(
				'weight-lost',
			);
});

/** A club's show: one mount size by its rules, prints of every shape, a few printed already, one of them square and small. */
const clubPrints = [
	...['3:2', '3:2', '3:2', '2:3', '2:3', '4:3', '4:3', '3:4', '5:4', '4:5', '16:9', '16:9', '1:1', '1:1', '1:1'],
	...['2:1', '3:1', '7:5'],
].map((shape) => `shape ${shape}`);
const printed = ['picture 370 x 247', 'picture 200 x 200'];

test('twenty prints of mixed shapes in one mount size are told at most three looks in all', () => {
	const lines = [...clubPrints, ...printed];
	expect(lines).toHaveLength(20);
	const show = { limits: { exact: '500 x 400 mm', within: '2 mm' } };
	const found = lines.flatMap((line) => resultOf(rowOf(line), show).findings);
	expect(found.filter(({ level }) => level === 'stop')).toEqual([]);
	expect(found.filter(({ level }) => level === 'look').map(({ message }) => message)).toHaveLength(1);
	// What nobody can help is still there to be read.
	expect(found.filter(({ code, level }) => code === 'uneven' && level === 'note').length).toBeGreaterThan(3);
});

test('a shape in a mount that suits it is told nothing', () => expect(codesOf('shape 3:2', wideShow)).toEqual([]));
