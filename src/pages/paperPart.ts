// One file of the build: the places of what is printed, with every document, and of what is sold.
export { default as PaperPage } from './PaperPage.svelte';
export { default as SalesPage } from './SalesPage.svelte';
