import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Points of a PDF in a millimetre. */
export const pointsPerMm = 72 / 25.4;

/** A text of a page, and the box that it takes, in mm from the page's lower left corner. */
export interface Text extends Record<'left' | 'bottom' | 'right' | 'top', number> {
	readonly text: string;
}

/** The pages of a PDF with their texts in order. */
export async function pagesOf(pdf: Uint8Array) {
	const document = await getDocument({ data: pdf, useSystemFonts: false, verbosity: 0 }).promise;
	const pages = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const [, , width, height] = page.view as [number, number, number, number];
		const { items } = await page.getTextContent();
		const texts = items.flatMap((item) => {
			if (!('str' in item) || item.str.trim() === '') return [];
			const [across, up, , , x, y] = item.transform as [number, number, number, number, number, number];
			const isLevel = Math.abs(across) > Math.abs(up);
			const [right, top] = isLevel ? [x + item.width, y + item.height] : [x, y + item.width];
			const box = { left: x, bottom: y, right, top };
			return [
				{
					text: item.str,
					...Object.fromEntries(Object.entries(box).map(([key, at]) => [key, at / pointsPerMm])),
				} as Text,
			];
		});
		pages.push({ page, width: width / pointsPerMm, height: height / pointsPerMm, texts });
	}
	return pages;
}

/** See `pagesOf`. */
export type Pages = Awaited<ReturnType<typeof pagesOf>>;

/** The texts of some pages that come nearer than 10 mm to the edge of their paper, each with where it lies. */
export const pastMargins = (pages: Pages, { width, height }: { readonly width: number; readonly height: number }) =>
	pages.flatMap(({ texts }, place) =>
		texts
			.filter(({ left, right, bottom, top }) => left < 10 || right > width - 10 || bottom < 10 || top > height - 10)
			.map(({ text, ...at }) => `page ${place + 1}: “${text}” at ${JSON.stringify(at)}`),
	);

/** A straight line of a page, in mm from the page's lower left corner. */
export interface Line {
	readonly from: readonly [x: number, y: number];
	readonly to: readonly [x: number, y: number];
}

/** The straight lines of a page, as they come out on paper. */
export async function linesOf({ page }: Pages[number]): Promise<Line[]> {
	const { fnArray, argsArray } = await page.getOperatorList();
	const lines: Line[] = [];
	type Matrix = readonly [number, number, number, number, number, number];
	let now: Matrix = [1, 0, 0, 1, 0, 0];
	const stack: Matrix[] = [];
	const at = (x: number, y: number): readonly [number, number] => [
		(now[0] * x + now[2] * y + now[4]) / pointsPerMm,
		(now[1] * x + now[3] * y + now[5]) / pointsPerMm,
	];
	for (const [place, operation] of fnArray.entries()) {
		const args = argsArray[place] as unknown[];
		if (operation === OPS.save) stack.push(now);
		else if (operation === OPS.restore) now = stack.pop() ?? [1, 0, 0, 1, 0, 0];
		else if (operation === OPS.transform) {
			const [a, b, c, d, e, f] = args as unknown as Matrix;
			const [g, h, i, j, k, l] = now;
			now = [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l];
		} else if (operation === OPS.constructPath) {
			const [operations, numbers] = args as [number[], number[]];
			if (operations.length !== 2 || operations[0] !== OPS.moveTo || operations[1] !== OPS.lineTo) continue;
			const [x1, y1, x2, y2] = numbers as [number, number, number, number];
			lines.push({ from: at(x1, y1), to: at(x2, y2) });
		}
	}
	return lines;
}
