import { expect, test } from 'vitest';
import { nameParts } from '../../../../src/core/pictures/nameOfFile.ts';

test.each([
	['012_winter-light.jpg', '12', 'Winter light'],
	['7b Harbour.JPEG', '7b', 'Harbour'],
	['No. 4 - Tide.png', '4', 'Tide'],
	['winterLight_II.tif', undefined, 'Winter Light II'],
	['Tide (1).jpg', undefined, 'Tide'],
	['Tide copy 2.jpg', undefined, 'Tide'],
	['Tide-Edit.jpg', undefined, 'Tide'],
	['tide_final_v3_2048px.webp', undefined, 'Tide'],
	['Tide 6000x4000.jpg', undefined, 'Tide'],
	['2024-05-01 Tide.jpg', undefined, 'Tide'],
	['20240501_Tide.jpg', undefined, 'Tide'],
	['C:\\shows\\2026\\3 Tide.jpg', '3', 'Tide'],
	['Caf%C3%A9.jpg', undefined, 'Café'],
	['100 % wool.jpg', '100', '% wool'],
	['2024_Harbour.jpg', undefined, '2024 Harbour'],
	['1984.jpg', undefined, '1984'],
	['1.5 Miles.jpg', undefined, '1.5 Miles'],
	['1. Miles.jpg', '1', 'Miles'],
	['spider-web.jpg', undefined, 'Spider web'],
	['copy.jpg', undefined, 'Copy'],
	['3.jpg', '3', undefined],
	['IMG_0012.JPG', undefined, undefined],
	['_DSC1234.jpg', undefined, undefined],
	['DSCF0012-Edit.jpg', undefined, undefined],
	['PXL_20240501_120000123.jpg', undefined, undefined],
	['P1010012.JPG', undefined, undefined],
	['20240501_120000.jpg', undefined, undefined],
	['12 IMG_4433.jpg', '12', undefined],
	['', undefined, undefined],
	['.jpg', undefined, undefined],
])('%s: number %s, title %s', (name, number, title) => {
	expect(nameParts(name)).toMatchObject({ number, title });
});

test.each([
	`a_1111x${'11111111x'.repeat(3000)}q.jpg`,
	`img${'_'.repeat(60_000)}q.jpg`,
	`img${'_1'.repeat(30_000)}q.jpg`,
	`${'a '.repeat(30_000)}copy${' '.repeat(30_000)}.jpg`,
	`${'(1)'.repeat(30_000)}.jpg`,
	`tide${'-'.repeat(60_000)}.jpg`,
])('a name made to hold the page up does not (case %#)', (name) => {
	expect(nameParts(name).words.join('').length).toBeLessThanOrEqual(name.length);
});
