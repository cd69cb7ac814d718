import { madeId } from '../../../src/core/values/madeId.ts';
import { programs, type Program, saved, turned } from './spreadsheets.ts';

/** What a list that came back is expected to say, counted by what was done to it, not by reading it. */
export interface ExpectedComparison {
	readonly file: string;
	readonly program: string;
	readonly done: string;
	/** How many cells are set aside, by what the program made of them. */
	readonly aside: Readonly<Record<string, number>>;
	/** What somebody has typed over: the title as it was, the column and the new text. */
	readonly edits: readonly (readonly [title: string, column: string, text: string])[];
	readonly added: readonly string[];
	/** Titles of rows that are shown, and not added unless that is asked for. */
	readonly leftOut: readonly string[];
	/** Titles that the file lacks. */
	readonly missing: readonly string[];
	/** Whether its order is another. */
	readonly isReordered: boolean;
}

/** The columns that stand in the lists: those in which the example has something, and that a program spoils. */
export const listColumns = [
	...['print id', 'number', 'title', 'maker', 'edition', 'shape'],
	...['picture width', 'picture height', 'mount', 'side', 'price', 'note'],
] as const;

/** The print ids of the example's rows, as the app makes them up: the same each time. */
export const idOf = (place: number): string => madeId(Uint8Array.of(1, 2, 3, 4, 5, 6, 7, place >> 5, place & 31));

const headersOfLanguages: readonly (readonly string[])[] = [
	[
		'ID',
		'No.',
		'Title',
		'Artist',
		'Edition',
		'Shape',
		'Image width',
		'Image height',
		'Mat',
		'Side border',
		'Price',
		'Notes',
	],
	[
		'Kennung',
		'Nr.',
		'Titel',
		'Künstler',
		'Auflage',
		'Shape',
		'Bildbreite',
		'Bildhöhe',
		'Passepartout',
		'Side',
		'Preis',
		'Bemerkung',
	],
	[
		'Clé',
		'N°',
		'Titre',
		'Artiste',
		'Tirage',
		'Shape',
		'Largeur',
		'Hauteur',
		'Passepartout',
		'Side',
		'Prix',
		'Remarques',
	],
	[
		'Chiave',
		'Numero',
		'Titolo',
		'Artista',
		'Edizione',
		'Shape',
		'Larghezza',
		'Altezza',
		'Passepartout',
		'Side',
		'Prezzo',
		'Note',
	],
	[
		'Sleutel',
		'Nummer',
		'Titel',
		'Kunstenaar',
		'Oplage',
		'Shape',
		'Breedte',
		'Hoogte',
		'Passepartout',
		'Side',
		'Prijs',
		'Opmerking',
	],
];

interface Done {
	readonly name: string;
	/** What somebody does to the table; the first line names the columns. */
	readonly edit: (rows: string[][], program: number) => string[][];
	readonly expected?: Partial<ExpectedComparison>;
	/** Whether the print ids are gone, or others. */
	readonly ids?: 'gone' | 'altered';
	/** The columns that are left, where some are gone. */
	readonly columns?: readonly string[];
}

const at = (name: (typeof listColumns)[number]) => listColumns.indexOf(name);
const withoutIds = (rows: readonly string[][]) => rows.map((cells) => cells.slice(1));
const sorted = (rows: readonly string[][], key: (cells: readonly string[]) => string) => {
	const [head, ...others] = rows as [string[], ...string[][]];
	return [head, ...others.toSorted((a, b) => (key(a) < key(b) ? -1 : 1))];
};
const setCell = (rows: string[][], title: string, column: (typeof listColumns)[number], text: string) =>
	rows.map((cells) => (cells[at('title')] === title ? cells.with(at(column), text) : cells));

