import { describe, expect, test } from 'vitest';
import { guessByContents } from '../../../src/core/imports/guessByContents.ts';
import { readSettings } from '../../../src/core/settings/readSettings.ts';
import type { ColumnName } from '../../../src/core/show/columns.ts';
import type { Row } from '../../../src/core/show/row.ts';
import { readRows } from '../../../src/files/csv.ts';
import { dimensionsIn } from '../../../src/files/dimensions.ts';
import { keptColumnsOf, withKept } from '../../../src/files/keptColumns.ts';
import { readColumns } from '../../../src/files/readColumns.ts';

const { settings } = readSettings({ unit: 'mm' });
const makeId = (place: number, attempt: number) => `made ${place}.${attempt}`;
function read(text: string, matching?: Parameters<typeof readColumns>[1]) {
	const rows = readRows(text, settings, makeId, { matching });
	if ('problem' in rows) throw new Error(rows.problem);
	return rows;
}
/** What each column of a file is, or may be. */
const meant = (headers: string) =>
	readColumns(`${headers}\n`)?.columns.map(({ meaning, guesses }) => guesses[0] ?? meaning ?? 'not ours');

describe('headers in the languages of the trade', () => {
	test.each<[headers: string, columns: readonly (ColumnName | 'none')[]]>([
		[
			'Nr.;Titel;Künstler;Breite;Höhe;Auflage;Preis',
			['number', 'title', 'maker', 'picture width', 'picture height', 'edition', 'price'],
		],
		[
			'Kat. Nr.;Titel;Fotografin;Bildbreite;Bildhöhe;Blattgröße',
			['none', 'title', 'maker', 'picture width', 'picture height', 'paper'],
		],
		[
			'N°;Titre;Artiste;Largeur;Hauteur;Tirage;Prix',
			['number', 'title', 'maker', 'picture width', 'picture height', 'edition', 'price'],
		],
		["Titre;Largeur de l'image;Hauteur de l’image", ['title', 'picture width', 'picture height']],
		[
			'Numero;Titolo;Artista;Larghezza;Altezza;Edizione;Prezzo',
			['number', 'title', 'maker', 'picture width', 'picture height', 'edition', 'price'],
		],
		[
			'Número;Título;Artista;Anchura;Altura;Edición;Precio',
			['number', 'title', 'maker', 'picture width', 'picture height', 'edition', 'price'],
		],
		[
			'Nummer;Titel;Kunstenaar;Breedte;Hoogte;Oplage;Prijs',
			['number', 'title', 'maker', 'picture width', 'picture height', 'edition', 'price'],
		],
		['Cat No;Title;Technique;Sheet size;Dimensions', ['number', 'title', 'medium', 'paper', 'picture width']],
		['Titel;Technik;Auflage', ['title', 'medium', 'edition']],
		['Titre;Technique;Tirage', ['title', 'medium', 'edition']],
		['Titolo;Tecnica;Tiratura', ['title', 'medium', 'edition']],
		['Título;Técnica;Edición', ['title', 'medium', 'edition']],
		['Titel;Techniek;Oplage', ['title', 'medium', 'edition']],
		['Titel;Jahr;Netto;Versicherungswert;Status;Käuferin', ['title', 'year', 'net', 'value', 'stage', 'buyer']],
		['Titre;Année;Valeur;Acheteur', ['title', 'year', 'value', 'buyer']],
		['Titolo;Anno;Valore;Acquirente', ['title', 'year', 'value', 'buyer']],
		['Título;Año;Valor;Comprador', ['title', 'year', 'value', 'buyer']],
		['Titel;Jaar;Waarde;Koper', ['title', 'year', 'value', 'buyer']],
		['Title;Year;Net price;Insurance value;Status;Sold to', ['title', 'year', 'net', 'value', 'stage', 'buyer']],
		['Title;Printing technique;Medium and support', ['title', 'medium', 'medium']],
	])('%s', (headers, columns) => expect(meant(headers)).toEqual(columns));

	test('what has no doubt in it needs no answer, and a width is asked about in any language', () => {
		expect(readColumns('Titel;Künstler;Auflage;Preis\n')?.isInDoubt).toBe(false);
		expect(readColumns('Titel;Breite\n')?.isInDoubt).toBe(true);
		expect(readColumns('Titel;Technik\n')?.isInDoubt).toBe(false);
		expect(read('Titel;Preis\nPier;340,00 €\n').rows[0]!.typed).toEqual({ title: 'Pier', price: '340,00 €' });
	});
});

