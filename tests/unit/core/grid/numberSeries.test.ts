import { expect, test } from 'vitest';
import { numberSeries } from '../../../../src/core/grid/numberSeries.ts';

test.each([
	{ numbers: ['3', '4'], next: ['5', '6', '7'] },
	{ numbers: ['10', '20'], next: ['30', '40', '50'] },
	{ numbers: ['7'], next: ['8', '9', '10'] },
	{ numbers: ['A-08', 'A-09'], next: ['A-10', 'A-11', 'A-12'] },
	{ numbers: ['008'], next: ['009', '010', '011'] },
	{ numbers: ['9', '8', '7'], next: ['6', '5', '4'] },
	{ numbers: ['1', '5', '7'], next: ['9', '11', '13'] }, // the last two say it
	{ numbers: ['2', '1'], next: undefined }, // there is none below zero
	{ numbers: ['A1', 'B2'], next: undefined },
	{ numbers: ['', '2'], next: undefined },
	{ numbers: ['12a'], next: undefined },
	{ numbers: [''], next: undefined },
])('$numbers are followed by $next', ({ numbers, next }) => {
	expect(numberSeries(numbers, 3)).toEqual(next);
});
