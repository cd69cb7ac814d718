import { getPaperSize } from '@cityssm/paper-sizes';
import { describe, expect, test } from 'vitest';
import published from '../../shared/check-values/paperSizes.json' with { type: 'json' };
import { inches, mm } from '../../src/core/length/length.ts';
import { namedSize, paperSizes } from '../../src/core/length/paperSizes.ts';

const toLength = { mm, in: inches };

describe.each(published)('$source', ({ unit, cases }) => {
	test.each(Object.entries(cases as Record<string, number[]>))('%s is %j', (name, [width, height]) => {
		const read = toLength[unit as 'mm' | 'in'];
		expect(namedSize(name, [])).toMatchObject({ width: read(width!), height: read(height!) });
	});
});

describe('the tables of the package @cityssm/paper-sizes', () => {
	const isoNames = ['A', 'B'].flatMap((series) => Array.from({ length: 11 }, (_, number) => `${series}${number}`));
	const ansiNames = ['A', 'B', 'C', 'D', 'E'].map((letter) => `ANSI ${letter}`);
	const names = [...isoNames, ...ansiNames, 'Letter', 'Legal', 'Tabloid', 'Ledger'];

	test('name what is named here, but for A3+ and the photographic sizes', () =>
		expect(paperSizes.map(({ name }) => name).filter((name) => !/^(A3\+|\d+R)$/.test(name))).toEqual(names));

	test.each(names)('%s', (name) => {
		const size = getPaperSize(name as 'A4');
		const read = toLength[size.unit];
		expect(namedSize(name, [])).toMatchObject({ width: read(size.width), height: read(size.height) });
	});
});
