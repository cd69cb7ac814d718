import { mount } from 'svelte';
import App from './App.svelte';
import { keepApp } from './app/keepApp.ts';
import { openShelf } from './app/openShelf.ts';
import { trustOwnScripts } from './app/trustedUrls.ts';
import { hasStopped, storageSilent } from './core/device/startProblem.ts';
import { appIsThere, takeBackInPage, tellInPage } from './start/startPage.ts';
import { handsPart } from './pages/lateParts.ts';
import './ui/base.css';

/** How long opening the show may take before something is said about it, in milliseconds. */
const longestOpening = 10_000;

trustOwnScripts();
void handsPart.load();
let tellWaiting: (sentence: string) => void = () => undefined;
const opening = openShelf({ isScreenFirst: true, onWaiting: (sentence) => tellWaiting(sentence) });
const late = setTimeout(() => tellInPage(storageSilent), longestOpening);
opening
	.finally(() => {
		clearTimeout(late);
		takeBackInPage(storageSilent);
	})
	.catch((cause: unknown) => tellInPage(cause instanceof Error ? cause.message : String(cause)));
// A session that cannot be opened has nothing to lose, and the newer version may know better.
const whenSaved = () =>
	opening.then(
		({ session }) => session.whenSaved(),
		() => undefined,
	);
mount(App, {
	target: document.querySelector('#app')!,
	props: {
		opening,
		...keepApp(import.meta.url, whenSaved),
		onwaiting: (tell: typeof tellWaiting) => void (tellWaiting = tell),
		onstop: (cause: unknown) => {
			console.error(cause);
			tellInPage(hasStopped(cause instanceof Error ? cause.message : String(cause)));
		},
	},
});
appIsThere();
