import { expect, test } from 'vitest';
import { isFullOfPictures, roomRunsShort } from '../../../../src/core/device/picturesProblem.ts';

const mb = (count: number) => count * 1e6;

test.each([
	{ usage: 0, quota: 1000, isShort: false, isFull: false },
	{ usage: 799, quota: 1000, isShort: false, isFull: false },
	{ usage: 800, quota: 1000, isShort: true, isFull: false }, // four fifths are used
	{ usage: 49, quota: 100, isShort: false, isFull: false },
	{ usage: 50, quota: 100, isShort: true, isFull: false }, // 50 MB are left, too few for long
	{ usage: 990, quota: 1000, isShort: true, isFull: false },
	{ usage: 991, quota: 1000, isShort: true, isFull: true }, // what is typed has the last 10 MB
	{ usage: 1100, quota: 1000, isShort: true, isFull: true },
	{ usage: 5, quota: 0, isShort: false, isFull: false }, // the browser does not say
])('of $quota MB $usage are used: said $isShort, full $isFull', ({ usage, quota, isShort, isFull }) => {
	expect(roomRunsShort(mb(usage), mb(quota)) !== undefined).toBe(isShort);
	expect(isFullOfPictures(mb(usage), mb(quota))).toBe(isFull);
});

test('it says how much is left of how much, and what to do; nothing where that is not known', () => {
	expect(roomRunsShort(mb(60), mb(100))).toMatch(/^Room runs short: 40 MB of the 100 MB .* Save a backup, and delete/);
	expect(roomRunsShort(undefined, mb(100))).toBeUndefined();
	expect(isFullOfPictures(mb(100), undefined)).toBe(false);
});
