import type { FrameChoice, FramedPrint } from '../core/frameChoice/giveFrames.ts';
import { framesInWorker } from '../workers/framesInWorker.ts';
import { ProposedChanges } from './proposedChanges.svelte.ts';
import type { Session } from './session.svelte.ts';

/** Choosing a frame for every print that names none, from those that are there. */
export class ChoosingFrames extends ProposedChanges<FramedPrint, FrameChoice> {
	/** @param choose replaced in tests */
	constructor(session: Session, choose = framesInWorker) {
		super(session, {
			label: 'Choose frames',
			search: ({ rows, settings, signal, onProgress }) => choose({ rows, settings }, signal, onProgress),
			changes: ({ frame }) => frame !== undefined,
		});
	}
}
