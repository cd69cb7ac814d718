import { asTyped } from '../show/asTyped.ts';
import { clearEach } from './candidates.ts';
import { editionBefore, saidOfBefore } from '../imports/beforeSpreadsheet.ts';
import { quoted } from '../length/parseLength.ts';
import type { Finder, Found } from './found.ts';

/**
 * `edition-clash`: a number above the edition's size (`stop`), or more than one copy of one number (`look`). The same
 * number in two rows is found across the show.
 */
export const editionNumber: Finder = (context) => {
	const { words, row, read } = context;
	const { edition } = words;
	const typed = asTyped(row, 'edition').trim();
	if (edition === undefined) return spoiledEdition(typed);
	if (edition.kind !== 'numbered') return [];
	if (edition.number > edition.size || edition.number === 0) {
		const [, number, size] = /([\divxlc]+)\s*(?:\/|of)\s*([\divxlc]+)/i.exec(typed)!;
		return [
			{
				code: 'edition-clash',
				level: 'stop',
				cells: ['edition'],
				figures: () => ({ kind: 'no such number', edition: typed, number: number!, size: size! }),
				candidates: () => clearEach(context, ['edition']),
			},
		];
	}
	if (read.copies < 2) return [];
	return [
		{
			code: 'edition-clash',
			level: 'look',
			cells: ['edition', 'copies'],
			figures: () => ({ kind: 'copies', edition: typed, copies: { count: read.copies } }),
			candidates: () => [
				{ offer: { kind: 'set text', column: 'copies', text: '1' }, change: { copies: '1' } },
				...clearEach(context, ['edition']),
			],
		},
	];
};

/** `not-read`, to be looked at: an edition that a spreadsheet has made a date of. Nothing is cut by an edition, so it stops nothing. */
function spoiledEdition(typed: string): readonly Found[] {
	const before = typed === '' ? undefined : editionBefore(typed);
	if (before === undefined) return [];
	return [
		{
			code: 'not-read',
			level: 'look',
			cells: ['edition'],
			figures: () => ({ column: 'edition', problem: saidOfBefore(quoted(typed), before) }),
			candidates: () =>
				before.texts.map((text) => ({
					offer: { kind: 'set text', column: 'edition', text },
					change: { edition: text },
				})),
		},
	];
}
