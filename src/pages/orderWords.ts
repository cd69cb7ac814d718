import type { BenchPlan } from '../core/bench/benchPlan.ts';
import type { Bench } from '../core/settings/bench.ts';
import { countOf } from '../core/values/countOf.ts';

/**
 * How long the order of the cuts is, whether there is a shorter one, and how long the other way would be.
 * @param isOrdering whether a shorter one is looked for
 */
export function orderWords(plan: BenchPlan, bench: Pick<Bench, 'kind' | 'way'>, isOrdering: boolean): string {
	const { steps, changes, leastChanges, proven, changesOfWays } = plan;
	const long = countOf(steps.length, 'step');
	const of = bench.kind === 'guide' ? 'guide setting' : 'setting';
	const settings = `${changes} ${of}${changes === 1 ? '' : 's'}`;
	const isByMount = bench.way === 'mount by mount';
	const other = isByMount
		? `${changesOfWays['fewest settings']} if ordered for fewest settings`
		: `${changesOfWays['mount by mount']} if cut mount by mount`;
	const kept = bench.kind === 'guide' ? keptWords(steps) : '';
	if (proven) return `${long}. ${settings}, the fewest possible${isByMount ? '' : `; ${other}`}.${kept}`;
	const search = isOrdering ? 'Looking for an order with fewer…' : `No order can have fewer than ${leastChanges}.`;
	return `${long}. ${settings}; ${other}. ${search}${kept}`;
}

/** Why there are more steps than settings of the guide, as a sentence after others; empty where there are not. */
function keptWords(steps: BenchPlan['steps']): string {
	const kept = steps.filter(({ guide }, at) => steps[at - 1]?.guide === guide);
	const why = kept.every(({ isTaped }) => isTaped) ? ' with inner mounts' : '';
	return kept[0] ? ` The guide stays as it was for ${countOf(kept.length, 'step')}${why}.` : '';
}
