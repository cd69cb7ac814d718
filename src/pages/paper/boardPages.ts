import { glazingCautions } from '../../core/bench/glazingCautions.ts';
import type { Paper } from '../../core/values/papers.ts';
import { formatSize, type Scale } from '../../core/length/formatLength.ts';
import type { NameOfBlank } from '../../core/sheets/layout.ts';
import { planMark } from '../../core/sheets/planMark.ts';
import { cutListOnPages, type SheetPage, sheetOnPages } from '../../core/sheets/sheetPaper.ts';
import type { Stock } from '../../core/stock/stock.ts';
import { type BoardInView, boardsToCut, type NumberedSheet } from '../boardsInView.ts';

/** What is still to be cut, on pages: the list by size, then each way of cutting with the sheets that are cut so. */
export const boardPages = (
	boards: readonly BoardInView[],
	nameOf: NameOfBlank,
	scale: Scale,
	paper: Paper,
	originOf: (stock: Stock) => string,
): readonly SheetPage[] => [
	...cutListOnPages(boardsToCut(boards), 'Cut list by size', nameOf, scale, paper),
	...boards.flatMap(({ name, material, sheets, toCut, cut }) => {
		const mark = planMark(sheets.map(({ sheet }) => sheet));
		return [...toCut, ...cut.filter(({ sheet }) => isOpen(sheet)).map((each) => [each])].flatMap((alike) =>
			sheetOnPages(
				alike.map(({ sheet }) => sheet),
				titleOf(alike, name, scale),
				nameOf,
				scale,
				paper,
				[
					`Plan code ${mark}. Where Boards has another for ${nameOfBoard(name)}, this page is out of date: print it again.`,
					originOf(alike[0]!.sheet.stock),
					...(material === 'glazing' ? glazingWords : []),
				].filter((text) => text !== ''),
			),
		);
	}),
];

/** How glass and acrylic are cut, which no knife does. */
const glazingWords = [glazingCautions.protection, glazingCautions.scoring];

const nameOfBoard = (name: string): string => (name === '' ? 'Board' : name);

const isOpen = ({ cuts, made, isSpoilt }: NumberedSheet['sheet']) => !isSpoilt && made.length < cuts.length;

function titleOf(alike: readonly NumberedSheet[], name: string, scale: Scale): string {
	const { stock } = alike[0]!.sheet;
	const numbers = alike.map(({ number }) => number).join(', ');
	const word = stock.kind === 'sheet' ? 'sheet' : stock.kind;
	const size = formatSize(stock.width, stock.height, scale);
	return `${nameOfBoard(name)}, ${word} ${numbers}: ${size}${alike.length > 1 ? `, ${alike.length} times` : ''}`;
}
