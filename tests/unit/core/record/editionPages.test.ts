import { expect, test } from 'vitest';
import { judgeRow } from '../../../../src/core/findings/judgeRow.ts';
import { editionPages } from '../../../../src/core/record/editionPages.ts';
import { editionRegister } from '../../../../src/core/record/editionRegister.ts';
import { readSettings } from '../../../../src/core/settings/readSettings.ts';
import type { Row } from '../../../../src/core/show/row.ts';

const { settings } = readSettings({});
const registerOf = (count: number) => {
	const rows = Array.from({ length: count }, (_, at): Row => ({
		...{ id: `r${at}`, order: at + 1 },
		typed: { title: `Pier ${at}`, maker: 'Ilse', edition: `${(at % 9) + 1}/12`, ...(at % 2 && { stage: 'sold' }) },
	}));
	return editionRegister(
		rows,
		rows.map((row) => judgeRow(row, settings)),
	);
};

test('every title is on a page, once, with what is said of it', () => {
	const pages = editionPages(registerOf(120), 'A4');
	expect(pages.length).toBeGreaterThan(3);
	const parts = pages.flat();
	expect(parts.map(({ head }) => head)).toEqual(Array.from({ length: 120 }, (_, at) => `Pier ${at}, Ilse`));
	expect(parts[1]!.items).toEqual(['Edition of 12: numbers here 2; numbers sold 2; left 11; not in the show 1, 3–12']);
});

test('Letter is lower, and none without an edition is a page', () => {
	expect(editionPages(registerOf(120), 'Letter').length).toBeGreaterThanOrEqual(
		editionPages(registerOf(120), 'A4').length,
	);
	expect(editionPages([], 'A4')).toEqual([]);
});
