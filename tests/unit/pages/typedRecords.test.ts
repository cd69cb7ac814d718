import { expect, test } from 'vitest';
import { typedRecords } from '../../../src/pages/typedRecords.ts';

test('what comes with a frame is one of the words of its field, however a file says it', () => {
	const frames = [['glazing', 'backing'], ['backing'], [], 'both', undefined].map((includes) => ({ includes }));
	expect(typedRecords(frames).map(({ includes }) => includes)).toEqual([
		...['both', 'backing', undefined, 'both', undefined],
	]);
	expect(typedRecords('none')).toEqual([]);
});
