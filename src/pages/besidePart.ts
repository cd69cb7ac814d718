// One file of the build: menus and words of the grid, what stands beside it, and in its place on a phone or where a show is empty.
export { cellWords } from '../ui/grid/cellWords.ts';
export { columnMenu } from '../ui/grid/columnMenu.ts';
export { default as GridMenu } from '../ui/grid/GridMenu.svelte';
export { default as PrintForm } from '../ui/grid/PrintForm.svelte';
export { default as RowMount } from '../ui/grid/RowMount.svelte';
export { rowMenu } from '../ui/grid/rowMenu.ts';
export { default as LostNote } from '../ui/shelf/LostNote.svelte';
export { default as PicturesNotHere } from './PicturesNotHere.svelte';
export { default as PrintBeside } from './PrintBeside.svelte';
export { default as StartScreen } from './StartScreen.svelte';
export { pasteByButton } from '../ui/grid/pasteByButton.ts';
