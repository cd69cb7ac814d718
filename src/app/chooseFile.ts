/** The kinds of picture that are offered first; what a file is, its bytes say. */
export const pictureKinds = 'image/jpeg,image/png,image/webp,image/avif,image/gif,image/tiff,image/*';

/**
 * Lets the person choose a file; to be called from a tap or a key.
 * @param accept the endings and kinds that are offered first
 * @returns undefined if none was chosen
 */
export async function chooseFile(
	accept = '.csv,.tsv,.txt,.json,.zip,text/csv,application/json,application/zip',
): Promise<File | undefined> {
	return (await chosen(accept, false))[0];
}

/** Lets the person choose several files at once, as `chooseFile` does one. */
export const chooseFiles = (accept: string): Promise<readonly File[]> => chosen(accept, true);

function chosen(accept: string, isMultiple: boolean): Promise<readonly File[]> {
	const input = document.createElement('input');
	input.type = 'file';
	input.accept = accept;
	input.multiple = isMultiple;
	input.hidden = true;
	document.body.append(input); // a browser may drop one that is nowhere before the person has chosen
	return new Promise((resolve) => {
		const settle = () => {
			input.remove();
			resolve([...(input.files ?? [])]);
		};
		input.addEventListener('change', settle);
		input.addEventListener('cancel', settle);
		input.click();
	});
}
