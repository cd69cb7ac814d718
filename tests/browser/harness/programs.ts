import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Runs a program and shows what it says. @returns whether it ended well */
export function run(command: string, ...args: string[]): boolean {
	console.log(`${command} ${args.join(' ')}`);
	return spawnSync(command, args, { stdio: 'inherit' }).status === 0;
}

/** Installs packages where that can be done without asking: on Debian and its kin, as root. Elsewhere it does nothing. */
export function aptInstall(...packages: readonly string[]): void {
	if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
	if (run('apt-get', 'update', '-q')) run('apt-get', 'install', '-y', '-q', '--no-install-recommends', ...packages);
}

/** Where the first of these programs lies that the command line knows; undefined if it knows none of them. */
export function onPath(...names: readonly string[]): string | undefined {
	const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
	return names.flatMap((name) => folders.map((folder) => join(folder, name))).find((place) => existsSync(place));
}
