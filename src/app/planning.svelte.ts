import { untrack } from 'svelte';
import { Getting } from './getting.svelte.ts';
import { Packing } from './packing.svelte.ts';
import type { Session } from './session.svelte.ts';

/** Plans boards and sticks beside the screen, whatever one is doing, and what follows from the plans. */
export class Planning {
	readonly packing: Packing;
	readonly getting: Getting;

	/** Call it within an effect: it follows the show until that ends. */
	constructor(session: Session) {
		const packing = (this.packing = new Packing(session));
		const getting = (this.getting = new Getting(session, packing));
		$effect(() => {
			const { rows, ticks, cutSheets } = session.show;
			void [rows, ticks, cutSheets, session.settings];
			if (!session.isWorkedOut) return; // all rows are wanted for it
			untrack(() => {
				packing.later();
				getting.later();
			});
		});
		$effect(() => {
			void [session.show.rows, session.settings, getting.plans];
			if (session.isWorkedOut) untrack(() => session.costs.later());
		});
		$effect(() => () => {
			packing.close();
			getting.close();
		});
	}
}
