// What the cold start of the app is measured against: a page that does nothing but show the same rows as text.
import { mount } from 'svelte';
import BlankPage from './BlankPage.svelte';

mount(BlankPage, { target: document.body });
void navigator.serviceWorker.register('./sw.js');
