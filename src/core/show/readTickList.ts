import type { Reading } from '../length/reading.ts';
import { isRecord, type PlainRecord } from '../values/isRecord.ts';

/**
 * Reads a list of ticks of a show file, each of them there once.
 * @param part the name of the part, for the problem
 * @param readTick reads one; what is wrong with it follows its place in the list
 * @param keyOf names a tick within its list
 * @returns a problem that names the place
 */
export function readTickList<Tick>(
	stored: unknown,
	part: string,
	readTick: (stored: PlainRecord) => Tick | string,
	keyOf: (tick: Tick) => string,
): Reading<readonly Tick[]> {
	if (!Array.isArray(stored)) return { problem: `${part} is not a list` };
	const ticks = new Map<string, Tick>();
	for (const [place, each] of stored.entries()) {
		const tick = isRecord(each) ? readTick(each) : ' is not a record';
		if (typeof tick === 'string') return { problem: `${part}[${place}]${tick}` };
		const key = keyOf(tick);
		if (ticks.has(key)) return { problem: `${part}[${place}] is there twice` };
		ticks.set(key, tick);
	}
	return { value: [...ticks.values()] };
}
