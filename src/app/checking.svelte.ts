import { type Check, checksOf, mendsOfCheck, type SharedMend } from '../core/findings/causes.ts';
import type { Level } from '../core/findings/finding.ts';
import type { RowResult } from '../core/findings/rowResult.ts';
import type { Scale } from '../core/length/formatLength.ts';
import type { Row } from '../core/show/row.ts';
import { sliceMs } from './inSlices.ts';

/** What is listed, with the mends of each of what is said. */
export interface ListedCheck extends Check {
	readonly mends: readonly (readonly SharedMend[])[];
}

/** What is looked at. */
export interface ToCheck {
	readonly rows: readonly Row[];
	readonly results: readonly RowResult[];
	readonly scale: Scale;
	/** The prints of which this is the worst, and where there are none, or of `note`, all. */
	readonly of: Level;
}

/** How many are listed until one asks for more: thousands would take the page seconds. */
const atATime = 100;

/** How many of them come into the page at once: as many as are drawn in a frame or two. */
const inOneTurn = { first: 12, then: 6 };

/**
 * The list of what is to check, made a slice at a time. What the first slice holds, which is all of most shows, is there at
 * once. When the show has changed, what was listed stays until as much is there again, but for the prints that have changed.
 */
export class Checking {
	/** What is listed so far. */
	listed = $state.raw<readonly ListedCheck[]>([]);
	/** Whether it is not all of what is asked for, or not of the show as it is. */
	isLate = $state.raw(false);
	/** Whether there are more of another level than that asked for. */
	isLess = $state.raw(false);
	/** How many are listed at most. */
	#most = $state.raw(atATime);
	#count = $state.raw(0);
	#steps: Iterator<ListedCheck | void, void> | undefined;
	#ready: ListedCheck[] = [];
	#timer: ReturnType<typeof setTimeout> | undefined;
	#told: (() => void) | undefined;

	/** Whether there is more than is listed until one asks for it. */
	get isCut(): boolean {
		return this.#count > this.#most;
	}

	/** Lists what is to check, from the first on; what was begun before is dropped. */
	begin(asked: ToCheck): void {
		this.listed = withoutChanged(this.listed, asked.rows);
		this.#ready = [];
		this.#steps = this.#stepsOf(asked);
		this.#goOn(inOneTurn.first);
	}

	/** Lists more. Resolves when there is one more, or all are there. */
	more(): Promise<void> {
		this.#most += atATime;
		return new Promise((resolve) => {
			this.#told = resolve;
			this.#goOn(inOneTurn.then);
		});
	}

	/** Lists nothing more. */
	stop(): void {
		clearTimeout(this.#timer);
	}

	*#stepsOf({ rows, results, scale, of }: ToCheck): Generator<ListedCheck | void, void> {
		const isOf = ({ findings: [worst] }: RowResult) => worst?.level === of;
		// Once the last of its level is mended the others follow.
		const isPart = of !== 'note' && results.some(isOf);
		const isListed = (result: RowResult) => !isPart || isOf(result);
		this.isLess = isPart && results.some((result) => result.findings.length > 0 && !isOf(result));
		const checks = yield* checksOf(rows, results, scale, isListed);
		this.#count = checks.length;
		for (const check of checks) yield { ...check, mends: yield* mendsOfCheck(check) };
	}

	#goOn(inThisTurn: number): void {
		this.stop();
		const until = performance.now() + sliceMs;
		const before = this.#ready.length;
		let isDone: boolean;
		do {
			isDone = this.#ready.length >= this.#most;
			const step = isDone ? undefined : this.#steps?.next();
			if (step?.value) this.#ready.push(step.value);
			isDone ||= step?.done !== false;
		} while (!isDone && this.#ready.length < before + inThisTurn && performance.now() < until);
		const isMore = this.#ready.length > before;
		if (isDone || (isMore && this.#ready.length >= this.listed.length)) this.listed = [...this.#ready];
		this.isLate = !isDone;
		if (isDone || isMore) this.#told?.();
		if (!isDone) this.#timer = setTimeout(() => this.#goOn(inOneTurn.then));
	}
}

/** What is listed, of those rows alone that are still the same. */
function withoutChanged(listed: readonly ListedCheck[], rows: readonly Row[]): readonly ListedCheck[] {
	const still = new Set(listed.length > 0 ? rows : []);
	return listed.flatMap((check) => {
		const prints = check.prints.filter(({ row }) => still.has(row));
		if (prints.length === check.prints.length) return check;
		const ids = new Set(prints.map(({ row }) => row.id));
		const mends = check.mends.map((ofOne) =>
			ofOne.map((mend) => ({ ...mend, changes: mend.changes.filter(({ id }) => ids.has(id)) })),
		);
		return prints.length === 0 ? [] : { ...check, prints, mends };
	});
}
