import { expect, test } from 'vitest';
import { DocumentOnDesk } from '../../../src/pages/paper/documentOnDesk.svelte.ts';
import type { MadeDocument, PaperDocument, PaperSource } from '../../../src/pages/paper/paperDocument.ts';

const source = {} as PaperSource; // what it is made from is the affair of its document

/** As it is counted, with so many pages. */
const counted = (count: number, waits?: string) => {
	const made: MadeDocument<Record<string, unknown>> = { pages: Array.from({ length: count }, () => ({})), waits };
	return new DocumentOnDesk({ make: () => made } as unknown as PaperDocument, source, () => true).counted;
};

test('pages of a plan that is still looked for are not counted as if they were final', () => {
	expect(counted(22, 'Looking for a better plan.')).toBe('22 pages, not final yet');
	expect(counted(25)).toBe('25 pages');
	expect(counted(1)).toBe('1 page');
	expect(counted(0, 'Replanning.')).toBe('none');
});

test('what is not chosen is counted when there is nothing else to do', () => {
	const document = { make: () => ({ pages: [{}, {}] }) } as unknown as PaperDocument;
	const each = new DocumentOnDesk(document, source, () => false);
	expect(each.counted).toBe('…');
	each.isCounted = true;
	expect(each.counted).toBe('2 pages');
});
