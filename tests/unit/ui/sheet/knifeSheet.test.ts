import { expect, test } from 'vitest';
import { mm } from '../../../../src/core/length/length.ts';
import type { CutSheet } from '../../../../src/core/show/cutSheet.ts';
import { edgeWords, knifeSheet, sheetsWords } from '../../../../src/ui/sheet/knifeSheet.ts';

const cut = (across: 'width' | 'height', width: number) => ({
	piece: { x: mm(0), y: mm(0), width: mm(width), height: mm(800) },
	across,
	at: mm(500),
});
const sheet = { made: [0], cuts: [cut('width', 1200), cut('height', 500)] } as unknown as CutSheet;
const scale = { unit: 'mm', ruler: mm(1) } as const;
const at = (...places: readonly number[]) => knifeSheet({ sheet, places }, 'Chalk, sheet 1', scale);

test('each cut says the edge of its piece, and a step the edges that it is set from', () => {
	expect(at(0, 1)).toMatchObject({
		cutWords: 'cut 1, from the left edge of 1200 × 800; cut 2, from the top edge of 500 × 800',
		isMade: false,
	});
	expect(at(0).isMade).toBe(true);
	expect([[at(0)], [at(1)], [at(1), at(0)]].map(edgeWords)).toEqual(['left edge', 'top edge', 'left or top edge']);
});

test('a step names its sheets, or counts them where they are of several boards or kinds, or too many for a line', () => {
	const named = (...names: readonly string[]) =>
		sheetsWords(names.map((name) => knifeSheet({ sheet, places: [0] }, name, scale)));
	const many = (count: number) => Array.from({ length: count }, (_, place) => `Chalk, sheet ${place + 1}`);
	expect(named('Chalk, sheet 2', 'Chalk, sheet 3', 'Chalk, sheet 14')).toBe('sheets 2, 3, 14');
	expect(named('Museum 3, drop-out 1', 'Museum 3, drop-out 2')).toBe('drop-outs 1, 2');
	expect(named('Chalk, sheet 2', 'Slate, sheet 2')).toBe('2 sheets');
	expect(named('Chalk, sheet 2', 'Chalk, offcut 3')).toBe('2 sheets');
	expect(named(...many(8))).toBe('sheets 1, 2, 3, 4, 5, 6, 7, 8');
	expect(named(...many(9))).toBe('9 sheets');
});
