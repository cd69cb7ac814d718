import type { Page } from 'playwright-core';
import { chooseFile } from './chooseFile.ts';

/** A show as a file has it: of today's form, or of an older one. */
export interface ShowOfFile {
	readonly format: 'evenhang-show';
	readonly version: number;
	readonly name: string;
}

/** A show as a file of today has it. @param cells what is typed in each row */
export const showOf = (
	name: string,
	settings: Readonly<Record<string, unknown>>,
	cells: readonly Readonly<Record<string, string>>[],
) => ({
	...({ format: 'evenhang-show', version: 10, name, settings } as const),
	rows: cells.map((typed, place) => ({ id: `p${place}`, order: place + 1, typed })),
});

const chooseShow = async (page: Page, show: ShowOfFile): Promise<void> => {
	await page.getByRole('button', { name: 'Files' }).click();
	await chooseFile(page, 'Import rows', 'show.evenhang.json', JSON.stringify(show));
};

/** Opens a show from a file as the first one, in an app that has just been opened for the first time. */
export async function openFirstShow(page: Page, show: ShowOfFile): Promise<void> {
	await chooseShow(page, show);
	await page.getByRole('grid').waitFor();
}

/** Opens a show from a file beside one that was begun, in an app that has just been opened for the first time. */
export async function openShow(page: Page, show: ShowOfFile): Promise<void> {
	await page.getByRole('button', { name: 'Start typing' }).click();
	await chooseShow(page, show);
	await page.getByRole('button', { name: 'Open as a new show' }).click();
	// Where one of that name is there, of a play before, it has a number.
	await page.getByRole('heading', { name: new RegExp(`^“${show.name}( \\(\\d+\\))?” opened`) }).waitFor();
	await page.getByRole('button', { name: 'Close', exact: true }).click();
}
