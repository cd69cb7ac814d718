/** How long the address of a file holds, in milliseconds: some browsers begin to read only after a question. */
const keptMs = 60_000;

/** Has the browser save a file. @returns its name */
export function download(file: File): string {
	const address = URL.createObjectURL(file);
	const link = document.createElement('a');
	link.href = address;
	link.download = file.name;
	link.click();
	setTimeout(() => URL.revokeObjectURL(address), keptMs);
	return file.name;
}
