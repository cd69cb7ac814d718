import { changesFigures } from '../core/harmonise/changesFigures.ts';
import type { HarmonisedRow, Harmony } from '../core/harmonise/harmonise.ts';
import { harmoniseInWorker } from '../workers/harmoniseInWorker.ts';
import { ProposedChanges } from './proposedChanges.svelte.ts';
import type { Session } from './session.svelte.ts';

/** Harmonising a show: bringing it into a few sizes of its list. */
export class Harmonising extends ProposedChanges<HarmonisedRow, Harmony> {
	/** The most sizes that may be used. */
	most = $state(1);

	constructor(session: Session) {
		super(session, {
			label: 'Fewer sizes',
			search: ({ rows, settings, signal }) => harmoniseInWorker({ rows, settings, most: this.most }, signal),
			changes: changesFigures,
		});
	}
}
