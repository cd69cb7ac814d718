import type { LeftAt } from '../storage/schema.ts';
import type { ShowStore, StoredShow } from '../storage/showStore.ts';
import { plainCopy } from './plainCopy.ts';

/** Before what has the focus is kept, in milliseconds. */
const pauseMs = 400;

type Steps = Pick<StoredShow, 'atBench' | 'atKnife'>;

/** Where one is in a show, kept beside it: no edit, and undo leaves it alone. Where it cannot be kept, only that is lost. */
export class KeptPlace {
	#steps = $state.raw<Steps>({});
	/** Where one was when the show was opened. */
	readonly left: LeftAt;
	readonly #keep: (place: Parameters<ShowStore['keepPlace']>[1]) => void;

	#leftAt: LeftAt['place'];
	#later: ReturnType<typeof setTimeout> | undefined;

	constructor(store: Pick<ShowStore, 'keepPlace'>, { show, left = {}, ...stored }: StoredShow) {
		this.#steps = stored;
		this.left = left;
		this.#leftAt = left.place;
		this.#keep = (place) => void store.keepPlace(show.id, place).catch(() => undefined);
	}

	/** The step that was last active at the bench, as the bench names it. */
	get atBench(): string | undefined {
		return this.#steps.atBench;
	}

	/** The step that was last active at the knife, as the knife names it. */
	get atKnife(): string | undefined {
		return this.#steps.atKnife;
	}

	/** Goes to a step at the bench or the knife. */
	goTo(steps: Steps): void {
		const isThere = Object.entries(steps).every(([at, step]) => this.#steps[at as keyof Steps] === step);
		if (isThere) return;
		this.#steps = { ...this.#steps, ...steps };
		this.#keep(steps);
	}

	/**
	 * Keeps where one is, to begin there when the show is opened again: another place at once, for the next moment may be
	 * the last; what has the focus in it after a pause, for a key that is held must not write at each cell.
	 */
	leaveAt(left: LeftAt): void {
		clearTimeout(this.#later);
		const keep = () => this.#keep({ left: plainCopy(left) });
		if (left.place === this.#leftAt) this.#later = setTimeout(keep, pauseMs);
		else keep();
		this.#leftAt = left.place;
	}
}
