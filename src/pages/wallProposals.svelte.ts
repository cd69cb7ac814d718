import type { Session } from '../app/session.svelte.ts';
import type { HeightOrder } from '../core/walls/arrange.ts';
import { hangWalls } from '../core/walls/hangWalls.ts';
import { wallLine } from '../core/walls/wallWords.ts';
import { type Arrangement, arrangements, type WallWork } from './wallWork.ts';

/** An arrangement that is proposed: what it is, how the walls were before it, in words, and what comes of it. */
export interface Proposed {
	readonly kind: Arrangement;
	readonly before: readonly string[];
	readonly result: ReturnType<WallWork['propose']>;
}

/** Arrangements of the walls that are looked at before they are made. */
export class WallProposals {
	/** The one that is looked at now. */
	now = $state.raw<Proposed>();
	heights = $state<HeightOrder>('tallest first');
	readonly #session: Session;
	readonly #work: WallWork;

	constructor(session: Session, work: WallWork) {
		this.#session = session;
		this.#work = work;
	}

	/** @param wall the one to arrange where it is of one, from 0 */
	propose(kind: Arrangement, wall: number): void {
		const { results, settings } = this.#session;
		const before = hangWalls(results, settings).walls.map((each) => wallLine(each, settings));
		this.now = { kind, before, result: this.#work.propose(kind, wall, this.heights) };
	}

	/** Makes what is proposed. @returns what that is called; undefined where nothing is */
	apply(): string | undefined {
		if (!this.now) return undefined;
		const { kind, result } = this.now;
		const label = `${arrangements[kind]}${kind === 'by height' ? `, ${this.heights}` : ''}`;
		this.#work.arrange(result.changes, label);
		this.now = undefined;
		return label;
	}
}
