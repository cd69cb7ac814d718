import { expect, test } from 'vitest';
import { commandOf, type KeyContext, keyName } from '../../../../src/ui/grid/gridKeys.ts';

test.each([
	{ key: 'z', ctrlKey: true, is: 'Ctrl+Z' },
	{ key: 'Z', metaKey: true, shiftKey: true, is: 'Ctrl+Shift+Z' },
	{ key: '?', shiftKey: true, is: '?' },
	{ key: ' ', is: ' ' },
	{ key: ' ', shiftKey: true, is: 'Shift+ ' },
	{ key: 'Tab', shiftKey: true, is: 'Shift+Tab' },
	{ key: 'ArrowUp', altKey: true, is: 'Alt+ArrowUp' },
])('$key is called $is', ({ is, ...event }) => {
	expect(keyName({ ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...event })).toBe(is);
});

/** What a key calls, in words: `moves.go left`. */
function calledBy(name: string, isInHead: boolean, state: Readonly<Record<string, unknown>> = {}): string | undefined {
	let called = '';
	const known: Readonly<Record<string, unknown>> = { 'selection.isRange': false, ...state };
	const note = (path: string): unknown =>
		new Proxy(() => undefined, {
			get: (_, key) => {
				const whole = path === '' ? String(key) : `${path}.${String(key)}`;
				return whole in known ? known[whole] : note(whole);
			},
			apply: (_, __, args: readonly unknown[]) => void (called = [path, ...args].join(' ')),
		});
	const context = {
		grid: note(''),
		edit: note('edit'),
		openMenu: note('menu'),
		enterHabit: state['habit'] ?? 'open',
	} as unknown as KeyContext;
	const command = commandOf(name, isInHead);
	command?.(context);
	return command && called;
}

test.each([
	['ArrowLeft', 'moves.go left false', 'moves.go left false'],
	['Shift+ArrowLeft', 'moves.go left true', 'moves.go left true'],
	['Ctrl+Shift+End', 'moves.go grid end true', 'moves.go grid end true'],
	['Enter', 'edit', 'menu column'],
	['F2', 'edit', 'menu column'],
	[' ', undefined, 'selection.selectWhole columns'],
	['Shift+ ', 'selection.selectWhole rows', 'selection.selectWhole rows'],
	['Delete', 'blocks.clear', 'columnEdits.hide'],
	['Shift+Enter', '', ''],
	['Alt+ArrowUp', undefined, undefined],
	['Alt+Shift+ArrowUp', 'rowEdits.move -1', 'rowEdits.move -1'],
	['Alt+Shift+ArrowDown', 'rowEdits.move 1', 'rowEdits.move 1'],
	['Ctrl+Shift+D', 'rowEdits.duplicate', 'rowEdits.duplicate'],
	['Alt+ArrowLeft', undefined, 'columnEdits.move -1'],
	['ContextMenu', 'menu row', 'menu column'],
	['x', undefined, undefined],
	['Tab', undefined, undefined],
])('%s calls %s in a cell, %s in a head', (name, inCell, inHead) => {
	expect([calledBy(name, false), calledBy(name, true)]).toEqual([inCell, inHead]);
});

test.each([
	[{ habit: 'down' }, 'Enter', 'moves.step enter false'],
	[{ habit: 'down' }, 'Shift+Enter', 'moves.step enter true'],
	[{ 'selection.isRange': true }, 'Enter', 'moves.step enter false'],
	[{ 'selection.isRange': true }, 'Shift+Enter', 'moves.step enter true'],
	[{ 'selection.isRange': true }, 'F2', 'edit'],
	[{ 'selection.column': { label: 'Surface', words: {} } }, 'Alt+ArrowDown', 'edit'],
	[{ 'selection.column': { label: 'Title' } }, 'Alt+ArrowDown', 'notices.say Title has no list: type into it'],
])('where %j, %s calls %s', (state, name, calls) => {
	expect(calledBy(name, false, state)).toBe(calls);
});
