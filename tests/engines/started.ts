import { type ChildProcess, spawn } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';

/** How long a browser may need to start or to end, on a machine with much else to do. */
const patienceMs = 120_000;

/** A program that was started, and those that it starts in turn. */
export interface Started {
	/** Ends them all, and waits until they are gone. */
	readonly end: () => Promise<void>;
}

/**
 * Starts a program in a group of its own, and waits until it is ready.
 * @param isReady asked again and again; gives something once it is
 * @throws Error with what the program said, if it ends before or is never ready
 */
export async function start<Ready>(
	command: string,
	args: readonly string[],
	env: Readonly<Record<string, string>>,
	isReady: () => Promise<Ready | undefined>,
): Promise<Started & { readonly ready: Ready }> {
	const child = spawn(command, args, {
		detached: true,
		env: { ...process.env, ...env },
		stdio: ['ignore', 'pipe', 'pipe'],
	});
	let said = '';
	for (const stream of [child.stdout, child.stderr])
		stream.setEncoding('utf8').on('data', (text: string) => (said = (said + text).slice(-4000)));
	const hasEnded = new Promise<void>((resolve) => {
		child.on('close', () => resolve());
		child.on('error', (cause) => {
			said += cause.message;
			resolve();
		});
	});
	const started = { end: () => endGroup(child, hasEnded) };
	const until = Date.now() + patienceMs;
	while (Date.now() < until && child.exitCode === null && child.pid !== undefined) {
		const ready = await isReady().catch(() => undefined); // not yet
		if (ready !== undefined) return { ...started, ready };
		await wait(100);
	}
	await started.end();
	throw new Error(`${command} did not start: ${said}`);
}

async function endGroup({ pid }: ChildProcess, hasEnded: Promise<void>): Promise<void> {
	if (pid === undefined) return;
	for (const signal of ['SIGTERM', 'SIGKILL'] as const) {
		try {
			process.kill(-pid, signal);
		} catch {
			return; // nobody is left
		}
		await Promise.race([hasEnded, wait(5000, undefined, { ref: false })]);
	}
}

/** Goes on with what was started; where that fails, it is ended. */
export async function orEnd<Result>({ end }: Started, goOn: () => Promise<Result>): Promise<Result> {
	try {
		return await goOn();
	} catch (cause) {
		await end();
		throw cause;
	}
}
