import { placeRows } from '../commands/placeRows.ts';
import { formatPixels } from '../length/parsePixels.ts';
import type { Settings } from '../settings/settings.ts';
import type { Edit } from '../show/edit.ts';
import type { CellTexts, Row, RowId } from '../show/row.ts';
import type { Show } from '../show/show.ts';
import { withCells } from '../show/withCells.ts';
import type { MatchedPicture, PictureFile } from './matchPictures.ts';
import { nameParts } from './nameOfFile.ts';

/**
 * Gives pictures to rows, and makes rows of those that are new, at the end: one step. A row that is no longer there gets
 * none; a file that came twice counts once.
 * @param ids names for the new rows, as many as there are files
 */
export function applyPictures(
	show: Show,
	pictures: readonly MatchedPicture[],
	ids: readonly RowId[],
	settings: Settings,
): Edit {
	const rows = new Map(show.rows.map((row) => [row.id, row]));
	const changed = new Map<RowId, Row>();
	const added: Row[] = [];
	for (const [place, picture] of pictures.entries()) {
		if (picture.kind === 'new') {
			const row: Row = { id: ids[place]!, order: 0, typed: {} };
			added.push(withPicture(withCells(row, namedBy(picture.file), settings), picture.file, settings));
			continue;
		}
		const row = picture.kind === 'row' ? rows.get(picture.id) : undefined;
		if (!row) continue;
		const after = withPicture(withTitle(row, picture.file, settings), picture.file, settings);
		if (after !== row) changed.set(row.id, after);
	}
	const label = pictures.length === 1 ? 'Add a picture' : 'Add pictures';
	const diffs = [...changed].map(([id, after]) => ({ before: rows.get(id)!, after }));
	return { label, rows: [...diffs, ...placeRows(show.rows, show.rows, added, show.rows.length)] };
}

/** The number and title of a new row, by its file's name. One that only has a number has no title. */
export function namedBy({ name }: Pick<PictureFile, 'name'>): CellTexts {
	const { number, title } = nameParts(name);
	const titled = title ?? (number === undefined ? name.replace(/\.[^.]*$/, '') : undefined);
	return { ...(number !== undefined && { number }), ...(titled !== undefined && { title: titled }) };
}

/** A row without a title gets that of its file. */
function withTitle(row: Row, { name }: PictureFile, settings: Settings): Row {
	const { title } = nameParts(name);
	return title === undefined || (row.typed.title ?? '').trim() !== '' ? row : withCells(row, { title }, settings);
}

/** @returns the same object where the row has that picture already */
function withPicture(row: Row, { name, hash, pixels }: PictureFile, settings: Settings): Row {
	const file = name.trim();
	const after = withCells(row, { 'picture file': file, pixels: formatPixels(pixels) }, settings);
	if (after === row && row.picture?.hash === hash && row.picture.file === file) return row;
	return { ...after, picture: { hash, file } };
}
