// Comes before the app and needs nothing of it: says in the page what is wrong where the app does not start, and saves
// what is stored as a file. The build makes one file of it, which is not the app's.
import { download } from '../app/download.ts';
import { hasStopped, nothingStored, partMissing, storedNotRead, storedSaved } from '../core/device/startProblem.ts';
import { readStored } from './readStored.ts';
import { isStarting, tellInPage } from './startPage.ts';
import { storedAsBackup } from './storedAsBackup.ts';

/** The database of the shows; src/app gives it the same name. */
const databaseName = 'evenhang';

// The browser looks for what is stored while the app is still being compiled. To ask so makes nothing where nothing is.
(async () => indexedDB.databases())().catch(() => undefined);

// Heard on its way down: what does not load tells nobody but itself.
addEventListener(
	'error',
	(event) => {
		const part = partOf(event.target);
		if (part !== undefined) tellInPage(partMissing(part));
		else if (event instanceof ErrorEvent && isStarting()) tellInPage(hasStopped(event.message));
	},
	true,
);

addEventListener('unhandledrejection', ({ reason }) => {
	if (isStarting()) tellInPage(hasStopped(reason instanceof Error ? reason.message : String(reason)));
});

addEventListener('DOMContentLoaded', () => {
	const button = document.querySelector<HTMLButtonElement>('#start button')!;
	button.hidden = false;
	button.addEventListener('click', () => void saveStored().then(say));
});

/** The file of a script or a style sheet of the page; undefined for anything else. */
function partOf(target: EventTarget | null): string | undefined {
	if (target instanceof HTMLScriptElement) return fileName(target.src);
	if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') return fileName(target.href);
	return undefined;
}

const fileName = (address: string): string => new URL(address).pathname.split('/').at(-1) ?? '';

/** Saves everything stored as a file. @returns what is to be said about it */
async function saveStored(): Promise<string> {
	try {
		const records = await readStored(databaseName);
		if (!records || records.length === 0) return nothingStored;
		const { text, shows, unread } = storedAsBackup(records);
		const name = `All shows ${new Date().toISOString().slice(0, 10)}.evenhang.json`;
		return storedSaved(shows, unread, download(new File([text], name, { type: 'application/json' })));
	} catch (cause) {
		return storedNotRead((cause as Error).name);
	}
}

function say(sentence: string): void {
	document.querySelector('#start .said')!.textContent = sentence;
}
