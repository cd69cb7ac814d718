import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
	interface ProvidedContext {
		/** The folder for other builds of the app; it is gone when the last test has ended. */
		builds: string;
	}
}

let folder: string;

/** Before any file of browser tests: makes a folder for other builds of the app. */
export async function setup(project: TestProject): Promise<void> {
	folder = await mkdtemp(join(tmpdir(), 'evenhang-builds-'));
	project.provide('builds', folder);
}

/** Removes the folder and all builds in it. */
export const teardown = (): Promise<void> => rm(folder, { recursive: true, force: true });
