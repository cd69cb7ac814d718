import { expect, test } from 'vitest';
import { guessedUnit } from '../../../src/app/guessedUnit.ts';

test.each([
	[['en-US', 'en'], 'in'],
	[['en', 'en-US'], 'in'], // a language alone says nothing of the region
	[['en'], 'mm'],
	[['de-CH'], 'mm'],
	[['es-US'], 'in'],
	[['no tag!', 'en-US'], 'in'],
	[[], 'mm'],
] as const)('with the languages %j the first show is in %s', (languages, unit) =>
	expect(guessedUnit(languages)).toBe(unit),
);
