// One file of the build: what is done in the grid, by keys, fingers and the clipboard. It is asked for as the page starts.
export { askedOf } from '../../core/grid/saidOfArranging.ts';
export { default as ArrangedNote } from './ArrangedNote.svelte';
export { default as CellEditor } from './CellEditor.svelte';
export { filterChoices } from './filterChoices.ts';
export { default as FilterPanel } from './FilterPanel.svelte';
export { gridAnswers } from './gridAnswers.ts';
export { copyByButton } from './gridClipboard.ts';
export { default as GridHandles } from './GridHandles.svelte';
export { default as GridNotes } from './GridNotes.svelte';
export { GridState } from './gridState.svelte.ts';
export { default as TypingKeys } from './TypingKeys.svelte';
export { default as ViewPanel } from './ViewPanel.svelte';
