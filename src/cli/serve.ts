import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { serveFolder } from './staticHost.ts';

const usualPort = 4173;
const folder = fileURLToPath(new URL('../../dist', import.meta.url));

/** The port asked for in `PORT`; undefined if it is not a port. */
function portAsked(text: string | undefined): number | undefined {
	if (text === undefined || text.trim() === '') return usualPort;
	const port = Number(text);
	return Number.isInteger(port) && port >= 0 && port <= 65_535 ? port : undefined;
}

const port = portAsked(process.env.PORT);
if (port === undefined) {
	console.error(`PORT is "${process.env.PORT}", and a port is a whole number from 0 to 65535.`);
	process.exit(2);
}
if (!existsSync(`${folder}/index.html`)) {
	console.error('Nothing is built yet: run "npm run build" first, or "npm start", which does both.');
	process.exit(1);
}
try {
	const host = await serveFolder(folder, { port, otherPorts: 100 });
	if (port !== 0 && host.port !== port) console.log(`Port ${port} is taken.`);
	console.log(`Evenhang is at ${host.address}`);
} catch (cause) {
	console.error(`No address could be had: ${(cause as Error).message}`);
	process.exit(1);
}
