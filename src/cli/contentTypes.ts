import { extname } from 'node:path';

const contentTypes: Readonly<Record<string, string>> = {
	'.css': 'text/css; charset=utf-8',
	'.csv': 'text/csv; charset=utf-8',
	'.html': 'text/html; charset=utf-8',
	'.js': 'text/javascript; charset=utf-8',
	'.json': 'application/json; charset=utf-8',
	'.png': 'image/png',
	'.svg': 'image/svg+xml',
	'.txt': 'text/plain; charset=utf-8',
	'.wasm': 'application/wasm',
	'.woff2': 'font/woff2',
	'.webmanifest': 'application/manifest+json; charset=utf-8',
};

/** What a file holds, by the ending of its name, as a host says it. */
export const contentType = (file: string): string =>
	contentTypes[extname(file).toLowerCase()] ?? 'application/octet-stream';
