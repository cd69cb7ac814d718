// One file of the build: menus and words of the grid, what stands beside it, and in its place on a phone or where a show is empty.
export { cellWords } from '../ui/grid/cellWords.ts';
export { default as PrintForm } from '../ui/grid/PrintForm.svelte';
export { mountScale } from '../ui/grid/mountScale.ts';
export { default as RowMount } from '../ui/grid/RowMount.svelte';
export { default as LostNote } from '../ui/shelf/LostNote.svelte';
export { nextFinding } from './nextFinding.ts';
export { default as PicturesNotHere } from './PicturesNotHere.svelte';
export { default as PrintBeside } from './PrintBeside.svelte';
export { default as PrintsMenu } from './PrintsMenu.svelte';
export { default as StartScreen } from './StartScreen.svelte';
export { pasteByButton } from '../ui/grid/pasteByButton.ts';
