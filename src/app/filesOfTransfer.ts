/** What was dropped. */
export interface Dropped {
	readonly files: readonly File[];
	/** The names of folders, which give nothing to read. */
	readonly folders: readonly string[];
}

/** Whether what is dragged over the page are files, not a text for a field. */
export const holdsFiles = (transfer: DataTransfer | null): boolean => transfer?.types.includes('Files') ?? false;

/** The files that were dropped, without folders, which look like files and cannot be read. */
export function droppedFiles({ items, files }: DataTransfer): Dropped {
	const entries = [...items].filter(({ kind }) => kind === 'file').map((item) => item.webkitGetAsEntry());
	const all = [...files];
	const isFolder = (at: number) => entries.length === all.length && entries[at]?.isDirectory === true;
	return {
		files: all.filter((_, at) => !isFolder(at)),
		folders: all.filter((_, at) => isFolder(at)).map(({ name }) => name),
	};
}

/**
 * The files that were pasted, unless a text was. A picture of cells comes with their text, and the text is meant; the
 * names of copied files come with them too, and the files are meant.
 */
export function pastedFiles(transfer: DataTransfer | null): readonly File[] {
	const files = [...(transfer?.files ?? [])];
	const lines = (transfer?.getData('text/plain') ?? '').split(/[\r\n]+/).filter((line) => line.trim() !== '');
	const areNames = lines.every((line) => files.some(({ name }) => line.trim().endsWith(name)));
	return areNames ? files : [];
}
