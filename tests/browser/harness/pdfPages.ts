import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

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
