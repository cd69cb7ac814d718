/** Where it is kept: it belongs to this device, and to no show. */
const keptAs = 'evenhang first steps';

/** The first steps of somebody who is new here, in their order. */
export const firstSteps = ['units', 'mount', 'boards', 'prints'] as const;

export type FirstStep = (typeof firstSteps)[number];

/** How far one is in the first steps, kept on this device; where nothing can be kept, for as long as the page is open. */
export class FirstSteps {
	#at = $state.raw<FirstStep | 'over'>(read());

	/** The step that is open. */
	get step(): FirstStep {
		return this.#at === 'over' ? 'units' : this.#at;
	}

	/** Whether an empty show has them no more: they were gone through, or skipped. */
	get isOver(): boolean {
		return this.#at === 'over';
	}

	go(to: FirstStep | 'over'): void {
		this.#at = to;
		try {
			localStorage.setItem(keptAs, to);
		} catch {
			// A browser that keeps nothing for this page has said so elsewhere.
		}
	}
}

function read(): FirstStep | 'over' {
	try {
		const kept = localStorage.getItem(keptAs);
		return kept === 'over' ? kept : (firstSteps.find((step) => step === kept) ?? 'units');
	} catch {
		return 'units';
	}
}
