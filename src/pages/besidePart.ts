// One file of the build: what stands beside the grid, and in its place on a phone or where a show is empty.
export { default as AllFindings } from '../ui/findings/AllFindings.svelte';
export { default as PrintForm } from '../ui/grid/PrintForm.svelte';
export { default as PrintPanel } from '../ui/mount/PrintPanel.svelte';
export { default as StartScreen } from './StartScreen.svelte';
