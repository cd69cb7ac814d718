import { expect, test } from 'vitest';
import { named } from '../../../../src/core/values/named.ts';

const list = [{ name: 'Chalk ' }, { name: 'Bone' }, { name: 'bone', is: 'second' }];

test.each([
	['chalk', list[0]],
	[' BONE', list[1]],
	['bon', undefined],
	[' ', undefined],
	[undefined, undefined],
])('%j in a list', (name, entry) => expect(named(name, list)).toBe(entry));
