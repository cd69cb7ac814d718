import { expect, test } from 'vitest';
import { unitOfRegion } from '../../../../src/core/length/unitOfRegion.ts';

// Unicode CLDR, measurement systems by region; from memory.
test.each([
	['US', 'in'],
	['us', 'in'],
	['GB', 'mm'],
	['CA', 'mm'],
	['DE', 'mm'],
	[undefined, 'mm'],
] as const)('people of %s measure in %s', (region, unit) => expect(unitOfRegion(region)).toBe(unit));
