// The service worker: keeps the files of its version on the device and answers with them. The build makes one file of
// it, with everything in it, so that an installation is whole or is none.
import { files } from './builtFiles.ts';
import { KeptFiles } from './keptFiles.ts';
import type { CheckAnswer, Request as PageRequest } from './protocol.ts';
import { isShared, takeShared } from './shareTarget.ts';

declare const self: ServiceWorkerGlobalScope;

const { scope } = self.registration;
const kept = new KeptFiles(files, scope);

// Where a file does not come, this version is given up: the one before stays in charge, or none.
self.addEventListener('install', (event) => event.waitUntil(kept.install()));

// The first visit already works with the connection gone, without a reload between.
self.addEventListener('activate', (event) => event.waitUntil(tidyUp('all').then(() => self.clients.claim())));

self.addEventListener('fetch', (event) => {
	const { request } = event;
	if (isShared(request, scope)) return event.respondWith(takeShared(request, scope));
	if (request.method !== 'GET' || !kept.isInside(request.url)) return;
	// A page that cannot be had from here may be had from the host, in a newer version.
	if (kept.has(request.url)) event.respondWith(kept.file(request.url).catch(() => fetch(request)));
	else if (request.mode !== 'navigate')
		event.respondWith(kept.fileOfOthers(request.url).then((response) => response ?? fetch(request)));
});

self.addEventListener('message', (event) => {
	const request = event.data as PageRequest;
	if (request.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
	else event.waitUntil(check(request.script, event.ports[0]));
});

async function check(script: string, answerTo: MessagePort | undefined): Promise<void> {
	const answer: CheckAnswer = { isWhole: await kept.check(), isOfPage: kept.has(script) };
	answerTo?.postMessage(answer);
	await tidyUp('older');
}

/** What cannot be deleted stays until the next time, and does no harm. */
const tidyUp = (which: 'older' | 'all') => kept.letGo(which).catch(() => undefined);
