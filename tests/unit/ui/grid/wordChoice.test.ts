import { expect, test } from 'vitest';
import { WordChoice } from '../../../../src/ui/grid/wordChoice.svelte.ts';

const surfaces = ['gloss', 'satin', 'matt', 'fine art'];

/**
 * Keys in a field with a list: `↓` and `↑` arrows, `o` and `c` Alt with them, a text in quotes is typed. Then what is
 * offered, the word that a key would choose in brackets; `closed`.
 */
function listAfter(keys: string, text = '', isClosed = true): string {
	let typed = text;
	const words = new WordChoice(() => ({ choices: surfaces, text: typed, isClosed }));
	const arrow = (key: string, altKey: boolean) =>
		words.key({ key, altKey, ctrlKey: false, metaKey: false, shiftKey: false } as KeyboardEvent);
	for (const [key] of keys.matchAll(/'[^']*'|\S/g)) {
		if (key === '↓' || key === '↑') arrow(key === '↓' ? 'ArrowDown' : 'ArrowUp', false);
		else if (key === 'o' || key === 'c') arrow(key === 'o' ? 'ArrowDown' : 'ArrowUp', true);
		else {
			typed = key.slice(1, -1);
			words.typed();
		}
	}
	if (!words.isOpen) return 'closed';
	return words.offered.map((word) => (word === words.active ? `[${word}]` : word)).join(' ');
}

test.each([
	['', '', 'closed'],
	['↓', '', 'closed'],
	['o', '', 'gloss satin matt fine art'],
	['o', 'Fine-art', 'gloss satin matt [fine art]'],
	['o ↓', '', '[gloss] satin matt fine art'],
	['o ↓', 'satin', 'gloss satin [matt] fine art'],
	['o ↑', '', 'gloss satin matt [fine art]'],
	['o ↑ ↓', '', '[gloss] satin matt fine art'],
	['o c', '', 'closed'],
	["o 'm'", '', '[matt]'],
	["o 't'", '', '[satin] matt fine art'],
	["o 't' ↓", '', 'satin [matt] fine art'],
	["o 'x'", '', 'closed'],
	["o 'x' 's'", '', '[satin] gloss'],
	["o 'm' ''", '', 'gloss satin matt fine art'],
	["'m'", '', 'closed'],
])('%s in a field with “%s”: %s', (keys, text, list) => {
	expect(listAfter(keys, text)).toBe(list);
});

test('where another word may stand, what is typed is chosen over what it begins', () => {
	expect(listAfter("o 'm'", '', false)).toBe('matt');
	expect(listAfter("o 'matt'", '', false)).toBe('[matt]');
	expect(listAfter("o 'm' ↓", '', false)).toBe('[matt]');
});
