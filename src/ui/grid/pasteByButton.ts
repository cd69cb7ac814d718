import { clipboardRefused, nothingToPaste } from '../../core/grid/saidOfClipboard.ts';
import { pasteText } from './gridClipboard.ts';
import type { GridState } from './gridState.svelte.ts';

/**
 * Pastes into the selected cells, asked by a button: the browser may ask whether it may.
 * @param onpictures called with pictures that were copied, unless a text was: one of cells comes with their text
 */
export async function pasteByButton(grid: GridState, onpictures: (pictures: readonly File[]) => void): Promise<void> {
	grid.editor.commit('stay', true);
	const { focus } = grid.selection;
	let text = '';
	const pictures: File[] = [];
	try {
		for (const item of await navigator.clipboard.read()) {
			for (const type of item.types) {
				if (type === 'text/plain') text += await (await item.getType(type)).text();
				else if (type === 'image/png') pictures.push(new File([await item.getType(type)], 'image.png', { type }));
			}
		}
	} catch {
		return grid.notices.show(clipboardRefused('paste'));
	}
	grid.selection.restore(focus); // the selection may have moved while the browser asked
	if (text !== '') pasteText(grid, text);
	else if (pictures.length > 0) onpictures(pictures);
	else grid.notices.show(nothingToPaste);
}
