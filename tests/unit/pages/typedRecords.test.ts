import { expect, test } from 'vitest';
import {
	backingFields,
	boardFields,
	frameFields,
	glazingFields,
	paperFields,
	supplyFields,
	typedRecords,
} from '../../../src/pages/typedRecords.ts';

const sheet = ['name', 'kind', 'width', 'height', 'thickness', 'density', 'price', 'pack', 'count', 'trim'];

test.each([
	['boards', boardFields, [...sheet, 'colour', 'grain']],
	['glazing', glazingFields, [...sheet, 'material']],
	['backing', backingFields, sheet],
	[
		'frames',
		frameFields,
		[
			...['name', 'width', 'height', 'rebateWidth', 'rebateHeight', 'clearance', 'depth', 'lip', 'moulding'],
			...['weight', 'price', 'count', 'stick', 'includes'],
		],
	],
	['papers', paperFields, ['name', 'width', 'height', 'roll', 'margin', 'surface', 'edge', 'price', 'pack', 'count']],
	['supplies', supplyFields, ['kind', 'name', 'each', 'price', 'pack', 'count']],
])('all that a file may say of %s can be typed', (_, fields, keys) =>
	expect(fields.map(({ key }) => key).sort()).toEqual([...keys].sort()),
);

test('what comes with a frame is one of the words of its field, however a file says it', () => {
	const frames = [['glazing', 'backing'], ['backing'], [], 'both', undefined].map((includes) => ({ includes }));
	expect(typedRecords(frames).map(({ includes }) => includes)).toEqual([
		...['both', 'backing', undefined, 'both', undefined],
	]);
	expect(typedRecords('none')).toEqual([]);
});

test('a density that is not typed is the usual one of its material', () => {
	const greyOf = (fields: typeof boardFields, material?: string) =>
		fields.find(({ key }) => key === 'density')?.byDefault?.({ material });
	expect([greyOf(boardFields), greyOf(backingFields), greyOf(glazingFields)]).toEqual([0.7, 0.7, 2.5]);
	expect([greyOf(glazingFields, 'glass'), greyOf(glazingFields, 'acrylic')]).toEqual([2.5, 1.19]);
});
