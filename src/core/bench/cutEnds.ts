import type { Bench } from '../settings/bench.ts';
import type { CutSide } from '../show/tick.ts';

/**
 * The borders at the two ends of a cut, where the blade goes in and where it comes out, on a cutter whose head is pushed
 * away with the guide at the left. A mount lies face down with the edge that is cut against the guide, and the blade's slant
 * lets it lie one way only; so from cut to cut it is turned the same way round, and the end of one is the start of the
 * next:
 *
 *     seen from the front     top ──────────▶ left ─▶ bottom ─▶ right
 *     along the left edge     in at the top border, out at the bottom border
 *     along the right edge    in at the bottom border, out at the top border
 */
const pushedAtTheLeft: Readonly<Record<CutSide, readonly [CutSide, CutSide]>> = {
	top: ['right', 'left'],
	left: ['top', 'bottom'],
	bottom: ['left', 'right'],
	right: ['bottom', 'top'],
};

/**
 * The borders at the start and at the end of a cut, as seen from the front. A head that is pulled goes the other way, and
 * with the guide at the right the edge that is cut lies the other way round: with both, all is as it was.
 */
export function endsOf(side: CutSide, { head = 'push', guideSide = 'left' }: Bench): readonly [CutSide, CutSide] {
	const [start, end] = pushedAtTheLeft[side];
	return (head === 'push') === (guideSide === 'left') ? [start, end] : [end, start];
}