describe('a column whose header says nothing', () => {
	const here = ['Pier', 'Quay', 'Weir', 'Lock'].map((title, at): Row => ({
		id: `${at}`,
		order: at,
		typed: { title, price: `${100 + at}` },
		extra: { crate: `C${at}` },
	}));
	const guesses = (text: string) =>
		readColumns(text, undefined, guessByContents(here))?.columns.map((column) => column.guesses[0]);

	test('is guessed by the prints that are here', () => {
		expect(guesses('what;x\npier;100\nQuay ;101\nWeir;102\n')).toEqual(['title', 'price']);
	});
	test('is not guessed by two that agree, by a third of them, or where it was kept before', () => {
		expect(guesses('title;x\nA;100\nB;101\n')).toEqual([undefined, undefined]);
		expect(guesses('title;x\nA;100\nB;101\nC;102\nD;1\nE;2\nF;3\n')).toEqual([undefined, undefined]);
		expect(guesses('title;crate\nPier;100\nQuay;101\nWeir;102\n')).toEqual([undefined, undefined]);
	});
});

describe('sizes among words', () => {
	test.each<[text: string, sizes: readonly (readonly [string | undefined, string])[]]>([
		['image: 243 x 335 mm', [['picture', '243 mm x 335 mm']]],
		[
			'image: 243 x 335 mm; support: 300 x 400 mm',
			[
				['picture', '243 mm x 335 mm'],
				['paper', '300 mm x 400 mm'],
			],
		],
		[
			'243 × 335 mm (image), 300 × 400 mm (sheet)',
			[
				['picture', '243 mm x 335 mm'],
				['paper', '300 mm x 400 mm'],
			],
		],
		['H 24 x W 33.5 cm', [[undefined, '33.5 cm x 24 cm']]],
		['24 (h) x 33,5 (w) cm', [[undefined, '33,5 cm x 24 cm']]],
		['24 cm high x 33 cm wide', [[undefined, '33 cm x 24 cm']]],
		['243 x 335 mm (9 1/2 x 13 1/4 in)', [[undefined, '243 mm x 335 mm']]],
		['framed: 50 x 40 cm', [['frame', '50 cm x 40 cm']]],
		['Blatt 30 x 40 cm', [['paper', '30 cm x 40 cm']]],
		['dimensions variable', []],
		['30 x 40 cms', []],
		['24 x 33 Zentimeter', []],
		['3000 x 2000 px', []],
		['30 cm x 40 pt', []],
		['3000 x 2000 px, print 30 x 20 cm', [['picture', '30 cm x 20 cm']]],
		['30 x 40 cm, metal', [[undefined, '30 cm x 40 cm']]],
		['30 x 40 pine', [[undefined, '30 x 40']]],
		['A4 x 2', []],
		['image: 9-1/2 x 13-1/4 in', []],
		['9-1/2 x 13-1/4 in (243 x 335 mm)', [[undefined, '243 mm x 335 mm']]],
		['image: 2 ft 4 in x 3 ft 2 in', []],
		['image: 2\' 4" x 3\' 2"', []],
		["'Pier' 30 x 40 cm", [[undefined, '30 cm x 40 cm']]],
		['image: 1 200 x 900 mm', []],
		['image: 30 x 40 x 2 cm', []],
		['image: 30-40 x 50 cm', []],
		['image: 30 cm x 40 cm x 2 cm', [['picture', '30 cm x 40 cm']]],
		['1998 30 x 40 cm / 12 x 16 in', [[undefined, '30 cm x 40 cm']]],
		['A14 x 2 cm', []],
	])('%j', (text, sizes) => expect(dimensionsIn(text).map(({ of, size }) => [of, size])).toEqual(sizes));

	test('the list may say that the height stands first', () => {
		expect(dimensionsIn('image: 243 x 335 mm', true)[0]!.size).toBe('335 mm x 243 mm');
	});

	test('go into the picture and its paper, and the words stay', () => {
		const { rows } = read('Title;Image size;Units\nPier;"image: 243 x 335; support: 300 x 400";mm\nQuay;24 x 33;cm\n');
		expect(rows[0]).toMatchObject({
			typed: { title: 'Pier', 'picture width': '243', 'picture height': '335', paper: '300 x 400' },
			extra: { 'Image size': 'image: 243 x 335; support: 300 x 400' },
		});
		expect(rows[1]).toMatchObject({
			typed: { 'picture width': '24', 'picture height': '33' },
			units: { 'picture width': 'cm', 'picture height': 'cm' },
		});
	});

	test('a size in a unit that is none of ours stays as typed', () => {
		expect(read('title,mount\nPier,30 x 40 cms\n').rows[0]!.typed).toEqual({ title: 'Pier', mount: '30 x 40 cms' });
	});

	test('a unit in a column of its own counts where neither header nor cell names one', () => {
		const text = 'title;picture width;picture height (in);side;unit\nPier;24;13;70 mm;cm\nQuay;24;13;;furlongs\n';
		expect(read(text).rows.map(({ units, extra }) => [units, extra])).toEqual([
			[{ 'picture width': 'cm', 'picture height': 'in' }, undefined],
			[{ 'picture height': 'in' }, { unit: 'furlongs' }],
		]);
	});

	test.each(['POA', '£1,250', '1.250,00 €'])('the price %s is left as it is', (price) => {
		expect(read(`title;price\nPier;${price}\n`).rows[0]!.typed.price).toBe(price);
	});
});

