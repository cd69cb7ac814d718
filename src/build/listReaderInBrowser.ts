import type { Plugin } from 'vite';

/** How the reader chooses among what it reads from, and what there is besides texts: here lists are always texts. */
const onlyTexts: readonly (readonly [written: string, instead: string])[] = [
	[
		'new(t.download?d:f)(t)):!0===e.readable&&U(e.read)&&U(e.on)?i=new c(t):(n.File&&e instanceof File||e instanceof Object)&&(i=new l(t))',
		'new f(t)):0',
	],
	['if(!t.worker||!w.WORKERS_SUPPORTED)return', 'return'], // and it starts no worker of its own
	['w.NetworkStreamer=d,w.FileStreamer=l,', ''],
	[',w.ReadableStreamStreamer=c', ''],
	[
		'(d.prototype=Object.create(u.prototype)).constructor=d,(l.prototype=Object.create(u.prototype)).constructor=l,',
		'',
	],
	[',(c.prototype=Object.create(u.prototype)).constructor=c', ''],
];

/**
 * Makes a module of the reader of lists, which is written for every way of loading a script there has been: else the build
 * adds a loader for one of them, and puts each of its functions through that. What it reads from besides texts is left out.
 */
export const listReaderInBrowser = (): Plugin => ({
	name: 'evenhang-list-reader',
	apply: 'build',
	transform: {
		filter: { id: /papaparse\.min\.js$/ },
		handler(code) {
			for (const [written, instead] of onlyTexts) {
				if (!code.includes(written)) this.error('papaparse chooses in another way what it reads from');
				code = code.replace(written, instead);
			}
			return `const module = { exports: {} };\n((exports) => {\n${code}\n})(module.exports);\nexport default module.exports;`;
		},
	},
});
