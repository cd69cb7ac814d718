/**
 * Lets the person choose a file; to be called from a tap or a key.
 * @param accept the endings and kinds that are offered first
 * @returns undefined if none was chosen
 */
export function chooseFile(accept = '.csv,.tsv,.txt,.json,text/csv,application/json'): Promise<File | undefined> {
	const input = document.createElement('input');
	input.type = 'file';
	input.accept = accept;
	input.hidden = true;
	document.body.append(input); // a browser may drop one that is nowhere before the person has chosen
	return new Promise((resolve) => {
		const settle = () => {
			input.remove();
			resolve(input.files?.[0]);
		};
		input.addEventListener('change', settle);
		input.addEventListener('cancel', settle);
		input.click();
	});
}
