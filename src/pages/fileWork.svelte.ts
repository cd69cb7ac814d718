import type { ImportOptions, ImportOutcome } from '../app/importFile.ts';
import type { Shelf } from '../app/shelf.svelte.ts';
import { leftBehind, notRead } from '../core/imports/fileReports.ts';

/** How far a large file is. */
export interface Progress {
	readonly source: string;
	readonly doing: 'reading' | 'unpacking' | 'working out' | 'packing';
	readonly done: number;
	readonly of: number;
	/** What is counted. */
	readonly what: 'rows' | 'pictures';
}

/** What may take long with a file, one at a time: the next one ends the one before. */
export class FileWork {
	#progress = $state.raw<Progress>();
	#job: AbortController | undefined;

	/** How far a file is that takes long; undefined where none is under way. */
	get progress(): Progress | undefined {
		return this.#progress;
	}

	/** Whether something is under way. */
	get isBusy(): boolean {
		return this.#job !== undefined;
	}

	/** Leaves what is under way. */
	leave(): void {
		this.#job?.abort(new DOMException('left', 'AbortError'));
	}

	/**
	 * Does it with its progress shown, until it is done or left, or its show is closed.
	 * @param onOutcome called with what has come of it; not where it was left
	 */
	async run(
		source: string,
		shelf: Shelf,
		work: (options: ImportOptions) => Promise<ImportOutcome>,
		onOutcome: (outcome: ImportOutcome) => void,
		what: Progress['what'] = 'rows',
	): Promise<void> {
		this.leave();
		const job = new AbortController();
		this.#job = job;
		const { signal } = shelf.session;
		const end = () => job.abort(signal.reason);
		signal.addEventListener('abort', end);
		try {
			const outcome = await work({
				memory: shelf.memory,
				signal: job.signal,
				onProgress: (doing, done, of) => {
					if (this.#job === job)
						this.#progress = { source, doing, done, of, what: doing === 'unpacking' ? 'pictures' : what };
				},
			});
			if (this.#job !== job) return;
			signal.throwIfAborted();
			onOutcome(outcome);
		} catch (cause) {
			if (signal.aborted) onOutcome({ kind: 'reported', report: leftBehind(source) });
			else if (!job.signal.aborted) onOutcome({ kind: 'reported', report: notRead(source, (cause as Error).message) });
		} finally {
			signal.removeEventListener('abort', end);
			if (this.#job === job) this.#job = this.#progress = undefined;
		}
	}
}
