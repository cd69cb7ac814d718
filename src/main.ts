import { mount } from 'svelte';
import App from './App.svelte';
import { trustOwnScripts } from './app/trustedUrls.ts';
import { watchForUpdate } from './app/watchForUpdate.ts';
import './ui/base.css';

trustOwnScripts();
mount(App, { target: document.querySelector('#app')!, props: { update: watchForUpdate(() => Promise.resolve()) } });
