// One file of the build: the place of what is printed, with every document.
export { default as PaperPage } from './PaperPage.svelte';
