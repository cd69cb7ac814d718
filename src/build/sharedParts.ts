import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Rolldown } from 'vite';

/**
 * The files of the build in which those modules lie that more than one part of the app is made of. The parts: the first
 * screen, what is done in the grid, what is loaded after that, and each worker. Few files, for each that is kept on the
 * device is looked at again at every opening; and none that a worker loads holds anything of the page.
 *
 * - `core`: what the first screen shares with workers
 * - `work`: what workers share with what comes after the first screen
 * - `search`: what only workers are made of, most of it the solver of their plans: by themselves they were 0.9 kB more
 * - `first`: all else of the first screen, whether it shares that or not: in two files it was 1.8 kB more
 * - `hands`: what is done in the grid, with what later parts are made of too
 * - `later`: what the parts share that come after the first screen, with what is found in rows and the panel beside the grid,
 *   which are the first of them, and the second copies, which are made after it: by themselves they were 1.1 kB more
 *
 * All else lies with the one part that it belongs to: the other pages, or what is printed. A file takes with it what its
 * modules import, so the order counts.
 */
export function sharedParts(root: string): Rolldown.CodeSplittingGroup[] {
	const first = join(root, 'src/main.ts');
	const hands = join(root, 'src/ui/grid/handsPart.ts');
	const late = ['app/judgingPart', 'app/copiesPart', 'pages/besidePart'].map((name) => join(root, `src/${name}.ts`));
	const apart = ['pages/othersPart', 'pages/paperPart'].map((name) => join(root, `src/${name}.ts`));
	const folder = join(root, 'src/workers');
	const names = readdirSync(folder).filter((name) => name.endsWith('.worker.ts'));
	const workers = names.map((name) => join(folder, name));
	const parts = [first, hands, ...late, ...apart, ...workers];
	let modulesOf: ReadonlyMap<string, ReadonlySet<string>> | undefined;
	const fileOf: Rolldown.CodeSplittingNameFunction = (id, bundle) => {
		if (id === first || workers.includes(id)) return null;
		const importsOf = (module: string) => bundle.getModuleInfo(module)?.importedIds ?? [];
		modulesOf ??= new Map(parts.map((part) => [part, reachedFrom(part, importsOf)]));
		const sharing = parts.filter((part) => modulesOf!.get(part)!.has(id));
		if (sharing.length < 2 && sharing.every((part) => apart.includes(part))) return null;
		const isInWorker = sharing.some((part) => workers.includes(part));
		if (sharing.includes(first)) return isInWorker ? 'core' : 'first';
		if (sharing.includes(hands)) return isInWorker ? 'core' : 'hands';
		if (!isInWorker) return 'later';
		return sharing.every((part) => workers.includes(part)) ? 'search' : 'work';
	};
	return ['later', 'hands', 'first', 'search', 'work', 'core'].map((file, priority) => ({
		name: (id, bundle) => (fileOf(id, bundle) === file ? file : null),
		debugName: file,
		priority,
	}));
}

/** A module with all that it imports. */
function reachedFrom(start: string, importsOf: (module: string) => readonly string[]): ReadonlySet<string> {
	const reached = new Set([start]);
	for (const module of reached) for (const imported of importsOf(module)) reached.add(imported);
	return reached;
}
