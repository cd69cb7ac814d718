import { type Edit, isEmpty } from '../core/show/edit.ts';
import type { Session } from './session.svelte.ts';
import type { Step } from './history.svelte.ts';

/** Where work is ticked off: at the bench cuts of windows, at the knife cuts of sheets, at the wall prints that hang, in finishing what is made. */
export type TickedAt = 'bench' | 'knife' | 'wall' | 'finish';

const partOf = { bench: 'ticks', knife: 'cutSheets', wall: 'hung', finish: 'made' } as const;

/** Whether a step changes nothing but what is ticked off there; undefined where it leaves all of that alone. */
function ticksOnly(step: Step, at: TickedAt): boolean | undefined {
	const part = partOf[at];
	if (!step[part]?.length) return undefined;
	const others: Edit = { ...step, [part]: [] };
	return isEmpty(others);
}

/**
 * The step that Undo takes back at the bench or the knife: the latest that ticks something off there, or takes a tick
 * off. None where a later step has changed ticks together with the show: taken back past that, they would be wrong.
 */
export const tickStep = ({ latest }: Pick<Session, 'latest'>, at: TickedAt): Step | undefined =>
	latest((step) => ticksOnly(step, at));

/** Whether the step that redo would do again only ticks something off there. */
export const isTickNext = ({ nextStep }: Pick<Session, 'nextStep'>, at: TickedAt): boolean =>
	nextStep !== undefined && ticksOnly(nextStep, at) === true;
