/**
 * The floors: what a folder may import besides itself. Everything else is a breach, packages, `node:` and type imports
 * included. `tests/house/floors.test.ts` proves that they hold.
 */
const floors = {
	core: [],
	files: ['^src/core/', '^node_modules/fflate/', '^node_modules/papaparse/', '^node_modules/@types/papaparse/'],
	storage: ['^src/core/', '^node_modules/idb/'],
	solver: ['^src/core/', '^node_modules/highs/'],
	workers: ['^src/(core|files|solver)/', '^highs/runtime\\?url$'], // the address of the WebAssembly
	app: [
		'^src/(core|files|storage|workers)/',
		'^node_modules/svelte/',
		'^src/serviceWorker/protocol\\.ts$', // what is said between the two
		'^shared/samples/', // the example show, built in
	],
	serviceWorker: [],
	start: ['^src/(core|files)/', '^src/app/download\\.ts$', '^src/storage/damage\\.ts$'],
	ui: ['^src/core/', '^node_modules/svelte/'],
	pages: ['^src/(core|app|ui)/', '^node_modules/svelte/', '^shared/samples/'],
	build: [
		'^src/cli/contentTypes\\.ts$',
		'^src/serviceWorker/builtFiles\\.ts$',
		'^node_modules/(vite|vite-plugin-pwa)/',
		'^(node:)?[a-z_/]+$',
	],
	cli: [
		'^src/(core|files|solver)/',
		'^node_modules/papaparse/',
		'^node_modules/@types/papaparse/',
		'^(node:)?[a-z_/]+$',
	],
};

/**
 * The floors inside core, from the bottom, each with its rooms. A room may import itself and every floor below its own;
 * neither a floor above nor a room beside it, types included.
 */
const roomsOfCore = [
	['values', 'device'],
	['length'],
	['settings'],
	['stock'],
	['show'],
	['commands', 'imports'],
	['row'],
	['walls'],
	['findings'],
	['advice', 'reasons', 'harmonise', 'frameChoice'],
	['bench', 'sheets', 'sticks'],
	['order', 'packing'],
	['record'],
	['lists'],
	['grid', 'labels', 'merge', 'pictures'],
];

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
	forbidden: [
		...Object.entries(floors).map(([floor, allowed]) => ({
			name: `floor-${floor}`,
			comment: `src/${floor} may import itself${allowed.length ? ` and ${allowed.join(' ')}` : ' only'}`,
			severity: 'error',
			from: { path: `^src/${floor}/` },
			to: { pathNot: [`^src/${floor}/`, ...allowed] },
		})),
		...roomsOfCore.flatMap((rooms, floor) =>
			rooms.map((room) => {
				const below = roomsOfCore.slice(0, floor).flat();
				return {
					name: `room-${room}`,
					comment: `src/core/${room} may import itself${below.length ? ` and ${below.join(', ')}` : ' only'}`,
					severity: 'error',
					from: { path: `^src/core/${room}/` },
					to: { path: '^src/core/', pathNot: `^src/core/(${[room, ...below].join('|')})/` },
				};
			}),
		),
		{
			name: 'no-node-in-the-app',
			comment: 'only src/build and src/cli run under Node',
			severity: 'error',
			from: { path: '^src/', pathNot: '^src/(build|cli)/' },
			to: { dependencyTypes: ['core'] },
		},
		{
			name: 'cells-are-read-once',
			comment: 'workOut reads the cells of a row; whoever else wants to know asks its result',
			severity: 'error',
			from: { path: '^src/', pathNot: '^src/core/row/' },
			to: {
				path: '^src/core/row/(readCells|readCount|rowWords|edition)\\.ts$',
				dependencyTypesNot: ['type-only'],
			},
		},
		{
			name: 'no-cycles',
			comment: 'a cycle has no floor',
			severity: 'error',
			from: {},
			to: { circular: true },
		},
		{
			name: 'workers-are-started',
			comment: 'a worker is started by its address, never imported: imported, it would run on the main thread',
			severity: 'error',
			from: {},
			to: { path: '\\.worker\\.ts$' },
		},
		{
			name: 'tests-stay-outside',
			comment: 'nothing that is shipped knows the tests',
			severity: 'error',
			from: { path: '^src/' },
			to: { path: '^tests/' },
		},
		{
			name: 'resolves',
			comment: 'an import that leads nowhere',
			severity: 'error',
			from: {},
			to: { couldNotResolve: true, pathNot: '^virtual:|\\?url$' }, // what the build makes
		},
	],
	options: {
		doNotFollow: { path: '^node_modules/' },
		tsPreCompilationDeps: true,
		tsConfig: { fileName: 'tsconfig.json' },
		enhancedResolveOptions: {
			exportsFields: ['exports'],
			conditionNames: ['svelte', 'browser', 'import', 'types', 'default'],
		},
	},
};
