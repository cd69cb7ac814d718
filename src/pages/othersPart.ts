// One file of the build: everything but the prints. It is loaded after the first screen.
export { givePutAside } from '../app/giveFile.ts';
export { Planning } from '../app/planning.svelte.ts';
export { sweepPictures } from '../app/sweepPictures.ts';
export { default as CutQuestion } from '../ui/bench/CutQuestion.svelte';
export { default as KeysNote } from '../ui/form/KeysNote.svelte';
export { default as DeskPanels } from './DeskPanels.svelte';
export { FileDesk } from './fileDesk.svelte.ts';
export { default as OtherPlace } from './OtherPlace.svelte';
