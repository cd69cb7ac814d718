import { expect, test } from 'vitest';
import { fractionParts } from '../../../../src/ui/length/fractionParts.ts';

const fraction = (text: string) => ({ text, isFraction: true });
const plain = (text: string) => ({ text, isFraction: false });

test.each([
	['2 5/8', [plain('2 '), fraction('5/8')]],
	['5/8', [fraction('5/8')]],
	['top 3 5/32', [plain('top 3 '), fraction('5/32')]],
	['16 1/2 × 11', [plain('16 '), fraction('1/2'), plain(' × 11')]],
	['−1/8', [plain('−'), fraction('1/8')]],
	['93', [plain('93')]],
	['', []],
])('%s is cut into its parts', (text, parts) => expect(fractionParts(text)).toEqual(parts));
