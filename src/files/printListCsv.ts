import { formatExact } from '../core/length/formatLength.ts';
import { type Length, mmPerMetre, toMm } from '../core/length/length.ts';
import { sizeWords } from '../core/order/getWords.ts';
import { piecesOf, takenBy } from '../core/order/printList.ts';
import { leftOutWords, wayWords } from '../core/order/printWords.ts';
import type { PaperToPrint, PictureToPrint, ToPrint } from '../core/order/whatToPrint.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import type { Settings } from '../core/settings/settings.ts';
import { nameOfPrint } from '../core/show/nameOfPrint.ts';
import type { Row } from '../core/show/row.ts';
import { formatMoney } from '../core/values/money.ts';
import { csvText, headerIn } from './csvText.ts';

/** A show as its print list is written. */
export interface ShowToPrint {
	readonly rows: readonly Row[];
	readonly results: readonly RowResult[];
	readonly settings: Settings;
}

const lengths = [
	...(['picture width', 'picture height', 'paper width', 'paper height'] as const),
	...(['margin left', 'margin top', 'margin right', 'margin bottom'] as const),
] as const;
const texts = ['kind', 'paper', 'print', 'number', 'title', 'way up'] as const;
const counts = ['copies', 'proofs', 'sheets', 'roll (m)', 'in stock', 'packs', 'cost', 'note'] as const;

type Name = (typeof texts)[number] | (typeof lengths)[number] | (typeof counts)[number];
type Cells = Partial<Record<Name, string>>;

/**
 * The print list as delimited text: a line for each print on its paper, one for each paper with what it comes to, then the
 * prints that are not printed. Lengths are exact and in the show's unit, money in its currency.
 */
export function writePrintList({ papers, leftOut }: ToPrint, { rows, results, settings }: ShowToPrint): string {
	const nameOf = (place: number): Cells => {
		const { number = '', title = '' } = rows[place]!.typed;
		return { print: nameOfPrint(rows[place]!, place), number, title };
	};
	const records = [
		...papers.flatMap((paper) => [
			...paper.pictures.map((picture) => ({
				kind: 'print',
				paper: paper.name,
				...nameOf(picture.place),
				...pictureCells(picture, settings),
			})),
			paperCells(paper, settings),
		]),
		...leftOut.map((each): Cells => {
			const note = leftOutWords(each.reason, results[each.row - 1], settings);
			return { kind: 'not printed', ...nameOf(each.row - 1), note };
		}),
	];
	const names: readonly Name[] = [...texts, ...lengths, ...counts];
	const header = headerIn(settings.unit, names, lengths);
	return csvText([header, ...records.map((record: Cells) => names.map((name) => record[name] ?? ''))]);
}

const metres = (value: number): string => (toMm(value as Length) / mmPerMetre).toFixed(3);

function pictureCells(picture: PictureToPrint, { unit }: Settings): Cells {
	const { on } = picture;
	const n = (value: Length) => formatExact(value, unit);
	return {
		'way up': wayWords(picture.picture),
		'picture width': n(picture.picture.width),
		'picture height': n(picture.picture.height),
		'paper width': n(on.paper.width),
		'paper height': n(on.paper.height),
		'margin left': n(on.left),
		'margin top': n(on.top),
		'margin right': n(on.right),
		'margin bottom': n(on.bottom),
		copies: `${picture.copies}`,
		proofs: `${picture.proofs}`,
		...(picture.cutOff === undefined ? { sheets: `${piecesOf(picture)}` } : { 'roll (m)': metres(takenBy(picture)) }),
		note: picture.said.map(({ message }) => message).join(' '),
	};
}

function paperCells({ name, line, pictures, pieces, rollLength }: PaperToPrint, settings: Settings): Cells {
	const sum = (of: 'copies' | 'proofs') => `${pictures.reduce((all, picture) => all + picture[of], 0)}`;
	const amount = rollLength === undefined ? { sheets: `${pieces}` } : { 'roll (m)': metres(rollLength) };
	return {
		kind: 'paper',
		paper: name,
		copies: sum('copies'),
		proofs: sum('proofs'),
		...amount,
		'in stock': rollLength === undefined ? `${line.there}` : metres(line.there),
		packs: `${line.packs}`,
		cost: line.cost === undefined ? '' : formatMoney(line.cost, settings.currency),
		note: sizeWords(line, settings),
	};
}
