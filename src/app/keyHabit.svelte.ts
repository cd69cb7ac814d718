import type { EnterHabit } from '../core/grid/enterHabit.ts';

/** Where it is kept: it belongs to the hands at this device, and to no show. */
const keptAs = 'evenhang enter';

/** A habit of the keyboard, kept on this device; where nothing can be kept, for as long as the page is open. */
export class KeyHabit {
	#enter = $state.raw<EnterHabit>(read());

	get enter(): EnterHabit {
		return this.#enter;
	}

	set enter(enter: EnterHabit) {
		this.#enter = enter;
		try {
			localStorage.setItem(keptAs, enter);
		} catch {
			// A browser that keeps nothing for this page has said so elsewhere.
		}
	}
}

function read(): EnterHabit {
	try {
		return localStorage.getItem(keptAs) === 'down' ? 'down' : 'open';
	} catch {
		return 'open';
	}
}
