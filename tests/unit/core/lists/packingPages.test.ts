import { expect, test } from 'vitest';
import { packingPages } from '../../../../src/core/lists/packingPages.ts';
import { packPrints } from '../../../../src/core/packing/packPrints.ts';
import { showOf } from './showOf.ts';

const frames = [
	{ name: 'Oak', rebateWidth: 500, rebateHeight: 400, moulding: 20, lip: 6, weight: '0.5 kg' },
	{ name: 'Bare', rebateWidth: 500, rebateHeight: 400 },
];

test.each(['A4', 'Letter'] as const)('on %s pairs are never parted, and each print is named once', (paper) => {
	const lines = Array.from({ length: 41 }, (_, at) => `mount 500 x 400, frame ${at % 10 === 9 ? 'Bare' : 'Oak'}`);
	const { results, settings } = showOf([...lines, 'mount 300 x 200, frame none, copies 3'], { unit: 'mm', frames });
	const plan = packPrints(results, settings);
	const pages = packingPages(plan, settings, (place) => `Tide ${place + 1}`, paper);
	const parts = pages.flat();
	expect(parts[0]!.head).toBe('Before you pack');
	const items = parts.flatMap((part) => part.items);
	const names = items.flatMap((item) => (item.kind === 'pair' ? item.names : item.kind === 'loose' ? [item.name] : []));
	expect(names.toSorted()).toEqual([...lines.map((_, at) => `Tide ${at + 1}`), 'Tide 42, 3 copies'].toSorted());
	expect(pages.length).toBeGreaterThan(1);
	// 37 in pairs and one alone, six in a box.
	expect(new Set(parts.map(({ head }) => head)).size).toBe(3 + Math.ceil(37 / 6));
});

test('a show without prints has no pages', () => {
	const { results, settings } = showOf([], { unit: 'mm' });
	expect(packingPages(packPrints(results, settings), settings, String, 'A4')).toEqual([]);
});