describe('a total under the rows', () => {
	test.each([
		['title;price\nPier;100\nQuay;200\nTotal;300\n', 1],
		['title;price\nPier;100\nSumme: ;100\n', 1],
		['number;title;price\n1;Pier;100\n2;Quay;200\n;;300\n', 1],
		['title;price\nPier;100\nSubtotal;100\nQuay;200\n', 1],
		['title;price\nPier;100\nGesamt netto;100\n', 1],
		['number;title;price\n1;Pier;100\n2;Quay;200\n3;;\n', 0],
		['title;price\nPier;100\nTotal eclipse;200\nQuay;300\n', 0],
		['title;maker\nPier;Ilse\nTotal;Ilse\nQuay;Ilse\n', 0],
	])('%j: %i', (text, count) => expect(read(text).totals).toHaveLength(count));
});

describe('columns that were kept as they are', () => {
	const rows: readonly Row[] = [
		{ id: 'a', order: 1, typed: { title: 'Pier' }, extra: { 'Breite (cm)': '45,6', hue: 'red' } },
		{ id: 'b', order: 2, typed: { title: 'Quay', 'picture width': '300' }, extra: { 'Breite (cm)': '30', hue: '' } },
	];
	test('are matched afterwards, with what their headers say, and nothing typed is replaced', () => {
		expect(keptColumnsOf(rows)).toMatchObject([
			{ text: 'Breite (cm)', guesses: ['picture width', 'mount width', 'window width'], samples: ['45,6', '30'] },
			{ text: 'hue', guesses: [] },
		]);
		expect(withKept(rows, { 'Breite (cm)': 'picture width', hue: 'none' }, settings)).toEqual([
			{
				...{ id: 'a', order: 1, typed: { title: 'Pier', 'picture width': '45,6' } },
				...{ units: { 'picture width': 'cm' }, extra: { hue: 'red' } },
			},
			rows[1],
		]);
	});
});
