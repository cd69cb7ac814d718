import type { FrameChoice, FramedPrint } from '../core/frameChoice/giveFrames.ts';
import { framesInWorker } from '../workers/framesInWorker.ts';
import { ProposedChanges } from './proposedChanges.svelte.ts';
import type { Session } from './session.svelte.ts';

/** The search may be stopped by hand at any time; large shows of many copies take some seconds. */
const mostSeconds = 60;

/** Choosing a frame for every print that names none, from those that are there. */
export class ChoosingFrames extends ProposedChanges<FramedPrint, FrameChoice> {
	/** @param choose replaced in tests */
	constructor(session: Session, choose = framesInWorker) {
		super(session, {
			label: 'Choose frames',
			search: ({ rows, settings, signal, onProgress }) =>
				choose({ rows, settings, seconds: mostSeconds }, signal, onProgress),
			changes: ({ frame }) => frame !== undefined,
		});
	}
}
