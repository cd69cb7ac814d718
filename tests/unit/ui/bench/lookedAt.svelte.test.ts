import { expect, test } from 'vitest';
import { LookedAt } from '../../../../src/ui/bench/lookedAt.svelte.ts';

const step = (made: string) => ['a', 'b', 'c'].map((key) => ({ key, isMade: made.includes(key) }));

test('what comes next is drawn and ticked, until another is looked at', () => {
	const all = step('a');
	const looked = new LookedAt(
		() => all,
		({ key }) => key,
	);
	expect([looked.drawn?.key, looked.toTick?.key]).toEqual(['b', 'b']);
	looked.show(all[2]!);
	expect([looked.drawn?.key, looked.toTick?.key]).toEqual(['c', 'c']);
	looked.show(all[0]!); // made already: it is looked at, and the next is ticked
	expect([looked.drawn?.key, looked.toTick?.key]).toEqual(['a', 'b']);
	looked.goOn();
	expect(looked.drawn?.key).toBe('b');
});

test('where all is made the first is drawn, nothing is left, and a tap takes a tick off', () => {
	const looked = new LookedAt(
		() => step('abc'),
		({ key }) => key,
	);
	expect([looked.drawn?.key, looked.toTick?.key, looked.rest]).toEqual(['a', 'a', []]);
	looked.show({ key: 'c', isMade: true });
	expect([looked.drawn?.key, looked.toTick?.key]).toEqual(['c', 'c']);
});

test('another step, in which what was looked at is not, draws its own', () => {
	const active = $state({ all: step('a') });
	const looked = new LookedAt(
		() => active.all,
		({ key }) => key,
	);
	looked.show(active.all[2]!);
	active.all = [{ key: 'd', isMade: false }];
	expect([looked.drawn?.key, looked.rest.length]).toEqual(['d', 1]);
});

test('a step without anything draws nothing', () => {
	const looked = new LookedAt<{ isMade: boolean }>(
		() => [],
		() => '',
	);
	expect([looked.drawn, looked.toTick, looked.rest]).toEqual([undefined, undefined, []]);
});
