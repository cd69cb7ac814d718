/** The corners of the picture that is dropped, from the top left: red, green; blue, white. */
export const painted = 'rgbw';

/** Runs in the page: paints a picture and drops it as a file of that name. */
export async function dropPainted(name: string): Promise<void> {
	const canvas = Object.assign(document.createElement('canvas'), { width: 90, height: 60 });
	const context = canvas.getContext('2d')!;
	for (const [at, colour] of ['#f00', '#0f0', '#00f', '#fff'].entries()) {
		context.fillStyle = colour;
		context.fillRect((at % 2) * 45, at < 2 ? 0 : 30, 45, 30);
	}
	const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
	const dataTransfer = new DataTransfer();
	dataTransfer.items.add(new File([blob!], name, { type: 'image/png' }));
	document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
}

/** Runs in the page: the corners of the picture in the mount that is drawn; nothing where none is. */
export async function cornersDrawn(): Promise<string> {
	const address = document.querySelector('.beside svg image')?.getAttribute('href');
	if (address?.startsWith('blob:') !== true) return '';
	const image = Object.assign(new Image(), { src: address });
	await image.decode();
	const { width, height } = image;
	const context = Object.assign(document.createElement('canvas'), { width, height }).getContext('2d')!;
	context.drawImage(image, 0, 0);
	return [
		[0.25, 0.25],
		[0.75, 0.25],
		[0.25, 0.75],
		[0.75, 0.75],
	]
		.map(([x, y]) => {
			const [red, green, blue] = context.getImageData(Math.floor(x! * width), Math.floor(y! * height), 1, 1).data;
			const lit = [red! > 128, green! > 128, blue! > 128];
			return lit.every(Boolean) ? 'w' : (['r', 'g', 'b'][lit.indexOf(true)] ?? '-');
		})
		.join('');
}