const doings: readonly Done[] = [
	{ name: 'as-it-is', edit: (rows) => rows },
	{ name: 'no-ids', ids: 'gone', edit: withoutIds },
	{
		name: 'no-ids-sorted',
		ids: 'gone',
		edit: (rows) => withoutIds(sorted(rows, (cells) => cells[at('title')]!)),
		expected: { isReordered: true },
	},
	{
		name: 'no-ids-numbered-anew',
		ids: 'gone',
		edit: (rows) =>
			withoutIds(sorted(rows, (cells) => cells[at('title')]!)).map((cells, place) =>
				place === 0 ? cells : cells.with(0, `${place}`),
			),
		expected: { isReordered: true },
	},
	{
		name: 'other-ids',
		ids: 'altered',
		edit: (rows) => rows.map((cells, place) => (place === 0 ? cells : cells.with(0, `${place}`))),
	},
	{
		name: 'title-lines-and-total',
		edit: (rows) => [
			['Salt and slate'],
			['hung in spring', 'list of prices'],
			...rows,
			listColumns.map((name) => (name === 'title' ? 'Total' : name === 'price' ? '9387' : '')),
		],
		expected: { leftOut: ['Total'] },
	},
	{
		name: 'edited',
		edit: (rows) =>
			setCell(
				setCell(setCell(rows, 'Net store', 'price', '365'), 'Mill door', 'note', 'Sold'),
				'Incline',
				'title',
				'Incline, wet',
			),
		expected: {
			edits: [
				['Net store', 'price', '365'],
				['Mill door', 'note', 'Sold'],
				['Incline', 'title', 'Incline, wet'],
			],
		},
	},
	{
		name: 'two-missing',
		edit: (rows) => rows.filter((cells) => !['Breakwater', 'Incline'].includes(cells[at('title')]!)),
		expected: { missing: ['Breakwater', 'Incline'] },
	},
	{
		name: 'two-more',
		edit: (rows) => [
			...rows,
			listColumns.map((name) => ({ title: 'Tar barrels', maker: 'Ilse Tarnow', price: '200' })[name as string] ?? ''),
			listColumns.map((name) => ({ title: 'Breakwater', maker: 'Ilse Tarnow', price: '340' })[name as string] ?? ''),
		],
		expected: { added: ['Tar barrels'], leftOut: ['Breakwater'] },
	},
	{
		name: 'two-twice-no-ids',
		ids: 'gone',
		edit: (rows) => withoutIds([...rows, rows[3]!, rows[20]!]),
		expected: { leftOut: ['Net store', 'Mill door'] },
	},
	{
		name: 'other-headers',
		edit: (rows, program) => [[...headersOfLanguages[program]!], ...rows.slice(1)],
	},
	{
		name: 'few-columns',
		ids: 'gone',
		columns: ['title', 'edition', 'price'],
		edit: (rows) =>
			setCell(rows, 'Kelp on slate', 'price', '210').map((cells) => [
				...[cells[at('title')]!, cells[at('edition')]!, cells[at('price')]!],
			]),
		expected: { edits: [['Kelp on slate', 'price', '210']] },
	},
];

/** What a program makes of a cell that is not the same in meaning: no decimal comma, no time without seconds. */
function spoiledAs(column: string, cell: string, program: Program): string | undefined {
	const now = turned(cell, program);
	if (now === cell) return undefined;
	if (column === 'edition') return 'date';
	if (column === 'shape') return /^\d{1,2}:\d\d$/.test(now) ? undefined : 'time';
	return cell.includes('/') ? 'number' : undefined; // a fraction of an inch as a decimal
}

/** A list as a program saves it, with what is expected of it. */
export interface MangledList {
	readonly bytes: Uint8Array;
	readonly expected: ExpectedComparison;
}

/**
 * The example as it comes back: each of five kinds of program, each of twelve things done to the list.
 * @param text the list as it went out, with the columns of `listColumns`
 * @param rows its cells
 */
export function mangledLists(text: string, rows: readonly (readonly string[])[]): readonly MangledList[] {
	return programs.flatMap((program, which) =>
		doings.map(({ name, edit, expected, ids, columns = listColumns }): MangledList => {
			const aside: Record<string, number> = {};
			for (const cells of rows)
				cells.forEach((cell, place) => {
					const column = listColumns[place]!;
					const gone = expected?.missing?.includes(cells[at('title')]!) ?? false;
					const kind = columns.includes(column) && !gone ? spoiledAs(column, cell, program) : undefined;
					if (kind !== undefined) aside[kind] = (aside[kind] ?? 0) + 1;
				});
			if (name === 'no-ids-numbered-anew')
				aside['numbering'] = rows.filter(
					(cells) =>
						sorted([[], ...rows.map((each) => [...each])], (each) => each[at('title')]!).findIndex(
							(each) => each[at('title')] === cells[at('title')],
						) !== Number(cells[at('number')]),
				).length;
			if (ids === 'altered') aside['print id'] = rows.length;
			return {
				bytes: saved(text, program, (table) => edit(table, which)),
				expected: {
					file: `${which + 1}-${name}.csv`,
					program: program.name,
					done: name.replaceAll('-', ' '),
					aside,
					...{ edits: [], added: [], leftOut: [], missing: [], isReordered: false },
					...expected,
				},
			};
		}),
	);
}
