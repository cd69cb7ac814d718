import type { ManifestOptions } from 'vite-plugin-pwa';

/** What the device learns of the app when it is installed. */
export const webManifest = (description: string): Partial<ManifestOptions> => ({
	name: 'Evenhang',
	short_name: 'Evenhang',
	description,
	lang: 'en',
	start_url: './',
	scope: './',
	display: 'standalone',
	theme_color: '#f6f2ea',
	background_color: '#f6f2ea',
	// Another app's "share"; the service worker keeps what is shared (src/serviceWorker/shareTarget.ts).
	share_target: {
		action: './share-target',
		method: 'POST',
		enctype: 'multipart/form-data',
		params: {
			text: 'text',
			files: [
				{
					name: 'files',
					accept: [
						'text/csv',
						'.csv',
						'text/tab-separated-values',
						'.tsv',
						'text/plain',
						'.txt',
						'application/json',
						'.json',
						'application/zip',
						'.zip',
						'image/*',
					],
				},
			],
		},
	},
	// A file's "open with".
	file_handlers: [
		{
			action: './',
			accept: {
				'text/csv': ['.csv'],
				'text/tab-separated-values': ['.tsv'],
				'application/json': ['.json'],
				'application/zip': ['.zip'],
			},
		},
	],
	launch_handler: { client_mode: 'navigate-new' },
	icons: [
		{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
		{ src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
		{ src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
		{ src: 'maskable-192.png', sizes: '192x192', type: 'image/png', purpose: 'maskable' },
		{ src: 'maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
	],
});
