import type { RowResult } from '../../core/findings/rowResult.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { HungPrint, HungWall } from '../../core/walls/hungPrint.ts';
import { heatWords } from '../../core/walls/wallWords.ts';

/** How grave the worst is that the corner of a print on a wall marks: what was found of it, else what is warm under it. */
export function levelOnWall(
	wall: HungWall,
	print: HungPrint,
	results: readonly Pick<RowResult, 'findings'>[],
	settings: Settings,
): 'stop' | 'look' | undefined {
	const found = results[print.place]?.findings.find(({ level }) => level !== 'note')?.level;
	return (found as 'stop' | 'look' | undefined) ?? (heatWords(wall, print, settings) ? 'look' : undefined);
}
