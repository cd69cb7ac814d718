import { mount } from 'svelte';
import App from './App.svelte';
import { openShelf } from './app/shelf.svelte.ts';
import { trustOwnScripts } from './app/trustedUrls.ts';
import { watchForUpdate } from './app/watchForUpdate.ts';
import './ui/base.css';

trustOwnScripts();
let tellWaiting: (sentence: string) => void = () => undefined;
const opening = openShelf({ onWaiting: (sentence) => tellWaiting(sentence) });
// A session that cannot be opened has nothing to lose; the screen says why, and the newer version may know better.
const whenSaved = () =>
	opening.then(
		({ session }) => session.whenSaved(),
		() => undefined,
	);
mount(App, {
	target: document.querySelector('#app')!,
	props: {
		opening,
		update: watchForUpdate(whenSaved),
		onwaiting: (tell: typeof tellWaiting) => void (tellWaiting = tell),
	},
});
